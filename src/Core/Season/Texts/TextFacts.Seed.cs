
namespace Watersown.Season.Texts;

internal sealed partial class TextFacts
{
    private bool TakeSeed(TextClause clause)
    {
        if (IsAboutBatch(clause)) return TakeBatch(clause);
        var trailer = clause.Trailer ?? (clause.Has(TextKey.Loaded) || clause.Has(TextKey.Left) ? context.Trailer : null);
        if (trailer is null) return (clause.Has(TextKey.Loaded) || clause.Has(TextKey.Left)) && Ask(words.WhichTrailer);
        if (clause.Has(TextKey.Left))
        {
            if (Wet(clause) is not { } left) return false;
            Add(new SeedLeft(trailer, left));
            return true;
        }

        if (clause.Has(TextKey.Load) || clause.Has(TextKey.Gone) || clause.Has(TextKey.Sown)) return false;
        var field = clause.Fields.Count == 1 ? clause.Fields[0] : null;
        var batch = clause.Batch ?? (clause.Trailer is null ? context.Batch : null);
        var weight = Wet(clause);
        if (field is null && batch is null && weight is null && !clause.Has(TextKey.Loaded)) return false;
        Add(new TrailerSeen(trailer) { Field = field, Batch = batch, Weighed = weight, Place = clause.Has(TextKey.Loaded) ? TextMarks.Loaded : null });
        return true;
    }

    private bool TakeBatch(TextClause clause)
    {
        var batch = clause.Batch ?? clause.NewBatch() ?? context.Batch;
        if (batch is null) return Ask(words.WhichBatch);
        var dry = Dry(clause);
        if (clause.Has(TextKey.Dumped)) Add(new BatchDumped(batch, dry));
        else if (clause.Has(TextKey.Drained)) Add(new BatchDrained(batch));
        else Add(new BatchInSoak(batch) { Dry = dry });
        return true;
    }

    private bool TakeFlight(TextClause clause)
    {
        if (clause.Has(TextKey.Sown) || clause.Has(TextKey.Resown))
        {
            return ForFields(f => new FieldSown(f)
            {
                Land = clause.Figure(TextKey.Acre) is { } acres ? Area.FromAcres(Math.Round(acres, 2)) : null,
                Batch = clause.Batch,
                Dry = Dry(clause),
                Loads = clause.Loads,
                Resow = clause.Has(TextKey.Resown),
            });
        }

        if (clause.Loads is { } loads && TakeLoads(loads)) return true;
        if (clause.Has(TextKey.Load) && (clause.Has(TextKey.Gone) || clause.LoadNumber is not null))
            return ForFields(f => new LoadGone(f, clause.LoadNumber) { Trailer = clause.Trailer ?? context.Trailer, Soaked = Wet(clause) });
        if (!clause.Has(TextKey.NotFlying)) return false;
        var why = clause.Has(TextKey.Wind) ? StandDownReason.Wind : clause.Has(TextKey.Why) ? (StandDownReason)clause.Value(TextKey.Why) : StandDownReason.Other;
        Add(new StoodDown(Day(clause), context.Person, why) { Field = clause.Fields.Count == 1 ? clause.Fields[0] : null });
        return true;
    }

    /// <summary>"Flown, 15 loads": the loads belong to the sowing just told.</summary>
    private bool TakeLoads(int loads)
    {
        var told = facts.FindLastIndex(f => f is FieldSown { Loads: null });
        if (told < 0 || told != facts.Count - 1) return false;
        facts[told] = (FieldSown)facts[told] with { Loads = loads };
        return true;
    }

    /// <summary>The day that is named, of this year; else today.</summary>
    private DateOnly Day(TextClause clause)
    {
        var now = context.Now.ToOffset(context.State.Offset);
        if (clause.Date is not { } date || date.Day > DaysOf(now.Year, date.Month)) return new DateOnly(now.Year, now.Month, now.Day);
        return new DateOnly(now.Year, date.Month, date.Day);
    }

    private static int DaysOf(int year, int month) => new DateOnly(year, month, 1).AddMonths(1).AddDays(-1).Day;

    private bool TakeTalk(TextClause clause)
    {
        var wind = clause.WindSpeed ?? (clause.Has(TextKey.Wind) && !clause.Has(TextKey.NotFlying) ? clause.Figure(TextKey.Mile) ?? (clause.Bare.Count > 0 ? clause.Bare[0] : null) : null);
        if (wind is { } speed && !clause.Has(TextKey.NotFlying))
        {
            Add(new WindSeen(Mph(speed), Mph(clause.GustSpeed ?? speed)) { From = (clause.Figure(TextKey.Degree) ?? clause.WindFrom) is { } from ? Bearing.FromDegrees(Math.Round(from)) : null });
            return true;
        }

        ToldState? state = clause.Has(TextKey.NotReached) ? ToldState.NotReached : clause.Has(TextKey.Agreed) ? ToldState.Agreed : clause.Has(TextKey.Heard) ? ToldState.Heard : clause.Has(TextKey.Told) ? ToldState.Told : null;
        if (state is not { } how) return false;
        if (context.Message is not { } message) return Ask(words.WhichMessage);
        Add(new Told(message, context.Person, how));
        return true;
    }

    private static Speed Mph(double speed) => Speed.FromMilesPerHour(Math.Round(speed, 1));

    /// <summary>To the pound, as it is said back; a weight that does not say dry or wet is soaked where only that can be.</summary>
    private static SoakedSeed? Wet(TextClause clause) => clause.Figure(TextKey.PoundWet, TextKey.Pound) is { } pounds ? SoakedSeed.FromPounds(Math.Round(pounds)) : null;

    private static DrySeed? Dry(TextClause clause) => clause.Figure(TextKey.PoundDry) is { } pounds ? DrySeed.FromPounds(Math.Round(pounds)) : null;
}
