namespace Watersown.Water;

/// <summary>The way to what a raise takes.</summary>
internal static class RaiseWorking
{
    public static Working Show(WaterRaise raise)
    {
        var working = Working.Empty;
        foreach (var part in raise.Parts)
        {
            working = working.Step("V(" + part.Land.Name + ")", Wording.Say.Figure(part.Land.Land.Acres) + " ac from " + Wording.Say.Figure(part.Land.Depth.Inches) + " to " + Wording.Say.Figure(raise.Target.Inches) + " in",
                part.Volume.AcreFeet, "ac-ft", "land × (target − depth) / 12", Sources.WaterBalance);
        }

        working = working
            .Step("V", "water to raise all of it", raise.Volume.AcreFeet, "ac-ft", "Σ V(field)", Sources.Arithmetic)
            .Step("S", "left over once what is wet is held", raise.Spare.CubicFeetPerSecond, "cfs", "Q − H", Sources.Arithmetic)
            .Step("D", "the same by day", raise.Spare.AcreFeetPerDay, "ac-ft/day", "1.983471 S", Sources.Definition)
            .Step("t", "until all of it stands so deep", Datum.Of(raise.Time?.TotalDays), "days", raise.Time is null ? "never: nothing is left over" : "V / D", Sources.Arithmetic)
            .Given("L", "time there is", raise.Left.TotalDays, "days", "until the cold nights")
            .Step("r", "rise of all of it together in that time", raise.Together.Inches, "in", "12 D L / land, at most what is wanted", Sources.WaterBalance);
        foreach (var part in raise.Parts)
            working = working.Step("r(" + part.Land.Name + ")", "its rise if all that is left over goes into it alone", part.Rise.Inches, "in", "12 D L / land, at most to the target", Sources.WaterBalance);
        return working;
    }
}
