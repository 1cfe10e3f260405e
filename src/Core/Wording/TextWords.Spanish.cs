namespace Watersown.Wording;

public sealed partial record TextWords
{
    public static TextWords Spanish { get; } = new()
    {
        SoakHead = "Remojo {when} para {day}: ",
        SoakItem = "{field} {weight} {unit} en seco {seed}",
        SoakTail = ". ¿De acuerdo?",
        DeliverHead = "Entregar {strip} {day}: ",
        DeliverItem = "{time} {batch} para {fields}",
        NewSeed = "remojo nuevo",
        HoldHead = "NO escurrir ",
        HoldTail = " hasta que yo llame.",
        LostHead = "No acarrear, pasada de tiempo: ",
        LostTail = ". Espere mi llamada.",
        ReadyHead = "Listos {day}: ",
        ReadyItem = "{field} {acres} a {rate}",
        ReadyTail = " {unit} en seco. Semilla en pista {time}. Unas {hours} en total. ¿De acuerdo?",
        District = "{source}: favor de cambiar de {before} a {after} {when}. Pedido n. ___.",
        OpenHead = "Abrir: ",
        OpenItem = "{field} {when}",
        OpenTail = ". Meta {depth}",
        FillHead = "Llenando, llenos hacia: ",
        FillItem = "{field} {when}",
        HoldAtHead = "Mantener para semilla a {depth}: ",
        NoSpillHead = "NO tirar agua en ",
        Flight = "{day} {time} solo {field}: {acres}, {dry} en seco / {wet} EN MOJADO {unit}, {loads} cargas, {weight} en mojado. Usted decide.",
        Stop = "ALTO {field}: no el {day}, plan {plan}. ",
        FlyOnly = "En lista ese dia: {fields}.",
        FlyNone = "No hay otro campo en lista.",
        PlantedHead = "Sembrado: ",
        PlantedItem = "{field} {acres} {day}",
        WarehouseName = "bodega",
        DispatcherName = "servicio aéreo",
        DistrictName = "distrito de agua",
        IrrigatorName = "regador",
        PilotName = "piloto",
        LandlordName = "dueño del terreno",
    };
}
