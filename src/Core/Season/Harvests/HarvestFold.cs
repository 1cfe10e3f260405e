using Watersown.Harvest;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Season.Harvests;

/// <summary>The harvest as the marks about it go by.</summary>
internal sealed class HarvestFold(SeasonState ground, ImmutableArray<Doubt>.Builder doubts)
{
    private readonly Dictionary<string, FieldHarvest> fields = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<DryerRoom> rooms = [];
    private readonly List<(Mark Mark, GrainTicketed Ticket)> tickets = [];
    private readonly List<(Mark Mark, CropShareTold Share)> shares = [];
    private HarvestMeans means = new();

    public void Apply(Mark mark)
    {
        switch (mark.Fact)
        {
            case HarvestMeansTold told:
                Tell(told);
                break;
            case DryerRoomGiven given:
                rooms.Add(new DryerRoom(given.From, given.Until, given.Sets) { Dryer = given.Dryer, Variety = given.Variety });
                break;
            case MoistureSampled sample:
                Of(sample.Field, f => f with { Samples = f.Samples.Add(new MoistureSample(mark.Happened.ToOffset(ground.Offset), sample.Moisture)) });
                break;
            case CropLodged lodged:
                Of(lodged.Field, f => f with { Lodged = lodged.Lies });
                break;
            case BoardsOut boards:
                Of(boards.Field, f => f with { BoardsOut = mark.Happened.ToOffset(ground.Offset) });
                break;
            case FieldCut cut:
                Of(cut.Field, f => f with { Cut = cut.Land is { } land ? (f.Cut ?? Area.Zero) + land : f.Cut, Done = f.Done || cut.Land is null, CutAt = mark.Happened.ToOffset(ground.Offset) });
                break;
            case GrainTicketed ticket:
                Take(mark, ticket);
                break;
            case CropShareTold share:
                shares.RemoveAll(s => Same(s.Share.Field, share.Field) && Same(s.Share.Landlord, share.Landlord));
                shares.Add((mark, share));
                break;
            default:
                break;
        }
    }

    /// <summary>What the marks come to, and what does not agree.</summary>
    /// <param name="state">The season with every mark laid on.</param>
    public HarvestBook Close(SeasonState state)
    {
        foreach (var field in state.Farm.Fields) Check(field, state.Fields.FirstOrDefault(f => f.Code == field.Code)?.Variety);
        return new HarvestBook
        {
            Means = means,
            Rooms = [.. rooms],
            Fields = [.. fields.Values.Select(f => Whole(f, state)).OrderBy(f => f.Code, StringComparer.Ordinal)],
            Tickets = [.. tickets],
            Shares = [.. shares.Select(s => s.Share)],
        };
    }

    // Who says that all of it is cut has cut all that the farm says there is.
    private static FieldHarvest Whole(FieldHarvest field, SeasonState state) =>
        field.Done && state.Farm.Fields.FirstOrDefault(f => Same(f.Code, field.Code)) is { } known && known.Net > (field.Cut ?? Area.Zero) ? field with { Cut = known.Net } : field;

    private void Tell(HarvestMeansTold told) => means = means with
    {
        Combines = told.Combines ?? means.Combines,
        EachDay = told.EachDay ?? means.EachDay,
        Sets = told.Sets ?? means.Sets,
        SetWeight = told.SetWeight ?? means.SetWeight,
        Expected = told.Expected ?? means.Expected,
        CutFrom = told.CutFrom ?? means.CutFrom,
        CutTo = told.CutTo ?? means.CutTo,
    };

    private void Take(Mark mark, GrainTicketed ticket)
    {
        // What cannot be, an older device may still have sent: it is in the story and not in the sums.
        if (ticket.Net <= Mass.Zero) return;
        if (tickets.FirstOrDefault(t => Same(t.Ticket.Number, ticket.Number) && Same(t.Ticket.Dryer, ticket.Dryer)) is { Mark: { } first })
        {
            doubts.Add(new Doubt(HarvestProblems.TicketTwice.At(ticket.Number, ("value", ticket.Number)), [first.Id, mark.Id]) { Field = ticket.AboutField });
            return;
        }

        tickets.Add((mark, ticket));
    }

    private void Check(Land.Field field, string? sown)
    {
        var told = fields.GetValueOrDefault(field.Code);
        if (told?.Cut is { } cut && cut.Acres > field.Net.Acres * 1.02)
            doubts.Add(new Doubt(HarvestProblems.CutTooMuch.At(field.Code, ("value", Acres(cut)), ("limit", Acres(field.Net))), []) { Field = field.Code });
        var part = shares.Where(s => Same(s.Share.Field, field.Code)).ToList();
        if (part.Sum(s => s.Share.Share.Share) > 1 + 1e-9)
            doubts.Add(new Doubt(HarvestProblems.SharesTooMuch.At(field.Code, ("value", Say.Figure(part.Sum(s => s.Share.Share.Percent)) + " %"), ("limit", "100 %")), [.. part.Select(s => s.Mark.Id)]) { Field = field.Code });
        foreach (var (mark, ticket) in tickets)
        {
            if (sown is null || ticket.Variety is not { } variety || Same(variety, sown) || !ticket.Parts.Any(p => Same(p.Field, field.Code))) continue;
            doubts.Add(new Doubt(HarvestProblems.VarietyDiffers.At(field.Code, ("value", ticket.Number), ("limit", variety), ("other", sown)), [mark.Id]) { Field = field.Code });
        }

        if (told is not { Done: true }) return;
        var mine = tickets.Where(t => t.Ticket.Parts.Any(p => Same(p.Field, field.Code))).ToList();
        if (mine.Count == 0) return;
        var given = GrainYield.Of(mine.Aggregate(Mass.Zero, (sum, t) => sum + (GrainTally.PaidOf(t.Ticket) * t.Ticket.Parts.Where(p => Same(p.Field, field.Code)).Sum(p => p.Share.Share))), field.Net);
        if (HarvestLimits.Given.Judge(given.HundredweightsPerAcre, field.Code) is not null)
            doubts.Add(new Doubt(HarvestProblems.YieldOdd.At(field.Code, ("value", Say.Number(given.HundredweightsPerAcre, 1) + " cwt/ac"), ("limit", "40 - 130 cwt/ac")), [.. mine.Select(t => t.Mark.Id)]) { Field = field.Code });
    }

    private void Of(string code, Func<FieldHarvest, FieldHarvest> change) => fields[code] = change(fields.GetValueOrDefault(code) ?? new FieldHarvest(code));

    private static bool Same(string? one, string? other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    private static string Acres(Area land) => Say.Number(land.Acres, 1) + " ac";
}
