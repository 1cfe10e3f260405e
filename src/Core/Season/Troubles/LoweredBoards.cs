using Watersown.Water;
using Watersown.Weather;

namespace Watersown.Season.Troubles;

/// <summary>
/// What lower boards tonight would change in a field under the wind still to come. The index rests on what growers saw (shallower is
/// calmer), wave theory mostly says the opposite at these depths, and the wind lays more soil bare: all three stand side by side.
/// </summary>
/// <param name="Wind">Strongest wind still to come while its seed is loose.</param>
/// <param name="Before">The worst check as deep as it is.</param>
/// <param name="After">The same check with the boards lowered.</param>
public sealed record LoweredBoards(Wind Wind, CheckWaves Before, CheckWaves After)
{
    /// <summary>The index of the hours still to come, as deep as it is.</summary>
    [PlainNumber("an index; only its order means something")]
    public required double IndexBefore { get; init; }

    /// <summary>The same with the boards lowered.</summary>
    [PlainNumber("an index; only its order means something")]
    public required double IndexAfter { get; init; }

    /// <summary>No water may be let out: the boards stay.</summary>
    public required bool NoSpill { get; init; }

    /// <summary>What growers saw and what wave theory says point to different depths.</summary>
    public bool Disagree => After.Pull > Before.Pull;

    /// <summary>Depth to lower to: the sowing depth, or from there the least for seed; nothing where it is as low already.</summary>
    [Source(nameof(Sources.FarmDefault), "2 in, from there 1 in")]
    public static WaterDepth? Target(WaterDepth depth)
    {
        if (depth > WaterTargets.Sowing) return WaterTargets.Sowing;
        return depth > WaterTargets.SowingLeast ? WaterTargets.SowingLeast : null;
    }

    internal Working Show() => Working.Empty
        .Given("h1", "depth now", Before.Depth.Inches, "in", "stick, else the sowing depth")
        .Given("h2", "depth with the boards lowered", After.Depth.Inches, "in", "sowing depth, else the least for seed")
        .Step("i1", "index of the wind still to come, now", IndexBefore, "mph² h ft", "as above, over the hours still to come", Sources.FarmDefault)
        .Step("i2", "the same with the boards lowered", IndexAfter, "mph² h ft", "i1 × depth factors", Sources.FarmDefault)
        .Step("M1", "pull of the waves on seed, now", Before.Pull, string.Empty, "Uw / Ucr at the strongest wind to come", Sources.KomarMiller1974)
        .Step("M2", "the same with the boards lowered", After.Pull, string.Empty, "Uw / Ucr", Sources.KomarMiller1974)
        .Step("x1", "soil laid bare at the upwind levee, now", Before.Lean.Bare.Feet, "ft", "lean of the water", Sources.CoastalEngineeringManual)
        .Step("x2", "the same with the boards lowered", After.Lean.Bare.Feet, "ft", "lean of the water", Sources.CoastalEngineeringManual);
}
