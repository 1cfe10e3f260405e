using System.Globalization;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Season;

/// <summary>How far a call has come. Below told there is still somebody to ring.</summary>
public enum CallState
{
    /// <summary>Nobody has said that it was told.</summary>
    ToTell,
    NotReached,
    Told,
    Heard,
    Agreed,
}

/// <summary>One thing to say in a call.</summary>
/// <param name="Text">The words, as one text message.</param>
/// <param name="State">How far these words have come with this person.</param>
/// <param name="Said">The message that they were said in; none where they were not.</param>
public sealed record CallLine(string Text, CallState State, MessageBook? Said);

/// <summary>Everything that one person must be told this morning, as one call.</summary>
/// <param name="Message">Name of the message, the same on every device for the same words to the same person on the same day.</param>
/// <param name="Role">What the person does.</param>
/// <param name="Name">Whom to call.</param>
public sealed record MorningCall(string Message, CrewRole Role, string Name)
{
    public string? Phone { get; init; }

    public required Language Language { get; init; }

    /// <summary>What to say, in order.</summary>
    public required ImmutableArray<CallLine> Lines { get; init; }

    /// <summary>How far the call has come: as far as the line that has come least far.</summary>
    public required CallState State { get; init; }

    /// <summary>The newest word about it, with who put it down and when.</summary>
    public MessageBook? Last { get; init; }

    /// <summary>Something else was told to this person since noon of the day before, and these words go beyond it.</summary>
    public bool Changed { get; init; }

    /// <summary>The last safe moment of what it is about.</summary>
    public DateTimeOffset? Before { get; init; }

    /// <summary>Steps of the plan that it tells of.</summary>
    public ImmutableArray<ToldStep> Steps { get; init; } = [];

    /// <summary>Number of the plan it comes from.</summary>
    public int Plan { get; init; }

    /// <summary>What is still to be said; everything where all was said.</summary>
    public string ToSay => string.Join('\n', Lines.Where(l => State >= CallState.Told || l.State < CallState.Told).Select(l => l.Text));

    /// <summary>The mark that says how far it has come. All its words and steps go with it, so that a later plan can be held against them.</summary>
    /// <param name="state">How far.</param>
    /// <param name="byVoice">Said, not written.</param>
    public Told Mark(ToldState state, bool byVoice) => new(Message, Name, state)
    {
        Role = SaidWords.Role(Role),
        ByVoice = byVoice,
        Plan = Plan,
        Text = string.Join('\n', Lines.Select(l => l.Text)),
        Steps = [.. Steps],
    };
}

/// <summary>
/// Whom to call this morning and what to tell each, held against what the logbook says was told. The words come from the plan;
/// how far they have come only ever from marks.
/// </summary>
public static class MorningCalls
{
    // Who calls about what; a call is first to fall due where one of these decisions is.
    private static readonly ImmutableArray<(CrewRole Role, ImmutableArray<string> Kinds)> about =
    [
        (CrewRole.Warehouse, ["call-soak", "put-in-soak", "drain", "dump-seed"]),
        (CrewRole.District, ["order-water", "cut-water"]),
        (CrewRole.Dispatcher, ["list-flight"]),
    ];

    /// <summary>The calls of the day, those still to be made first, by their last safe moments.</summary>
    /// <param name="book">The season as it stands.</param>
    /// <param name="plan">The plan in force, laid on it.</param>
    public static ImmutableArray<MorningCall> Of(SeasonBook book, SeasonPlan plan)
    {
        var day = FarmTime.Day(book.State, book.Now);
        var since = SaidWords.Since(book);
        return
        [
            .. Messages.Of(plan, day).GroupBy(m => (m.Role, m.Name))
                .Select((g, i) => (Call: Call(book, plan, day, since, [.. g]), Place: i))
                .OrderBy(c => c.Call.State >= CallState.Told).ThenBy(c => c.Call.Before ?? DateTimeOffset.MaxValue).ThenBy(c => c.Place)
                .Select(c => c.Call),
        ];
    }

