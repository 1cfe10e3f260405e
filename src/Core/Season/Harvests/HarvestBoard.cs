using Watersown.Harvest;
using Watersown.Schedule;

namespace Watersown.Season.Harvests;

/// <summary>The harvest ahead: what decides its pace, and in which order to cut.</summary>
public sealed record HarvestBoard
{
    /// <summary>Fields sown or sampled with land still standing.</summary>
    public required ImmutableArray<StandingGrain> Standing { get; init; }

    /// <summary>With all room that was told; none where combines, dryer or grain expected are not told, or nothing stands.</summary>
    public HarvestPlan? Plan { get; init; }

    /// <summary>With the farm's own dryer alone; none where no other gave room.</summary>
    public HarvestPlan? Alone { get; init; }

    /// <summary>The pace, with its working.</summary>
    public Worked<HarvestRate>? Rate { get; init; }

    /// <summary>What the days ahead hold, as the book tells it.</summary>
    /// <param name="book">The season.</param>
    public static HarvestBoard Of(SeasonBook book)
    {
        var harvest = book.Harvest;
        ImmutableArray<StandingGrain> standing =
        [
            .. book.State.Farm.Fields.Select(f => (Field: f, Told: harvest.Field(f.Code), Season: book.State.Fields.FirstOrDefault(s => s.Code == f.Code)))
                .Where(f => f.Season is { Stage: FieldStage.Sown } || !f.Told.Samples.IsEmpty)
                .Where(f => f.Told.Left(f.Field.Net) > Area.Zero)
                .Select(f => new StandingGrain(f.Field.Code, f.Told.Left(f.Field.Net), harvest.Means.Expected ?? GrainYield.Zero)
                {
                    Variety = f.Season?.Variety,
                    Trend = MoistureTrend.Of(f.Told.Samples),
                    Lodged = f.Told.Lodged,
                    Carries = DrainBoard.Carries(book, f.Field),
                }),
        ];
        if (standing.IsEmpty || harvest.Means is not { Combining: { } combining, Sets: { } sets, Expected: { } expected } means || combining <= Area.Zero) return new HarvestBoard { Standing = standing };
        var ask = new HarvestAsk(standing, means, book.State.Now) { Rooms = harvest.Rooms };
        var land = standing.Aggregate(Area.Zero, (sum, f) => sum + f.Left);
        ImmutableArray<Fraction> measured = [.. standing.Where(f => f.Trend is not null).Select(f => f.Trend!.On(book.State.Now))];
        var moisture = Fraction.FromShare(measured.IsEmpty ? (means.CutFrom.Share + means.CutTo.Share) / 2 : Math.Min(means.CutFrom.Share, measured.Average(m => m.Share)));
        return new HarvestBoard
        {
            Standing = standing,
            Plan = HarvestOrder.Plan(ask),
            Alone = harvest.Rooms.Any(r => r.Dryer is not null) ? HarvestOrder.Plan(ask with { Rooms = [.. harvest.Rooms.Where(r => r.Dryer is null)] }) : null,
            Rate = HarvestRate.Of(combining, expected, moisture, sets, means.SetWeight, land),
        };
    }
}
