using Watersown.Land;
using Watersown.Schedule;
using Watersown.Seed;
using Watersown.Wording;

namespace Watersown.Documents.Farms;

/// <summary>The words a farm document uses for one of a few things, and what they stand for.</summary>
public sealed class WordList<T>(params (string Word, T Meaning)[] pairs)
    where T : struct, Enum
{
    private readonly ImmutableArray<(string Word, T Meaning)> pairs = [.. pairs];

    public ImmutableArray<string> All { get; } = [.. pairs.Select(p => p.Word)];

    /// <summary>What a word stands for; nothing for a word that is not in the list.</summary>
    public T? Find(string? word)
    {
        foreach (var pair in pairs)
        {
            if (string.Equals(pair.Word, word, StringComparison.Ordinal)) return pair.Meaning;
        }

        return null;
    }

    public string Of(T meaning) => pairs.First(p => p.Meaning.Equals(meaning)).Word;
}

/// <summary>Every list of words of the farm document.</summary>
public static class Words
{
    public static WordList<UnitSystem> Units { get; } = new(("us", UnitSystem.UsCustomary), ("metric", UnitSystem.Metric));

    public static WordList<Language> Languages { get; } = new(("en", Language.English), ("es", Language.Spanish));

    public static WordList<WaterSourceKind> Sources { get; } = new(
        ("district-turnout", WaterSourceKind.DistrictTurnout),
        ("lift-pump", WaterSourceKind.LiftPump),
        ("well", WaterSourceKind.Well),
        ("tailwater", WaterSourceKind.Tailwater),
        ("joined-ditch", WaterSourceKind.JoinedDitch));

    public static WordList<BoxKind> Boxes { get; } = new(("inlet", BoxKind.Inlet), ("between-checks", BoxKind.BetweenChecks), ("drain", BoxKind.Drain));

    public static WordList<HazardKind> Hazards { get; } = new(
        ("wire", HazardKind.Wire),
        ("tower", HazardKind.Tower),
        ("pole", HazardKind.Pole),
        ("trees", HazardKind.Trees),
        ("house", HazardKind.House),
        ("school", HazardKind.School),
        ("livestock", HazardKind.Livestock),
        ("bees", HazardKind.Bees),
        ("sensitive-crop", HazardKind.SensitiveCrop),
        ("water-intake", HazardKind.WaterIntake),
        ("pond", HazardKind.Pond),
        ("road", HazardKind.Road),
        ("other", HazardKind.Other));

    public static WordList<HazardKeep> HazardKeeps { get; } = new(("12-months", HazardKeep.TwelveMonths), ("season", HazardKeep.Season));

    public static WordList<HazardLight> Lights { get; } = new(
        ("unknown", HazardLight.Unknown),
        ("none", HazardLight.None),
        ("red", HazardLight.Red),
        ("medium-white-red", HazardLight.MediumWhiteAndRed),
        ("high-white-red", HazardLight.HighWhiteAndRed),
        ("medium-white", HazardLight.MediumWhite),
        ("high-white", HazardLight.HighWhite),
        ("flood", HazardLight.Flood),
        ("catenary", HazardLight.Catenary),
        ("red-together", HazardLight.RedTogether),
        ("lit", HazardLight.LitSomehow));

    public static WordList<HazardMarking> Markings { get; } = new(
        ("unknown", HazardMarking.Unknown),
        ("none", HazardMarking.None),
        ("orange-white", HazardMarking.OrangeAndWhite),
        ("white", HazardMarking.White),
        ("marked", HazardMarking.Marked),
        ("flag", HazardMarking.Flag),
        ("spheres", HazardMarking.Spheres));

    public static WordList<FieldStage> Stages { get; } = new([.. Enum.GetValues<FieldStage>().Select(s => (StageWords.Of(s), s))]);

    public static WordList<GroundWork> Work { get; } = new(
        ("chisel", GroundWork.Chisel),
        ("disc", GroundWork.Disc),
        ("plane", GroundWork.Plane),
        ("aqua", GroundWork.Aqua),
        ("roll", GroundWork.Roll));

    public static WordList<Maturity> Maturities { get; } = new(
        ("very-early", Maturity.VeryEarly),
        ("early", Maturity.Early),
        ("intermediate", Maturity.Intermediate),
        ("late", Maturity.Late),
        ("other", Maturity.Other));

    public static WordList<DelayRule> Delays { get; } = new(("trials", DelayRule.Trials), ("saying", DelayRule.Saying), ("own", DelayRule.Own));

    /// <summary>Steps of a plan that can be pinned.</summary>
    public static WordList<PlanTaskKind> Tasks { get; } = new([.. Enum.GetValues<PlanTaskKind>().Select(t => (TaskWords.Of(t), t))]);
}
