namespace Watersown.Land;

/// <summary>An edge while it is being drawn: its corners, and every step that led there, so that each can be undone.</summary>
public sealed record EdgeDraft
{
    private EdgeDraft(ImmutableArray<GeoPoint> corners, EdgeDraft? before) => (Corners, Before) = (corners, before);

    public static EdgeDraft Empty { get; } = new([], null);

    /// <summary>In order, the first not repeated.</summary>
    public ImmutableArray<GeoPoint> Corners { get; }

    /// <summary>As it was a step ago; none at the beginning.</summary>
    public EdgeDraft? Before { get; }

    /// <summary>Corners that are missing before it can enclose land.</summary>
    public int Missing => Math.Max(0, 3 - Corners.Length);

    /// <summary>Begins with an edge that is there: the outer ring of its piece with the most corners.</summary>
    public static EdgeDraft Of(Boundary edge) => new(edge.Parts.MaxBy(p => p.Outer.Length)!.Outer, null);

    /// <summary>Corners after the last one.</summary>
    public EdgeDraft Add(params ImmutableArray<GeoPoint> corners) => corners.IsEmpty ? this : new(Corners.AddRange(corners), this);

    /// <summary>A corner in front of another: half way from the one before it.</summary>
    /// <param name="index">Of the other, 0 first.</param>
    public EdgeDraft Split(int index)
    {
        if (index < 0 || index >= Corners.Length || Corners.Length < 2) return this;
        var (before, here) = (Corners[index == 0 ? ^1 : index - 1], Corners[index]);
        return new(Corners.Insert(index, new GeoPoint((before.Latitude + here.Latitude) / 2, (before.Longitude + here.Longitude) / 2)), this);
    }

    /// <summary>A corner somewhere else.</summary>
    public EdgeDraft Move(int index, GeoPoint place) => index < 0 || index >= Corners.Length || Corners[index] == place ? this : new(Corners.SetItem(index, place), this);

    public EdgeDraft Remove(int index) => index < 0 || index >= Corners.Length ? this : new(Corners.RemoveAt(index), this);

    public EdgeDraft Clear() => Corners.IsEmpty ? this : new([], this);

    public EdgeDraft Undo() => Before ?? this;
}
