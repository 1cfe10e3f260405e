using Watersown.Land;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Season.Texts;

/// <summary>Makes facts of sentences, one after the other; what a sentence leaves unsaid is taken from the one before it.</summary>
internal sealed partial class TextFacts(TextContext context, EchoWords words)
{
    private readonly List<MarkFact> facts = [];
    private ImmutableArray<string> fields = context.Field is { } field ? [field] : [];
    private int? check;
    private int asked; // questions before this sentence

    public ImmutableArray<MarkFact> All => [.. facts];

    public List<string> Questions { get; } = [];

    public List<string> Lost { get; } = [];

    /// <summary>The field that was last spoken of, if it was one.</summary>
    public string? Field => fields.Length == 1 ? fields[0] : null;

    public void Add(MarkFact fact)
    {
        if (!facts.Contains(fact)) facts.Add(fact);
    }

    public void Take(TextClause clause)
    {
        if (clause.Fields.Count > 0) (fields, check) = ([.. clause.Fields.Distinct(StringComparer.Ordinal)], null);
        check = clause.Check ?? check;
        asked = Questions.Count;
        foreach (var (word, codes) in clause.Unsure) Ask(Template.Fill(words.WhichOf, ("word", word), ("one", Called(codes[0])), ("other", Called(codes[1]))));
        // A sentence about a field that nobody can tell says nothing of the field before it.
        if (clause.Fields.Count == 0 && (clause.Unsure.Count > 0 || (clause.Strange.Count > 0 && !IsAboutBatch(clause)))) (fields, check) = ([], null);
        foreach (var strange in clause.Strange.Where(_ => !IsAboutBatch(clause))) Ask(Template.Fill(words.NoSuchField, ("word", strange)));
        var known = TakeSource(clause) | TakeFault(clause) | TakeSeed(clause) | TakeFlight(clause) | TakeTalk(clause) | TakeField(clause);
        Lost.AddRange(clause.Lost);
        if (!known && clause.Fields.Count + clause.Bare.Count > 0 && clause.Lost.Count == 0 && clause.Unsure.Count == 0)
            Lost.AddRange(clause.Fields.Concat(clause.Bare.Select(b => Say.Number(b, 2).TrimEnd('0').TrimEnd('.'))));
    }

    private static bool IsAboutBatch(TextClause clause) => clause.Has(TextKey.InSoak) || clause.Has(TextKey.Drained) || clause.Has(TextKey.Dumped);

    private bool TakeSource(TextClause clause)
    {
        var source = clause.Source ?? OnlyPump(clause);
        if (source is null) return false;
        if (clause.Has(TextKey.Broken)) Add(new FaultFound(IsPump(source, clause) ? FaultKind.Pump : FaultKind.Gate) { Source = source });
        else if (clause.Has(TextKey.Curtailed)) return Curtailed(source, clause);
        else if (clause.Has(TextKey.Off)) Add(new SourceSwitched(source, Up: false));
        else if (clause.Has(TextKey.On)) Add(new SourceSwitched(source, Up: true));
        else if (Flow(clause) is { } flow) Add(new FlowSeen(source, flow, null));
        else return false;
        return true;
    }

    /// <summary>To the hundredth of a cfs, as it is said back.</summary>
    private static FlowRate? Flow(TextClause clause) =>
        clause.Figure(TextKey.CubicFeet) is { } cfs ? FlowRate.FromCubicFeetPerSecond(Math.Round(cfs, 2))
        : clause.Figure(TextKey.Gallons) is { } gallons ? FlowRate.FromCubicFeetPerSecond(Math.Round(FlowRate.FromGallonsPerMinute(gallons).CubicFeetPerSecond, 2)) : null;

    // Of two days in one sentence nobody can tell which is the end: that is told on the page of the source.
    private bool Curtailed(string source, TextClause clause)
    {
        if (Flow(clause) is not { } left || clause.Has(TextKey.Until)) return false;
        Add(new WaterCurtailed(source, Beginning(source, clause)) { Left = left });
        return true;
    }

    /// <summary>At once where no other day is named; else at the source's first hour of change on it.</summary>
    private DateTimeOffset Beginning(string source, TextClause clause)
    {
        var today = FarmTime.Day(context.State, context.Now);
        var named = clause.Has(TextKey.Weekday) ? clause.Value(TextKey.Weekday) : clause is { Date: null } && clause.Has(TextKey.Month) && clause.Value(TextKey.Month) == 3 ? (int)DayOfWeek.Tuesday : -1; // "mar": martes
        var day = clause.Date is { } date && date.Day <= DaysOf(today.Year, date.Month) ? new DateOnly(today.Year, date.Month, date.Day)
            : named >= 0 ? today.AddDays((named - (int)today.DayOfWeek + 7) % 7) : today;
        var hours = context.State.Farm.Source(source)?.ChangeHours ?? [];
        return day == today ? context.Now : FarmTime.At(context.State, day, hours.IsEmpty ? TimeOnly.MinValue : hours.Min());
    }

