namespace Watersown.Land;

/// <summary>What can be wrong with a boundary as drawn. Codes LAND-100 to LAND-199.</summary>
public static class BoundaryProblems
{
    public static ProblemKind NotGeometry { get; } = new("LAND-100", ProblemWeight.Refuse,
        "'{value}' is not a boundary; a boundary is a Polygon or a MultiPolygon. Draw it as an area and give that.",
        "'{value}' no es un lindero; un lindero es Polygon o MultiPolygon. Dibújelo como área y dé eso.");

    public static ProblemKind OneFeature { get; } = new("LAND-101", ProblemWeight.Refuse,
        "there are {value} features; one boundary is one feature. Give one of them, or import them all as boundaries of the farm.",
        "hay {value} elementos; un lindero es un solo elemento. Dé uno, o impórtelos todos como linderos del rancho.");

    public static ProblemKind BadCoordinates { get; } = new("LAND-102", ProblemWeight.Refuse,
        "the coordinates are not {wanted}. Save the boundary again from the program that drew it.",
        "las coordenadas no son {wanted}. Guarde de nuevo el lindero en el programa que lo dibujó.");

    public static ProblemKind NotANumber { get; } = new("LAND-103", ProblemWeight.Refuse,
        "'{value}' is not a coordinate; it must be a plain number. Correct the corner, or leave it out.",
        "'{value}' no es una coordenada; debe ser un número. Corrija la esquina, o quítela.");

    public static ProblemKind OffTheEarth { get; } = new("LAND-104", ProblemWeight.Refuse,
        "{value} is off the earth; latitude goes from -90 to 90 and longitude from -180 to 180. Correct the corner.",
        "{value} queda fuera de la tierra; la latitud va de -90 a 90 y la longitud de -180 a 180. Corrija la esquina.");

    public static ProblemKind Swapped { get; } = new("LAND-105", ProblemWeight.Refuse,
        "a latitude of {value} is beyond the pole, and the other way round it would be a place: latitude and longitude look swapped. Longitude comes first in this format: turn them round.",
        "una latitud de {value} pasa del polo, y al revés sería un lugar: parecen cambiadas la latitud y la longitud. En este formato va primero la longitud: cámbielas.");

    public static ProblemKind LooksProjected { get; } = new("LAND-106", ProblemWeight.Refuse,
        "{value} is no degree of latitude or longitude; it looks like meters or feet of a map grid. Save it as WGS 84 degrees, or give the file that names its grid.",
        "{value} no es un grado de latitud ni longitud; parece metros o pies de una cuadrícula. Guárdelo en grados WGS 84, o dé el archivo que nombra su cuadrícula.");

    public static ProblemKind TooFewCorners { get; } = new("LAND-107", ProblemWeight.Refuse,
        "the ring has {value} different corners; it takes at least 3 to enclose land. Draw it again.",
        "el anillo tiene {value} esquinas distintas; hacen falta al menos 3 para encerrar terreno. Dibújelo de nuevo.");

    public static ProblemKind CrossesItself { get; } = new("LAND-108", ProblemWeight.Refuse,
        "the edge crosses itself at {place}. Move the corner there so that the edge runs once around.",
        "el borde se cruza a sí mismo en {place}. Mueva la esquina de ahí para que el borde dé una sola vuelta.");

    public static ProblemKind TouchesItself { get; } = new("LAND-109", ProblemWeight.Refuse,
        "the edge comes back to itself at {place}, as in a figure of eight. Draw two pieces, or move the corner there.",
        "el borde vuelve a tocarse en {place}, como un ocho. Dibuje dos partes, o mueva la esquina de ahí.");

    public static ProblemKind HoleOutside { get; } = new("LAND-110", ProblemWeight.Refuse,
        "the hole reaches outside the edge at {place}; a hole lies wholly inside. Move it in, or cut the edge back around it.",
        "el hueco se sale del borde en {place}; un hueco queda todo adentro. Métalo, o recorte el borde a su alrededor.");

    public static ProblemKind HolesOverlap { get; } = new("LAND-111", ProblemWeight.Refuse,
        "two holes meet or overlap at {place}. Draw them as one hole.",
        "dos huecos se tocan o se enciman en {place}. Dibújelos como un solo hueco.");

    public static ProblemKind PartsOverlap { get; } = new("LAND-112", ProblemWeight.Refuse,
        "two pieces cover the same ground at {place}, which would count it twice. Draw them as one piece, or move them apart.",
        "dos partes cubren el mismo terreno en {place}, y se contaría dos veces. Dibújelas como una sola, o sepárelas.");

    public static ProblemKind TooManyCorners { get; } = new("LAND-113", ProblemWeight.Refuse,
        "there are {value} corners; at most {limit} can be taken. Simplify the line: a corner every few feet is plenty.",
        "hay {value} esquinas; se admiten {limit} a lo más. Simplifique la línea: una esquina cada pocos pies basta.");

    public static ProblemKind TooManyRings { get; } = new("LAND-114", ProblemWeight.Refuse,
        "there are {value} pieces and holes; at most {limit} can be taken for one field. Give one field at a time.",
        "hay {value} partes y huecos; se admiten {limit} a lo más por lote. Dé un lote a la vez.");

    public static ProblemKind NotClosed { get; } = new("LAND-115", ProblemWeight.Warn,
        "the ring is not closed: its last corner is not its first. It was closed with a straight line; look whether a corner is missing.",
        "el anillo no está cerrado: la última esquina no es la primera. Se cerró con una línea recta; vea si falta una esquina.");

    public static ProblemKind UnlikelySize { get; } = new("LAND-116", ProblemWeight.Warn,
        "it encloses {value}; a field has {least} to {most}. Check that it is one field and on the right map grid.",
        "encierra {value}; un lote tiene de {least} a {most}. Vea que sea un solo lote y en la cuadrícula correcta.");

    public static ProblemKind NoPart { get; } = new("LAND-117", ProblemWeight.Refuse,
        "the boundary has no ring; it takes at least one. Draw the field and save it again.",
        "el lindero no tiene ningún anillo; hace falta al menos uno. Dibuje el lote y guárdelo de nuevo.");

    public static ProblemKind AroundTheEarth { get; } = new("LAND-118", ProblemWeight.Refuse,
        "the boundary reaches around to the far side of the earth. Give one field.",
        "el lindero llega hasta el otro lado de la tierra. Dé un solo lote.");

    public static ProblemKind NoLand { get; } = new("LAND-119", ProblemWeight.Refuse,
        "the ring encloses no land: its corners lie on one line. Draw it again.",
        "el anillo no encierra terreno: sus esquinas están en una línea. Dibújelo de nuevo.");

    public static ProblemKind NotAPlace { get; } = new("LAND-120", ProblemWeight.Refuse,
        "'{value}' is not a place. Write degrees, latitude first, one corner a line: 39.0152, -122.0050.",
        "'{value}' no es un lugar. Escriba grados, primero la latitud, una esquina por línea: 39.0152, -122.0050.");
}
