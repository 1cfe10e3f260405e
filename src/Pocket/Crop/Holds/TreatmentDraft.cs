using System.Globalization;
using Watersown.Holds;
using Watersown.Season;

namespace Watersown.Pocket.Crop.Holds;

/// <summary>A treatment while it is typed.</summary>
public sealed class TreatmentDraft
{
    public string Field { get; set; } = string.Empty;

    public string Product { get; set; } = string.Empty;

    public DateOnly? From { get; set; }

    public DateOnly? Until { get; set; }

    public WaterNeeded Needs { get; set; }

    public bool MovesWithin { get; set; }

    public bool Hired { get; set; }

    /// <summary>How far the treatment has come that is put right; none where a new one is typed.</summary>
    public TreatmentState? Corrects { get; private init; }

    private Treatment? Before { get; init; }

    /// <summary>Everything else, by the name of its word.</summary>
    public IDictionary<string, string> Typed { get; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>Field, product and days are there.</summary>
    public bool IsWhole => Field.Length > 0 && Product.Trim().Length > 0 && From is not null && (Until ?? From) >= From;

    /// <summary>A treatment to be put right, as it was typed.</summary>
    public static TreatmentDraft Of(TreatmentTold told)
    {
        var (what, rule, paper, work) = (told.What, told.What.Rule, told.What.Paper, told.What.Work);
        var draft = new TreatmentDraft
        {
            Field = what.Field,
            Product = what.Product,
            From = what.From,
            Until = what.Until,
            Needs = rule.Needs,
            MovesWithin = rule.MovesWithin,
            Hired = work.Hired,
            Corrects = told.State,
            Before = what,
        };
        (string Key, object? Value)[] lines =
        [
            (nameof(HoldRule.Days), rule.Days), (nameof(HoldRule.Releases), rule.Releases), (nameof(HoldRule.LeastDepth), rule.LeastDepth?.Inches), (nameof(HoldRule.Buffer), rule.Buffer),
            (nameof(HoldRule.WindLeast), rule.WindLeast?.MilesPerHour), (nameof(HoldRule.WindMost), rule.WindMost?.MilesPerHour), (nameof(HoldRule.NoticeHours), rule.NoticeHours), (nameof(HoldRule.Text), rule.Text),
            (nameof(TreatmentPaper.Registration), paper.Registration), (nameof(TreatmentPaper.Active), paper.Active), (nameof(TreatmentPaper.Recommendation), paper.Recommendation), (nameof(TreatmentPaper.Permit), paper.Permit),
            (nameof(TreatmentPaper.ReentryHours), paper.ReentryHours), (nameof(TreatmentPaper.PreHarvestDays), paper.PreHarvestDays), (nameof(TreatmentPaper.Leaves), paper.Leaves), (nameof(TreatmentPaper.EnteredBy), paper.EnteredBy), (nameof(TreatmentPaper.LabelPhoto), paper.LabelPhoto),
            (nameof(TreatmentWork.Amount), work.Amount), (nameof(TreatmentWork.Land), work.Land?.Acres), (nameof(TreatmentWork.Method), work.Method), (nameof(TreatmentWork.Applicator), work.Applicator),
        ];
        foreach (var (key, value) in lines) draft.Typed[key] = value is double number ? Math.Round(number, 4).ToString(CultureInfo.InvariantCulture) : Convert.ToString(value, CultureInfo.InvariantCulture) ?? string.Empty;
        return draft;
    }

    /// <summary>The fact as typed so far; none while it is not whole.</summary>
    /// <param name="state">Booked or applied.</param>
    /// <param name="holds">What is there already.</param>
    /// <param name="by">Who types.</param>
    /// <param name="today">On which day.</param>
    public TreatmentTold? Fact(TreatmentState state, HoldBook holds, string by, DateOnly today) => !IsWhole ? null : new TreatmentTold(
        new Treatment(Field, Product.Trim(), From!.Value, Until ?? From.Value)
        {
            Round = Before?.Round ?? holds.NextRound(Field, Product.Trim()),
            Rule = new HoldRule
            {
                Counting = Before?.Rule.Counting,
                Days = Whole(nameof(HoldRule.Days)),
                Needs = Needs,
                MovesWithin = MovesWithin,
                Releases = Word(nameof(HoldRule.Releases)),
                LeastDepth = Number(nameof(HoldRule.LeastDepth)) is { } inches ? WaterDepth.FromInches(inches) : null,
                Buffer = Word(nameof(HoldRule.Buffer)),
                WindLeast = Wind(nameof(HoldRule.WindLeast)),
                WindMost = Wind(nameof(HoldRule.WindMost)),
                NoticeHours = Whole(nameof(HoldRule.NoticeHours)),
                Text = Word(nameof(HoldRule.Text)),
            },
            Paper = new TreatmentPaper
            {
                Registration = Word(nameof(TreatmentPaper.Registration)),
                Active = Word(nameof(TreatmentPaper.Active)),
                Recommendation = Word(nameof(TreatmentPaper.Recommendation)),
                Permit = Word(nameof(TreatmentPaper.Permit)),
                NoticeFiled = Before?.Paper.NoticeFiled,
                ReentryHours = Whole(nameof(TreatmentPaper.ReentryHours)),
                PreHarvestDays = Whole(nameof(TreatmentPaper.PreHarvestDays)),
                Leaves = Word(nameof(TreatmentPaper.Leaves)),
                EnteredBy = Word(nameof(TreatmentPaper.EnteredBy)) ?? by,
                EnteredOn = today,
                LabelPhoto = Word(nameof(TreatmentPaper.LabelPhoto)),
            },
            Work = new TreatmentWork
            {
                Amount = Word(nameof(TreatmentWork.Amount)),
                Land = Number(nameof(TreatmentWork.Land)) is { } acres and > 0 ? Area.FromAcres(acres) : null,
                Method = Word(nameof(TreatmentWork.Method)),
                Applicator = Word(nameof(TreatmentWork.Applicator)),
                Hired = Hired,
                Begun = Before?.Work.Begun,
                Ended = Before?.Work.Ended,
                Wind = Before?.Work.Wind,
            },
        },
        state);

    private string? Word(string key) => Typed.TryGetValue(key, out var text) ? Typing.Words(text) : null;

    private int? Whole(string key) => Typed.TryGetValue(key, out var text) ? Typing.Whole(text) : null;

    private double? Number(string key) => Typed.TryGetValue(key, out var text) ? Typing.Number(text) : null;

    private Speed? Wind(string key) => Number(key) is { } mph ? Speed.FromMilesPerHour(mph) : null;
}
