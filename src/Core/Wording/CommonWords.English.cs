namespace Watersown.Wording;

public sealed partial record CommonWords
{
    public static CommonWords English { get; } = new()
    {
        Tag = "en",
        LongDays = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"],
        ShortDays = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"],
        Months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"],
        LongMonths = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"],
        LongDate = "{weekday} {day} {month} {year}",
        Plan = "{farm}, plan no. {plan}",
        Made = "made {when}",
        Folio = "Page {page} of {pages}",
        GoesOn = "This sheet goes on: page {page} of {pages}.",
        Dry = "dry",
        Wet = "wet",
        Acres = "ac",
        Hectares = "ha",
        PerAcre = "lb/ac",
        PerHectare = "kg/ha",
        Feet = "ft",
        Miles = "mi",
        Inches = "in",
        CubicFeetPerSecond = "cfs",
        AcreFeet = "ac-ft",
        LitersPerSecond = "L/s",
        MilesPerHour = "mph",
        Hours = "h",
        NotTold = "not told",
        Check = "check",
        Box = "box",
        Field = "Field",
        ToTick = "to tick",
        ToFillIn = "to fill in",
        AgeMinutes = "{n} min old",
        AgeHours = "{n} h old",
        AgeDays = "{n} days old",
    };
}
