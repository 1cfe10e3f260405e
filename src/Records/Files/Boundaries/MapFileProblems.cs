namespace Watersown.Records.Files.Boundaries;

/// <summary>What can be wrong with a file of boundaries.</summary>
public static class MapFileProblems
{
    public static ProblemKind UnknownKind { get; } = new("MAP-001", ProblemWeight.Refuse,
        "this is no kind of boundary file known here. Give GeoJSON, a zipped shapefile, KML, KMZ or GPX.",
        "este archivo de linderos no es de un tipo conocido. Dé GeoJSON, un shapefile en zip, KML, KMZ o GPX.");

    public static ProblemKind NotXml { get; } = new("MAP-003", ProblemWeight.Refuse,
        "it is no sound XML: {value}. Save it again from the program that made it.",
        "no es XML correcto: {value}. Guárdelo de nuevo en el programa que lo hizo.");

    public static ProblemKind NothingDrawn { get; } = new("MAP-004", ProblemWeight.Refuse,
        "there is no drawn area in it; it takes at least one {wanted}. Draw the fields as areas and save again.",
        "no tiene ningún área dibujada; hace falta al menos {wanted}. Dibuje los lotes como áreas y guarde de nuevo.");

    public static ProblemKind SkippedShapes { get; } = new("MAP-005", ProblemWeight.Warn,
        "{value} points or lines were left out; a field is an area. Nothing need be done if they were not meant as fields.",
        "se dejaron fuera {value} puntos o líneas; un lote es un área. No hay que hacer nada si no eran lotes.");

    public static ProblemKind TooManyFeatures { get; } = new("MAP-006", ProblemWeight.Refuse,
        "there are more than {limit} boundaries in it. Give a file of your own farm.",
        "tiene más de {limit} linderos. Dé un archivo de su propio rancho.");

    public static ProblemKind TooManyPoints { get; } = new("MAP-007", ProblemWeight.Refuse,
        "there are more than {limit} corners in it. Give a file of your own farm, or simplify the lines.",
        "tiene más de {limit} esquinas. Dé un archivo de su propio rancho, o simplifique las líneas.");

    public static ProblemKind BadZip { get; } = new("MAP-008", ProblemWeight.Refuse,
        "the zip is damaged or cut short: {value}. Zip the files again.",
        "el zip está dañado o cortado: {value}. Comprima los archivos de nuevo.");

    public static ProblemKind TooManyEntries { get; } = new("MAP-009", ProblemWeight.Refuse,
        "the zip holds {value} files; at most {limit} are looked at. Zip only the boundary files.",
        "el zip tiene {value} archivos; se revisan {limit} a lo más. Comprima sólo los archivos de linderos.");

    public static ProblemKind ZipTooLarge { get; } = new("MAP-010", ProblemWeight.Refuse,
        "'{value}' unpacks to far more than it holds; at most {limit} is unpacked. Zip only the boundary files.",
        "'{value}' se expande a mucho más de lo que trae; se expanden {limit} a lo más. Comprima sólo los archivos de linderos.");

    public static ProblemKind ZipPath { get; } = new("MAP-011", ProblemWeight.Refuse,
        "the zip names a file outside itself, '{value}'. Zip the files again from their own folder.",
        "el zip nombra un archivo fuera de sí mismo, '{value}'. Comprima de nuevo desde su propia carpeta.");

    public static ProblemKind Encrypted { get; } = new("MAP-012", ProblemWeight.Refuse,
        "'{value}' in the zip is locked with a password or packed in a way not read here. Zip the files again with no password.",
        "'{value}' en el zip tiene contraseña o está comprimido de un modo que no se lee. Comprima de nuevo sin contraseña.");

    public static ProblemKind MissingSibling { get; } = new("MAP-013", ProblemWeight.Warn,
        "there is no {value} beside the .shp, so the boundaries come without names. Give all files of the shapefile together.",
        "falta {value} junto al .shp, así que los linderos llegan sin nombre. Dé juntos todos los archivos del shapefile.");

    public static ProblemKind SeveralLayers { get; } = new("MAP-014", ProblemWeight.Refuse,
        "the zip holds several shapefiles: {value}. Zip the one with the fields alone.",
        "el zip tiene varios shapefiles: {value}. Comprima sólo el de los lotes.");

    public static ProblemKind BadShapefile { get; } = new("MAP-015", ProblemWeight.Refuse,
        "the shapefile is damaged: {value}. Export it again.",
        "el shapefile está dañado: {value}. Expórtelo de nuevo.");

