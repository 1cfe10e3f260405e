using System.Runtime.Intrinsics;
using Lanes = System.Runtime.Intrinsics.Vector512<float>;

namespace Watersown.Water.Flood;

/// <summary>
/// Sixteen fields of checks in a row side by side, laid out for reckoning together. Behind the last check of every field stands one
/// more without ground: what comes there has left the field.
/// </summary>
internal sealed class FloodLanes
{
    /// <summary>Fields side by side.</summary>
    public const int Count = 16;

    // Over any water: a box whose crest stands so high passes nothing, and water below it is never over it.
    private const float Far = 1e6f;
    private readonly FloodPart?[] parts = new FloodPart?[Count];
    private readonly FloodFuture[] futures = new FloodFuture[Count];
    private readonly List<(int Lane, FloodChange Change)> changes = [];
    private Wide evaporation;
    private Wide rain;

    /// <summary>Room for sixteen fields.</summary>
    /// <param name="checks">Of the longest of them.</param>
    public FloodLanes(int checks)
    {
        Rows = checks + 1;
        (Checks, Held) = (new LaneCheck[Rows + 1], new Wide[Rows]);
        Clear();
    }

    /// <summary>Checks of the longest field, and one more.</summary>
    public int Rows { get; }

    public LaneCheck[] Checks { get; }

    /// <summary>Held at the start, m³.</summary>
    public Wide[] Held { get; }

    /// <summary>Let into each field, m³/s.</summary>
    public Wide In { get; private set; }

    /// <summary>Rained on each field, m³/s.</summary>
    public Wide Rain { get; private set; }

    /// <summary>What changes, in order of time.</summary>
    public IReadOnlyList<(int Lane, FloodChange Change)> Changes => changes;

    public FloodPart? Part(int lane) => parts[lane];

    /// <summary>Empties all lanes.</summary>
    public void Clear()
    {
        Array.Clear(parts);
        changes.Clear();
        Array.Clear(Held);
        Array.Clear(Checks);
        (In, Rain, evaporation, rain) = (default, default, default, default);
        var far = Vector512.Create(Far);
        for (var i = 0; i < Checks.Length; i++) Checks[i] = new LaneCheck { Boards = far, BoardsBelow = far };
    }

    /// <summary>Puts a field, as one of its futures may find it, into a lane.</summary>
    public void Put(int lane, FloodPart part, FloodFuture future)
    {
        (parts[lane], futures[lane]) = (part, future);
        for (var i = 0; i < part.Count; i++)
        {
            var takeUp = part.TakeUp[i] * future.TakeUp;
            ref var check = ref Checks[i];
            Set(ref check.PerArea, lane, 1 / part.Area[i]);
            Set(ref check.TakeUp, lane, takeUp);
            Set(ref check.PerFull, lane, 1 / (takeUp + part.Front[i]));
            Set(ref check.Covered, lane, part.StartCovered[i] / part.Area[i]);
            check.Seeping = check.Seeping.With(lane, part.Percolation[i] * part.Area[i] * future.Loss);
            Held[i] = Held[i].With(lane, part.StartHeld[i] + (part.StartCovered[i] * (takeUp - part.TakeUp[i])));
            LoseAnew(i, lane);
        }

        for (var b = 0; b < part.BoxFrom.Length; b++)
        {
            ref var check = ref Checks[part.BoxFrom[b]];
            Set(ref check.Box.Width, lane, part.Laws[b].Width);
            Set(ref check.Box.Contraction, lane, part.Laws[b].Contraction);
            Set(ref check.Box.Most, lane, part.Laws[b].Most);
            Set(ref check.Box.Leveling, lane, part.Laws[b].Leveling);
            Board(lane, b, part.Crest[b] - part.Ground[part.BoxFrom[b]]);
        }

        foreach (var change in part.Changes) changes.Add((lane, change));
    }

    /// <summary>Puts what changes in order, once all lanes are filled.</summary>
    public void Ready()
    {
        // Equal moments keep their order: the last word stands.
        var ordered = changes.OrderBy(c => c.Change.At).ToList();
        changes.Clear();
        changes.AddRange(ordered);
    }

    public void Apply(int lane, FloodChange change)
    {
        var (part, future) = (parts[lane]!, futures[lane]);
        switch (change.Kind)
        {
            case FloodChangeKind.Inflow:
                ref var check = ref Checks[change.Index];
                check.Inflow = check.Inflow.With(lane, check.Inflow[lane] + (change.Value * future.Flow));
                In = In.With(lane, In[lane] + (change.Value * future.Flow));
                PourAnew(change.Index, lane);
                break;
            case FloodChangeKind.Boards:
                Board(lane, change.Index, change.Value);
                break;
            default:
                evaporation = evaporation.With(lane, change.Value * future.Loss);
                rain = rain.With(lane, change.Second);
                Rain = Rain.With(lane, change.Second * part.Area.Sum());
                for (var i = 0; i < part.Count; i++)
                {
                    LoseAnew(i, lane);
                    PourAnew(i, lane);
                }

                break;
        }
    }

    private static void Set(ref Lanes lanes, int lane, double value) => lanes = lanes.WithElement(lane, (float)value);

    private void LoseAnew(int i, int lane)
    {
        ref var check = ref Checks[i];
        var area = parts[lane]!.Area[i];
        check.Losing = check.Losing.With(lane, check.Seeping[lane] + (evaporation[lane] * area));
        Set(ref check.Loss, lane, check.Losing[lane] / area);
    }

    private void PourAnew(int i, int lane)
    {
        ref var check = ref Checks[i];
        var area = parts[lane]!.Area[i];
        check.Poured = check.Poured.With(lane, check.Inflow[lane] + (rain[lane] * area));
        Set(ref check.Given, lane, check.Poured[lane] / area);
    }

    private void Board(int lane, int box, double boards)
    {
        var (part, from) = (parts[lane]!, parts[lane]!.BoxFrom[box]);
        var top = boards + futures[lane].Boards.Meters;
        Set(ref Checks[from].Boards, lane, top);
        if (part.BoxTo[box] >= 0) Set(ref Checks[from].BoardsBelow, lane, part.Ground[from] + top - part.Ground[part.BoxTo[box]]);
    }
}
