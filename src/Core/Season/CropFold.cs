using Watersown.Growth;
using Watersown.Seed;
using Watersown.Stand;

namespace Watersown.Season;

/// <summary>Where the targets of a class come from.</summary>
public enum TargetBasis
{
    /// <summary>The farm typed them.</summary>
    Farm,

    /// <summary>The usual ones of the class: a default.</summary>
    Usual,

    /// <summary>There are none for the class: those of early varieties are taken.</summary>
    Borrowed,
}

/// <summary>Targets of a class with where they come from.</summary>
public sealed record ClassTargets(Maturity Class, StageTargets Targets, TargetBasis Basis);

/// <summary>The farm's own targets; a class that it has not typed has the usual ones.</summary>
public sealed record CropTargets(ImmutableArray<(Maturity Class, StageTargets Targets)> Own)
{
    public static CropTargets Usual { get; } = new([]);

    public ClassTargets Of(Maturity maturity)
    {
        foreach (var (known, targets) in Own)
        {
            if (known == maturity) return new ClassTargets(maturity, targets, TargetBasis.Farm);
        }

        return maturity switch
        {
            Maturity.VeryEarly => new ClassTargets(maturity, StageTargets.VeryEarly, TargetBasis.Usual),
            Maturity.Early => new ClassTargets(maturity, StageTargets.Early, TargetBasis.Usual),
            Maturity.Intermediate => new ClassTargets(maturity, StageTargets.Intermediate, TargetBasis.Usual),
            _ => new ClassTargets(maturity, StageTargets.Early, TargetBasis.Borrowed),
        };
    }
}

/// <summary>What the farm says of its classes, as the marks go by.</summary>
internal sealed class CropFold
{
    private readonly Dictionary<Maturity, StageTargets> own = [];

    /// <summary>The farm's own yield by stand; empty where it has typed none.</summary>
    public ImmutableArray<ResponsePoint> Response { get; private set; } = [];

    public void Apply(Mark mark)
    {
        if (mark.Fact is StageTargetsSet { Targets.Rising: true } set) own[set.Class] = set.Targets;
        if (mark.Fact is StandResponseSet response && response.Points.Zip(response.Points.Skip(1), (a, b) => a.Stand < b.Stand && a.Share.Share <= b.Share.Share).All(r => r)) Response = [.. response.Points];
    }

    public CropTargets Close() => new([.. own.OrderBy(o => o.Key).Select(o => (o.Key, o.Value))]);
}