    public static ProblemKind NotPolygons { get; } = new("MAP-016", ProblemWeight.Refuse,
        "the shapefile holds {value}, not areas. Export the layer of the fields.",
        "el shapefile tiene {value}, no áreas. Exporte la capa de los lotes.");

    public static ProblemKind UnreadableGrid { get; } = new("MAP-017", ProblemWeight.Refuse,
        "its coordinate system is not written as it should be. Save the file in WGS 84 (latitude and longitude).",
        "su sistema de coordenadas no está escrito como debe. Guarde el archivo en WGS 84 (latitud y longitud).");

    public static ProblemKind VerticalOnly { get; } = new("MAP-018", ProblemWeight.Refuse,
        "its coordinate system '{value}' says only how heights are measured. Save the file in WGS 84 (latitude and longitude).",
        "su sistema de coordenadas '{value}' sólo dice cómo se miden las alturas. Guarde el archivo en WGS 84 (latitud y longitud).");

    public static ProblemKind UnknownGrid { get; } = new("MAP-019", ProblemWeight.Refuse,
        "its coordinate system '{value}' cannot be used: {why}. Save the file in WGS 84 (latitude and longitude).",
        "su sistema de coordenadas '{value}' no se puede usar: {why}. Guarde el archivo en WGS 84 (latitud y longitud).");

    public static ProblemKind NoGrid { get; } = new("MAP-020", ProblemWeight.Refuse,
        "there is no .prj to say what grid x {value} is on, and it is no degree of longitude. Give the .prj too, or save in WGS 84.",
        "no hay .prj que diga en qué cuadrícula está x {value}, y no es un grado de longitud. Dé también el .prj, o guarde en WGS 84.");

    public static ProblemKind AssumedDegrees { get; } = new("MAP-021", ProblemWeight.Warn,
        "there is no .prj; the numbers look like degrees and were taken as WGS 84. Check one field on a map.",
        "no hay .prj; los números parecen grados y se tomaron como WGS 84. Revise un lote en un mapa.");

    public static ProblemKind OutsideGrid { get; } = new("MAP-022", ProblemWeight.Refuse,
        "the point {value} lies outside what its coordinate system '{grid}' can show. Check that the .prj belongs to this file.",
        "el punto {value} queda fuera de lo que su sistema de coordenadas '{grid}' puede mostrar. Vea que el .prj sea de este archivo.");

    public static ProblemKind OpenTrack { get; } = new("MAP-023", ProblemWeight.Refuse,
        "the track ends {value} from where it began; a boundary comes back to within {limit}. Drive all the way around.",
        "el recorrido termina a {value} de donde empezó; un lindero vuelve a menos de {limit}. Dé la vuelta completa.");

    public static ProblemKind TooDeep { get; } = new("MAP-024", ProblemWeight.Refuse,
        "it is nested deeper than {limit} levels. Save it again from the program that made it.",
        "está anidado a más de {limit} niveles. Guárdelo de nuevo en el programa que lo hizo.");

    public static ProblemKind BadNames { get; } = new("MAP-025", ProblemWeight.Warn,
        "the table of names cannot be read: {value}. The boundaries come without names; export it again to have them.",
        "no se puede leer la tabla de nombres: {value}. Los linderos llegan sin nombre; expórtela de nuevo para tenerlos.");

    public static ProblemKind NoMatch { get; } = new("MAP-026", ProblemWeight.Refuse,
        "none of its {value} boundaries is named like a field of this farm. Name them by code or name, or say which column with --column.",
        "ninguno de sus {value} linderos se llama como un lote de este rancho. Nómbrelos por clave o nombre, o diga la columna con --column.");

    public static ProblemKind MatchedTwice { get; } = new("MAP-027", ProblemWeight.Refuse,
        "it belongs to field {value}, and so does {other}. Draw them as one area of two pieces, or name one differently.",
        "es del lote {value}, y también {other}. Dibújelos como un área de dos partes, o nombre uno de otro modo.");

    public static ProblemKind AcresDiffer { get; } = new("MAP-028", ProblemWeight.Warn,
        "it encloses {value}, {share} off the gross {limit} of field {field}; up to 3 % is usual. Look which of the two is right.",
        "encierra {value}, {share} distinto del bruto de {limit} del lote {field}; lo normal es hasta 3 %. Vea cuál de los dos es correcto.");

    public static ProblemKind NoSuchColumn { get; } = new("MAP-029", ProblemWeight.Refuse,
        "there is no column '{value}' in it. Its columns are {known}.",
        "no tiene la columna '{value}'. Sus columnas son {known}.");
}