    private static MorningCall Call(SeasonBook book, SeasonPlan plan, DateOnly day, DateTimeOffset since, ImmutableArray<CrewMessage> messages)
    {
        var to = messages[0];
        var told = book.Messages.Where(m => string.Equals(m.Last.Person, to.Name, StringComparison.OrdinalIgnoreCase) && m.At >= since)
            .OrderBy(m => m.At).ThenBy(m => m.Message, StringComparer.Ordinal).ToImmutableArray();
        ImmutableArray<CallLine> lines = [.. messages.Select(m => LineOf(m.Text, told))];
        var state = lines.Min(l => l.State);
        var first = lines[0].Said;
        var same = lines.All(l => l.Said?.Message == first?.Message) ? first : null;
        return new MorningCall(same?.Message ?? NameOf(day, to, lines), to.Role, to.Name)
        {
            Phone = to.Phone,
            Language = to.Language,
            Lines = lines,
            State = state,
            Last = lines.Select(l => l.Said).Where(s => s is not null).MaxBy(s => s!.At),
            Changed = state < CallState.Told && told.Any(m => m.Last.State != ToldState.NotReached),
            Before = BeforeOf(book, plan, to.Role),
            Steps = StepsOf(plan, book.Now, to.Role, messages),
            Plan = plan.Number,
        };
    }

    // The words were said if the newest message that holds them was; an answer without words answers for those before it.
    private static CallLine LineOf(string text, ImmutableArray<MessageBook> told)
    {
        var said = told.LastOrDefault(m => m.Story.Any(s => s.Fact is Told { Text: { } words } && words.Split('\n').Contains(text, StringComparer.Ordinal)));
        return new CallLine(text, said is null ? CallState.ToTell : StateOf(said.Last.State), said);
    }

    /// <summary>How far somebody was reached by the newest word of it.</summary>
    public static CallState StateOf(ToldState state) => state switch
    {
        ToldState.Told => CallState.Told,
        ToldState.Heard => CallState.Heard,
        ToldState.Agreed => CallState.Agreed,
        ToldState.NotReached => CallState.NotReached,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static DateTimeOffset? BeforeOf(SeasonBook book, SeasonPlan plan, CrewRole role)
    {
        var kinds = about.FirstOrDefault(a => a.Role == role).Kinds;
        if (kinds.IsDefault) return null;
        var until = book.Now.AddHours(36);
        return Boards.DecisionLines.Open(book, plan).Where(d => kinds.Contains(d.Kind, StringComparer.Ordinal) && d.By > book.Now && d.By < until).Select(d => (DateTimeOffset?)d.By).Min();
    }

    /// <summary>The steps of the next three days that the words name: the field or batch, and for all but flights the hour.</summary>
    private static ImmutableArray<ToldStep> StepsOf(SeasonPlan plan, DateTimeOffset now, CrewRole role, ImmutableArray<CrewMessage> messages)
    {
        var tell = new Telling(plan.State, messages[0].Language);
        var steps = plan.Tasks.Where(t => Concerns(role, t.Kind) && t.End > now && t.Start < now.AddDays(3)
            && messages.Any(m => Names(m.Text, t) && (t.Kind == PlanTaskKind.Sow || m.Text.Contains(tell.Clock(t.Start), StringComparison.Ordinal) || m.Text.Contains(tell.Clock(t.End), StringComparison.Ordinal))));
        return [.. steps.Select(t => new ToldStep(t.Field, t.Kind, t.Start)).Distinct()];
    }

    private static bool Concerns(CrewRole role, PlanTaskKind kind) => role switch
    {
        CrewRole.Warehouse => kind is PlanTaskKind.Soak or PlanTaskKind.Drain or PlanTaskKind.Haul,
        CrewRole.Dispatcher or CrewRole.Pilot => kind == PlanTaskKind.Sow,
        CrewRole.Irrigator => kind == PlanTaskKind.Fill,
        CrewRole.District => kind == PlanTaskKind.OrderWater,
        _ => false,
    };

    private static bool Names(string text, PlanTask task) =>
        SaidWords.Holds(text, task.Field) || (task.Batch is { } batch && SaidWords.Holds(text, batch)) || (task.Kind == PlanTaskKind.OrderWater && SaidWords.Holds(text, task.Resource));

    // Two phones that call the same person with the same words mean one message, so its name is made of them and nothing else.
    private static string NameOf(DateOnly day, CrewMessage to, ImmutableArray<CallLine> lines)
    {
        var sum = 14695981039346656037UL;
        foreach (var letter in to.Name + "\n" + string.Join('\n', lines.Select(l => l.Text))) sum = unchecked((sum ^ letter) * 1099511628211UL);
        return string.Create(CultureInfo.InvariantCulture, $"{day:yyyy-MM-dd}/{SaidWords.Role(to.Role)}/{sum:x16}");
    }
}
