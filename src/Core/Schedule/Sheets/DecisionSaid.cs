using System.Globalization;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>A sentence and the language it is in.</summary>
/// <param name="Text">The words.</param>
/// <param name="Speech">Their language.</param>
public sealed record Sentence(string Text, Language Speech);

/// <summary>
/// A decision in the reader's language, with the fields by their names. What the plan no longer holds the steps of is told in
/// the planner's own English words.
/// </summary>
/// <param name="plan">The plan in force.</param>
/// <param name="tell">The reader's language and units.</param>
public sealed class DecisionSaid(SeasonPlan plan, Telling tell)
{
    private readonly MorningWords words = tell.Words.Morning;

    /// <summary>The kind of decision in a few words, and the fields it is about.</summary>
    public string Head(Decision decision) => decision.Fields.IsEmpty ? Kind(decision.Kind) : Kind(decision.Kind) + ": " + string.Join(", ", decision.Fields.Select(Name));

    /// <summary>What to do or to say, with weights, flows and hours.</summary>
    public Sentence What(Decision decision) => Said(decision) is { } text ? Own(text) : new Sentence(decision.What, Language.English);

    /// <summary>What it costs to wait.</summary>
    public Sentence Cost(Decision decision)
    {
        var money = decision.Cost is { } cost ? Telling.Dollars(cost) : "–";
        return decision.Kind switch
        {
            "order-water" => Own(Fill(words.WaitOrder, ("money", Cents(DelayCost.PerAcreDay(plan.State.Prices))))),
            "cut-water" => Own(Fill(words.WaitCut, ("money", money))),
            "call-soak" => Own(Fill(words.WaitCall, ("money", money), ("land", tell.Land(Land(decision))))),
            "put-in-soak" => Own(Fill(words.WaitSoak, ("money", money))),
            "drain" => Own(Fill(words.WaitDrain, ("money", money))),
            "list-flight" => Own(words.WaitFlight),
            "dump-seed" => Own(Fill(words.WaitDump, ("money", money))),
            _ => new Sentence(decision.CostOfWaiting, Language.English),
        };
    }

    /// <summary>With whom it is decided: the person whom the farm names for it, else the plan's word.</summary>
    public string Who(Decision decision) => RoleOf(decision) is { } role ? CrewRoles.Of(plan.State, role).FirstOrDefault()?.Name ?? Messages.NameOf(role, tell.Words == Words.Spanish ? Language.Spanish : Language.English) : decision.Who;

    /// <summary>The telephone of whoever it is decided with; none where nobody has told it.</summary>
    public string? Phone(Decision decision) => RoleOf(decision) is { } role
        ? CrewRoles.Of(plan.State, role).FirstOrDefault()?.Phone
        : decision.Who == plan.State.SoakPlace?.Name ? plan.State.SoakPlace.Phone ?? CrewRoles.Of(plan.State, CrewRole.Warehouse).FirstOrDefault()?.Phone : null;

    // The plan speaks of these by what they are; the soak place it already calls by its name.
    private static CrewRole? RoleOf(Decision decision) => decision switch
    {
        { Kind: "list-flight" } => CrewRole.Dispatcher,
        { Kind: "order-water" or "cut-water", Who: "water district" } => CrewRole.District,
        _ => null,
    };

    private string Kind(string kind) => kind switch
    {
        "order-water" => tell.Words.Day.OrderWater,
        "cut-water" => tell.Words.Day.CutWater,
        "call-soak" => tell.Words.Day.CallSoak,
        "put-in-soak" => tell.Words.Day.PutInSoak,
        "drain" => tell.Words.Day.DrainSeed,
        "list-flight" => tell.Words.Day.ListFlight,
        "dump-seed" => tell.Words.Day.DumpSeed,
        _ => tell.Words.Day.Decision,
    };

    private string? Said(Decision decision) => decision.Kind switch
    {
        "order-water" or "cut-water" => Water(decision),
        "call-soak" or "put-in-soak" => Soak(decision),
        "drain" => Drain(decision),
        "list-flight" => Flight(decision),
        "dump-seed" => Dump(decision),
        _ => null,
    };

