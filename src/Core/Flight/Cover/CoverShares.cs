namespace Watersown.Flight.Cover;

/// <summary>Land counted by cells.</summary>
/// <param name="Area">Cells times their size.</param>
/// <param name="Error">What the edges may be out by: half a cell along all of them. The usual error is far less.</param>
public sealed record CountedArea(Area Area, Area Error);

/// <summary>What was flown over a field, once, never, or more than once. Skipped, single and overlapped land make up the field exactly.</summary>
/// <param name="Field">Land of the field, in cells like the rest.</param>
/// <param name="Skipped">Never flown over.</param>
/// <param name="Single">Flown over once.</param>
/// <param name="Overlapped">Flown over twice or more.</param>
/// <param name="Excess">Land flown over beyond the first time, each time counted.</param>
/// <param name="Swept">All that was flown with the gate open, each pass by itself, inside the field and out; from the edges, not from cells.</param>
/// <param name="Outside">Of that, off the field.</param>
public sealed record CoverShares(Area Field, CountedArea Skipped, CountedArea Single, CountedArea Overlapped, Area Excess, Area Swept, CountedArea Outside)
{
    /// <summary>Skipped land over the field.</summary>
    public Fraction SkipShare => Of(Skipped.Area, Field);

    /// <summary>Land flown once over the field.</summary>
    public Fraction SingleShare => Of(Single.Area, Field);

    /// <summary>Land flown twice or more over the field.</summary>
    public Fraction OverlapShare => Of(Overlapped.Area, Field);

    /// <summary>Passes beyond the first over the field; may be above one.</summary>
    [PlainNumber("land flown beyond the first time, over the field")]
    public double ExcessRatio => Excess / Field;

    /// <summary>Swept land off the field, over all that was swept.</summary>
    public Fraction OffFieldShare => Swept > Area.Zero ? Of(Outside.Area, Swept) : Fraction.FromShare(0);

    private static Fraction Of(Area part, Area whole) => Fraction.FromShare(Math.Min(1, part / whole));
}
