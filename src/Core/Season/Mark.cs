namespace Watersown.Season;

/// <summary>The name of a mark, made by the device at random, so that no two devices ever need to agree on one.</summary>
/// <param name="Text">32 lower-case hexadecimal digits.</param>
public readonly record struct MarkId(string Text) : IComparable<MarkId>
{
    public const int Digits = 32;

    /// <summary>The text has the form of a mark's name.</summary>
    public static bool Holds(string? text) => text is { Length: Digits } && text.All(c => c is (>= '0' and <= '9') or (>= 'a' and <= 'f'));

    public int CompareTo(MarkId other) => string.CompareOrdinal(Text, other.Text);

    public static bool operator <(MarkId left, MarkId right) => left.CompareTo(right) < 0;

    public static bool operator >(MarkId left, MarkId right) => left.CompareTo(right) > 0;

    public static bool operator <=(MarkId left, MarkId right) => left.CompareTo(right) <= 0;

    public static bool operator >=(MarkId left, MarkId right) => left.CompareTo(right) >= 0;

    public override string ToString() => Text ?? string.Empty;
}

/// <summary>How somebody knows.</summary>
public enum Sureness
{
    Measured,
    Told,
    Guessed,
}

/// <summary>
/// One dated fact of the season, as somebody tapped, told or found it. Never changed and never taken out: a correction is
/// another mark that replaces it.
/// </summary>
public sealed record Mark
{
    public required MarkId Id { get; init; }

    /// <summary>When it was true; often earlier than <see cref="Entered"/>.</summary>
    public required DateTimeOffset Happened { get; init; }

    /// <summary>When it was put down.</summary>
    public required DateTimeOffset Entered { get; init; }

    /// <summary>Who says so.</summary>
    public required string By { get; init; }

    /// <summary>The device it was put down on.</summary>
    public required string Device { get; init; }

    public Sureness Sure { get; init; }

    /// <summary>The mark that this one stands in for, or withdraws.</summary>
    public MarkId? Replaces { get; init; }

    public string? Note { get; init; }

    public required MarkFact Fact { get; init; }
}

/// <summary>What a mark says. A closed set: each is a sealed record of this room.</summary>
public abstract record MarkFact
{
    private protected MarkFact()
    {
    }

    /// <summary>Code of the field it is about; it may be one that the farm does not have yet.</summary>
    public virtual string? AboutField => null;

    /// <summary>Code of the water source it is about.</summary>
    public virtual string? AboutSource => null;

    /// <summary>Code of the batch it is about.</summary>
    public virtual string? AboutBatch => null;

    /// <summary>Number of the trailer it is about.</summary>
    public virtual string? AboutTrailer => null;
}

/// <summary>A fact of a sort, or with a word, that this desk does not know yet: kept as a newer device wrote it.</summary>
/// <param name="Kind">Its kind, as written.</param>
/// <param name="Raw">The fact as written.</param>
public sealed record UnknownFact(string Kind, string Raw) : MarkFact
{
    /// <summary>Code of the field, where the kind is known and only a word of it is not.</summary>
    public string? Field { get; init; }

    public override string? AboutField => Field;
}
