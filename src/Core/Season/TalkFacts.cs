using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Season;

/// <summary>How far a message has come. "Not reached" is an answer, not an error.</summary>
public enum ToldState
{
    Told,
    Heard,
    Agreed,
    NotReached,
}

/// <summary>A step of a plan that somebody was told of.</summary>
public sealed record ToldStep(string Field, PlanTaskKind Task, DateTimeOffset Start);

/// <summary>Somebody was told something, or answered.</summary>
/// <param name="Message">Name of the message, the same through all its states.</param>
/// <param name="Person">Whom.</param>
/// <param name="State">How far it has come.</param>
public sealed record Told(string Message, string Person, ToldState State) : MarkFact
{
    public string? Role { get; init; }

    public bool ByVoice { get; init; }

    /// <summary>Number of the plan it came from.</summary>
    public int? Plan { get; init; }

    /// <summary>The words, as they were sent or said.</summary>
    public string? Text { get; init; }

    /// <summary>Steps of the plan that it told of.</summary>
    public FactList<ToldStep> Steps { get; init; } = [];
}

/// <summary>A step fixed by a person.</summary>
public sealed record StepPinned(string Field, PlanTaskKind Task, DateTimeOffset Start) : MarkFact
{
    public override string? AboutField => Field;
}

/// <summary>A step given back to the plan.</summary>
public sealed record StepUnpinned(string Field, PlanTaskKind Task) : MarkFact
{
    public override string? AboutField => Field;
}

/// <summary>A stop that somebody overrode, with the reason.</summary>
/// <param name="Stop">Which stop, as it was worded.</param>
/// <param name="Who">Who answers for it.</param>
/// <param name="Reason">Why.</param>
public sealed record Overridden(string Stop, string Who, string Reason) : MarkFact
{
    public string? Field { get; init; }

    public string? Batch { get; init; }

    public string? Trailer { get; init; }

    public override string? AboutField => Field;

    public override string? AboutBatch => Batch;

    public override string? AboutTrailer => Trailer;
}

/// <summary>Somebody to ring or hand a sheet to.</summary>
public sealed record PersonNamed(string Name, string Role) : MarkFact
{
    public string? Phone { get; init; }

    public Language Speaks { get; init; }
}

/// <summary>A plan was made and given its number.</summary>
public sealed record PlanIssued(int Number, DateTimeOffset MadeAt, string? Why) : MarkFact;

/// <summary>The mark it replaces is taken back: as if it had never been put down.</summary>
public sealed record Withdrawn : MarkFact;
