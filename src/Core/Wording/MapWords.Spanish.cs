namespace Watersown.Wording;

public sealed partial record MapWords
{
    public static MapWords Spanish { get; } = new()
    {
        Title = "Mapa de {field}",
        NorthUp = "El norte está arriba.",
        North = "N",
        FromBoundary = "Contorno del lindero de la finca.",
        FromAcres = "Dibujado según la superficie, no medido",
        FromAcresNorth = "Dibujado según la superficie, no medido; dirección desconocida",
        RunWished = "{length}, rumbo {a} y {b}",
        RunOpen = "{length}, rumbo: a elección del piloto",
        Passes = "{length}, {n} pasadas de {swath}",
        Strip = "pista {distance}",
        Leaks = "fuga",
        Sown = "sembrado",
        Full = "lleno",
        Filling = "llenándose",
        DryGround = "sin agua",
        NotTold = "sin dato",
        HasHole = "En gris dentro del campo: no se siembra.",
        LeveesUnknown = "{n} cuadros, bordos sin dibujar.",
        NoMap = "Sin mapa: no se conoce lindero ni centro de este campo. Los datos están al lado.",
        NoHazards = "Este mapa no tiene peligros marcados. No se sabe, no es que no haya.",
        Beyond = "{mark} queda a {distance}, hacia {bearing}.",
        Wire = "cable",
        Tower = "torre",
        Pole = "poste",
        Trees = "árboles",
        House = "casa",
        School = "escuela",
        Livestock = "ganado",
        Bees = "abejas",
        SensitiveCrop = "cultivo",
        WaterIntake = "toma de agua",
        Pond = "estanque",
        Road = "camino",
        Other = "otro",
        NotSown = "sin sembrar",
    };
}