    /// <summary>"Pump off" on a farm with one pump needs no name.</summary>
    private string? OnlyPump(TextClause clause)
    {
        if (!clause.Has(TextKey.Pump) || !(clause.Has(TextKey.Off) || clause.Has(TextKey.On) || clause.Has(TextKey.Broken))) return null;
        ImmutableArray<WaterSource> pumps = [.. context.State.Farm.Sources.Where(s => s.Kind == WaterSourceKind.LiftPump)];
        return pumps.Length == 1 ? pumps[0].Code : null;
    }

    private bool IsPump(string source, TextClause clause) =>
        clause.Has(TextKey.Pump) || (!clause.Has(TextKey.Gate) && context.State.Farm.Source(source)?.Kind is WaterSourceKind.LiftPump or WaterSourceKind.Well);

    private bool TakeFault(TextClause clause)
    {
        var broken = clause.Has(TextKey.Broken) || clause.Has(TextKey.Leak);
        if (clause.Has(TextKey.Levee) && broken)
            return ForFields(f => new FaultFound(FaultKind.Levee) { Field = f, Check = clause.Range?.From ?? clause.Check, ToCheck = clause.Range?.To });
        if (!clause.Has(TextKey.Box) && clause.Box is null) return false;
        if (broken) return ForFields(f => new FaultFound(FaultKind.Box) { Field = f, Box = clause.Box });
        if (Depth(clause) is not { } height) return false;
        if (clause.Box is { } box) return ForFields(f => new BoardsSet(f, box, height));
        return Ask(words.WhichBox);
    }

    private bool TakeField(TextClause clause)
    {
        var known = false;
        if (clause.Has(TextKey.Stage)) known |= ForFields(f => new StageReached(f, (FieldStage)clause.Value(TextKey.Stage)));
        if (clause.Has(TextKey.Shrimp)) known |= Seen(clause) is { } seen && ForFields(f => new Scouted(f, "shrimp", seen));
        if (clause.Leaves is { } leaves) known |= ForFields(f => new Scouted(f, TextMarks.Leaf, Say.Number(leaves, 1).TrimEnd('0').TrimEnd('.')));
        known |= TakeWater(clause);
        if (Depth(clause) is { } depth && clause.Box is null && !clause.Has(TextKey.Box)) known |= ForFields(f => new DepthRead(f, check, depth));
        return known;
    }

    private static string? Seen(TextClause clause) =>
        clause.Has(TextKey.None) ? "none" : clause.Has(TextKey.Small) ? "small" : clause.Has(TextKey.Large) ? "large" : null;

    private bool TakeWater(TextClause clause)
    {
        WaterSeen? water = clause.Has(TextKey.Reflooded) ? WaterSeen.Reflooded : clause.Has(TextKey.Full) ? WaterSeen.Full : clause.Has(TextKey.Wet) ? WaterSeen.Wet : clause.Has(TextKey.Dry) ? WaterSeen.Dry : null;
        if (water is not { } seen) return false;
        if (clause.Check is null && clause.Bare is [var number, ..] && number == Math.Floor(number) && number is >= 1 and <= 999) check = (int)number;
        if (check is { } place) return ForFields(f => new CheckWater(f, place, seen));
        if (seen == WaterSeen.Full) return ForFields(f => new StageReached(f, FieldStage.Full));
        return Questions.Count > asked || Ask(fields.IsEmpty ? words.WhichField : words.WhichCheck);
    }

    /// <summary>To the hundredth of an inch, as it is said back.</summary>
    private static WaterDepth? Depth(TextClause clause) =>
        clause.Figure(TextKey.Inch) is { } inches ? WaterDepth.FromInches(Math.Round(inches, 2))
        : clause.Figure(TextKey.Centimeter) is { } centimeters ? WaterDepth.FromInches(Math.Round(centimeters / 2.54, 2)) : null;

    private bool ForFields(Func<string, MarkFact> fact)
    {
        if (fields.IsEmpty && Questions.Count == asked) Ask(words.WhichField);
        foreach (var code in fields) Add(fact(code));
        return true;
    }

    private bool Ask(string question)
    {
        if (!Questions.Contains(question, StringComparer.Ordinal)) Questions.Add(question);
        return true;
    }

    private string Called(string code) => context.State.Farm.Field(code).Name;
}
