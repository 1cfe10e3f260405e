namespace Watersown.Wording;

public sealed partial record TextWords
{
    public static TextWords English { get; } = new()
    {
        SoakHead = "Soak {when} for {day}: ",
        SoakItem = "{field} {weight} {unit} dry {seed}",
        SoakTail = ". OK?",
        DeliverHead = "Deliver {strip} {day}: ",
        DeliverItem = "{time} {batch} for {fields}",
        NewSeed = "new soak",
        HoldHead = "HOLD drain on ",
        HoldTail = " until I call.",
        LostHead = "Do not haul, past its time: ",
        LostTail = ". Wait for me.",
        ReadyHead = "Ready {day}: ",
        ReadyItem = "{field} {acres} at {rate}",
        ReadyTail = " {unit} dry. Seed at strip {time}. About {hours} in all. OK?",
        District = "{source}: please change {before} to {after} {when}. Order no. ___.",
        OpenHead = "Open: ",
        OpenItem = "{field} {when}",
        OpenTail = ". Aim for {depth}.",
        FillHead = "Filling, full about: ",
        FillItem = "{field} {when}",
        HoldAtHead = "Hold for seed at {depth}: ",
        NoSpillHead = "NO SPILL: ",
        Flight = "{day} {time} {field} only: {acres}, {dry} dry / {wet} WET {unit}, {loads} loads, {weight} wet. You decide.",
        Stop = "STOP {field}: not {day}, plan {plan}. ",
        FlyOnly = "Listed that day: {fields}.",
        FlyNone = "Nothing else is listed.",
        PlantedHead = "Planted ",
        PlantedItem = "{field} {acres} {day}",
        WarehouseName = "warehouse",
        DispatcherName = "flying service",
        DistrictName = "water district",
        IrrigatorName = "irrigator",
        PilotName = "pilot",
        LandlordName = "landlord",
    };
}
