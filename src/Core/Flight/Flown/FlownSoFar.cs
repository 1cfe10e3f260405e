using Watersown.Flight.Cover;
using Watersown.Flight.Deposit;
using Watersown.Land;

namespace Watersown.Flight.Flown;

/// <summary>
/// How much of a field is sown by the part of a track that was read so far. A glimpse: where the track tells no gate, it counts as
/// open over the field, turns and all; only the whole track tells more.
/// </summary>
public sealed class FlownSoFar
{
    private readonly LiveDeposit live;
    private readonly EdgeBands edge;
    private readonly Length swath;
    private bool open;

    /// <summary>For one field.</summary>
    /// <param name="field">Its edge.</param>
    /// <param name="swath">How wide a pass sows.</param>
    public FlownSoFar(Boundary field, Length swath)
    {
        var land = FarmPlane.Over(field).ToPlane(field);
        this.swath = swath;
        edge = new EdgeBands(land);
        live = LiveDeposit.Over(land, Passes.Narrowest(land).Heading, LateralShape.Supposed(swath), Coverage.CellFor(swath));
    }

    /// <summary>Land with half the rate or more: what lies within half a swath of a pass.</summary>
    public Area Sown => live.Sown(Fraction.FromPercent(50));

    /// <summary>The next place of the clean track.</summary>
    public void Add(FlownFix fix)
    {
        var sows = fix.Gate == GateSign.Open || (fix.Gate == GateSign.NotTold && edge.Holds(fix.At));
        if (open && (!sows || fix.Break != TrackBreak.None)) live.End();
        if (sows)
        {
            if (!open || fix.Break != TrackBreak.None) live.Begin(swath);
            live.Add(fix.At);
        }

        open = sows;
    }
}