    private string? Water(Decision decision)
    {
        var up = decision.Kind == "order-water";
        var change = WaterSheets.Changes(plan).FirstOrDefault(c => c.SendBy == decision.By && c.After > c.Before == up && decision.What.Contains(" " + c.Source.Code + " ", StringComparison.Ordinal));
        return change is null ? null : Fill(words.SayWater, ("source", change.Source.Code), ("before", tell.Flow(change.Before)), ("after", tell.Flow(change.After)), ("when", tell.NearMoment(change.At)));
    }

    private string? Soak(Decision decision)
    {
        var tasks = Tasks(PlanTaskKind.Soak, decision).ToList();
        if (tasks.Count == 0 || tasks.Exists(t => t.Dry is null)) return null;
        var items = tasks.Select(t => Fill(words.SaySeed, ("field", Name(t.Field)), ("weight", Weight(t.Dry!.Value)), ("unit", tell.MassUnit), ("variety", plan.State.Season(t.Field).Variety ?? string.Empty)).TrimEnd());
        var sow = plan.Task(decision.Fields[0], PlanTaskKind.Sow);
        return Fill(words.SaySoak, ("when", tell.NearMoment(tasks[0].Start)), ("items", string.Join(" + ", items)))
            + (sow is null ? string.Empty : " " + Fill(words.SayForSowing, ("day", tell.ShortDay(sow.Start))));
    }

    private string? Drain(Decision decision)
    {
        if (plan.Tasks.FirstOrDefault(t => t.Kind == PlanTaskKind.Drain && t.Start == decision.By && decision.Fields.Contains(t.Field, StringComparer.Ordinal)) is not { Dry: { } dry } task) return null;
        var sow = plan.Task(task.Field, PlanTaskKind.Sow);
        var soak = plan.Tasks.FirstOrDefault(t => t.Kind == PlanTaskKind.Soak && t.Field == task.Field && t.Batch == task.Batch);
        var under = task.Start - soak?.Start;
        return Fill(words.SayDrain, ("batch", plan.State.Batches.FirstOrDefault(b => b.Code == task.Batch)?.Code ?? Name(task.Field)), ("weight", Weight(dry)), ("unit", tell.MassUnit), ("when", sow is null ? tell.Words.Common.NotTold : tell.NearMoment(sow.Start)))
            + (under > plan.State.SoakRules.SoakMost ? " " + Fill(words.SayLongSoak, ("hours", tell.Hours(under.Value)), ("most", Telling.WholeHours(plan.State.SoakRules.SoakMost))) : string.Empty);
    }

    private string? Flight(Decision decision)
    {
        var flights = Tasks(PlanTaskKind.Sow, decision).OrderBy(t => t.Start).ToList();
        if (flights.Count == 0) return null;
        var day = tell.Day(flights[0].Start);
        flights = [.. flights.Where(t => tell.Day(t.Start) == day)];
        return Fill(words.SayFlight, ("day", tell.ShortDay(day)), ("from", tell.Clock(flights[0].Start)), ("land", tell.Land(Land(decision))),
            ("hours", Say.Number(flights.Sum(t => (t.End - t.Start).TotalHours), 1)));
    }

    private string? Dump(Decision decision)
    {
        var batch = plan.State.Batches.FirstOrDefault(b => plan.LostBatches.Contains(b.Code, StringComparer.Ordinal) && decision.What.Contains(" " + b.Code + ":", StringComparison.Ordinal));
        return batch is null ? null : Fill(words.SayDump, ("batch", batch.Code), ("weight", Weight(batch.Dry)), ("unit", tell.MassUnit), ("variety", batch.Variety));
    }

    private IEnumerable<PlanTask> Tasks(PlanTaskKind kind, Decision decision) => plan.Tasks.Where(t => t.Kind == kind && decision.Fields.Contains(t.Field, StringComparer.Ordinal));

    private Area Land(Decision decision) => plan.State.Farm.Fields.Where(f => decision.Fields.Contains(f.Code, StringComparer.Ordinal)).Aggregate(Area.Zero, (sum, f) => sum + f.Net);

    private string Name(string code) => plan.State.Farm.Fields.FirstOrDefault(f => f.Code == code)?.Name ?? code;

    private string Weight(DrySeed seed) => Telling.Count(tell.Whole(seed));

    private Sentence Own(string text) => new(text, tell.Words == Words.Spanish ? Language.Spanish : Language.English);

    private static string Cents(Money money) => "$" + money.Amount.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Fill(string template, params ImmutableArray<(string, string)> facts) => Template.Fill(template, [.. facts]);
}
