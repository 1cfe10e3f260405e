namespace Watersown.Wording;

public sealed partial record HandoutWords
{
    public static HandoutWords Spanish { get; } = new()
    {
        Title = "{farm}: campos, pasadas y peligros conocidos",
        Fields = "Campos",
        Passes = "Pasadas pedidas",
        Hazards = "Peligros que la finca conoce",
        Strips = "Pistas",
        Flown = "Volado",
        FieldAbout = "{net} ac netos; {dry} lb/ac en seco = {soaked} lb/ac remojada; pasadas cada {swath} pies",
        FieldAboutNoRate = "{net} ac netos; pasadas cada {swath} pies",
        PassName = "{code} pasada {n}",
        SoakedSeed = "semilla remojada",
        SowTask = "Sembrar {code} {name}",
        RunName = "{code} volada {n}",
        GateInferred = "no se registró señal de la compuerta: dónde estuvo abierta se ha deducido",
        HazardHeight = "{height} pies sobre el suelo",
        HazardSeen = "visto por última vez {day}",
        HazardUnseen = "nadie lo ha confirmado",
        Cautions =
        [
            "Un deseo de la finca para planear. El piloto decide, y puede negarse a cualquier pasada, carga o pista.",
            "Los peligros son los que la finca conoce. A menudo faltan cables, postes, torres y obras nuevas: mire de día, antes de cada campo.",
            "Las dosis parten de una muestra remojada y pesada y de una compuerta ajustada: compare los totales con las cargas.",
            "Mantenga a la gente y el tráfico lejos de los extremos del campo y de debajo de las pasadas.",
        ],
        Readme = "handout.geojson (GeoJSON, RFC 7946), handout.kml (KML 2.2), handout.gpx (GPX 1.1), shapefiles.zip (shapefiles en WGS 84) y taskdata.zip (ISO 11783-10, versión 4) contienen lo mismo. Los lugares son grados en WGS 84; los rumbos son desde el norte verdadero.",
    };
}
