namespace Watersown.Documents.Json;

/// <summary>
/// What a place of a document may hold. One outline serves the reader, the published schema and the tests, so that they
/// cannot say different things.
/// </summary>
public abstract record Outline
{
    private Outline()
    {
    }

    /// <summary>A number within its limits.</summary>
    public sealed record Number(Limit Limit) : Outline;

    /// <summary>Words of any kind, at most so many letters.</summary>
    public sealed record Text(int Most = 200) : Outline
    {
        /// <summary>Nothing may stand there, as where a figure has no unit.</summary>
        public bool MayBeEmpty { get; init; }
    }

    /// <summary>A value of any sort, as in the line of a working.</summary>
    public sealed record Anything : Outline;

    /// <summary>One word out of a few.</summary>
    public sealed record Word(ImmutableArray<string> Choices) : Outline;

    public sealed record Flag : Outline;

    /// <summary>A day such as 2026-05-08.</summary>
    public sealed record Day : Outline;

    /// <summary>A moment of the farm's own clock, or one with its offset from UTC.</summary>
    public sealed record Moment : Outline;

    /// <summary>A moment with its offset from UTC, so that no clock has to be asked.</summary>
    public sealed record Instant : Outline;

    /// <summary>An hour of the day such as 07:00.</summary>
    public sealed record Hour : Outline;

    /// <summary>A GeoJSON Polygon or MultiPolygon.</summary>
    public sealed record Geometry : Outline;

    public sealed record Several(Outline Entry, int Most = 10_000) : Outline;

    /// <summary>A number, or a list in its place.</summary>
    public sealed record NumberOrSeveral(Number One, Several Many) : Outline;

    /// <summary>Named keys.</summary>
    public sealed record Thing(string Name, ImmutableArray<OutlineKey> Keys) : Outline
    {
        /// <summary>Keys of which one must be given, and only one.</summary>
        public ImmutableArray<string> ExactlyOne { get; init; } = [];
    }
}

/// <summary>One key of a thing.</summary>
/// <param name="Name">As written, unit last.</param>
/// <param name="Value">What it may hold.</param>
/// <param name="Meaning">What it is, in the trade's words.</param>
public sealed record OutlineKey(string Name, Outline Value, string Meaning)
{
    public bool Required { get; init; }

    /// <summary>A number named and limited by its limit.</summary>
    public static OutlineKey Of(Limit limit, string meaning) => new(limit.Key, new Outline.Number(limit), meaning);
}
