using Watersown.Growth;
using Watersown.Seed;

namespace Watersown.Season;

/// <summary>Somebody saw how far the crop of a field has come. It beats what is reckoned.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Point">The stage.</param>
public sealed record StageSeen(string Field, StagePoint Point) : MarkFact
{
    public override string? AboutField => Field;
}

/// <summary>The farm's own warmth to the stages of a class of varieties.</summary>
/// <param name="Class">How early it ripens.</param>
/// <param name="Targets">Warmth from sowing to each stage, by the farm's rule.</param>
public sealed record StageTargetsSet(Maturity Class, StageTargets Targets) : MarkFact;

/// <summary>How warm the flood of a field was on a day.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Day">The day.</param>
/// <param name="High">The highest.</param>
/// <param name="Low">The lowest.</param>
public sealed record FloodWarmth(string Field, DateOnly Day, Temperature High, Temperature Low) : MarkFact
{
    public override string? AboutField => Field;
}
