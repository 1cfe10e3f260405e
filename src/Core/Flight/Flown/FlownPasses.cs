namespace Watersown.Flight.Flown;

/// <summary>One pass as it was flown: along the heading of the job, or across it.</summary>
/// <param name="Number">In the order flown; 1 first.</param>
/// <param name="Heading">The way it went.</param>
/// <param name="Stretches">Where the gate was open.</param>
public sealed record FlownPass(int Number, Bearing Heading, ImmutableArray<FlownRun> Stretches)
{
    /// <summary>Goes along the heading of the job; otherwise it is a pass along an end.</summary>
    public bool IsAlong { get; init; } = true;

    /// <summary>How far right of the plane's middle its mean line lies, looking along the job's heading.</summary>
    public required Length Right { get; init; }

    /// <summary>Root of the mean square of how far it strays from its own mean line.</summary>
    public required Length Strays { get; init; }

    /// <summary>Where it begins and ends, ahead of the plane's middle along the job's heading.</summary>
    public required (Length From, Length To) Ahead { get; init; }

    public Length Length => Stretches.Aggregate(Length.Zero, (sum, s) => sum + s.Length);

    /// <summary>Over the ground; none where no time is told.</summary>
    public Speed? Speed
    {
        get
        {
            var seconds = Stretches.Sum(s => s.Ended - s.Began);
            return seconds > 0 ? Quantities.Speed.FromMetersPerSecond(Length.Meters / seconds) : null;
        }
    }
}

/// <summary>Two neighboring passes.</summary>
/// <param name="Left">Number of the left one.</param>
/// <param name="Right">Number of the right one.</param>
/// <param name="Apart">Between their mean lines.</param>
public sealed record PassSpacing(int Left, int Right, Length Apart);

/// <summary>The passes of a job, and how they lie to each other.</summary>
public sealed record FlownPasses
{
    public required ImmutableArray<FlownPass> All { get; init; }

    /// <summary>From 0 up to 180 degrees: there and back is one heading. None where nothing was flown.</summary>
    public required Bearing? Heading { get; init; }

    /// <summary>Between neighbors over a common stretch, left to right.</summary>
    public required ImmutableArray<PassSpacing> Spacings { get; init; }

    public Length? MeanSpacing => Spacings.IsEmpty ? null : Length.FromMeters(Spacings.Average(s => s.Apart.Meters));

    /// <summary>Root of the mean square of how far spacings are off a swath.</summary>
    [Source(nameof(Sources.Definition), "√ mean (spacing − swath)²")]
    public Length? SpacingError(Length swath) =>
        Spacings.IsEmpty ? null : Length.FromMeters(Math.Sqrt(Spacings.Average(s => (s.Apart.Meters - swath.Meters) * (s.Apart.Meters - swath.Meters))));
}
