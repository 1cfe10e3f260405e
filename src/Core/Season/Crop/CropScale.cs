using Watersown.Growth;

namespace Watersown.Season.Crop;

/// <summary>The days on which the stages of all fields are drawn.</summary>
/// <param name="From">Left edge.</param>
/// <param name="Until">Right edge.</param>
public sealed record CropScale(DateOnly From, DateOnly Until)
{
    private const int Margin = 5;

    /// <summary>Room for every field from its sowing to its last stage, and for today.</summary>
    public static CropScale Of(ImmutableArray<FieldStages> fields, DateOnly today)
    {
        var ends = fields.SelectMany(f => f.Calendar.Stages.Select(s => s.Latest).Append(f.Sown)).Append(today);
        return new CropScale(fields.Select(f => f.Sown).Append(today).Min().AddDays(-Margin), ends.Max().AddDays(Margin));
    }

    /// <summary>How far along a day lies; what lies outside stands at the edge.</summary>
    public Fraction At(DateOnly day) => Fraction.FromShare(Math.Clamp((day.DayNumber - From.DayNumber) / (double)(Until.DayNumber - From.DayNumber), 0, 1));

    /// <summary>How much of it a stretch takes.</summary>
    public Fraction Width(DateOnly from, DateOnly until) => Fraction.FromShare(Math.Max(0, At(until).Share - At(from).Share));

    /// <summary>First days of months inside.</summary>
    public ImmutableArray<DateOnly> Months
    {
        get
        {
            var months = ImmutableArray.CreateBuilder<DateOnly>();
            for (var month = new DateOnly(From.Year, From.Month, 1).AddMonths(1); month < Until; month = month.AddMonths(1)) months.Add(month);
            return months.ToImmutable();
        }
    }
}

/// <summary>What a stretch of a crop's life is.</summary>
public enum CropPhase
{
    Seedling,
    Tillering,
    Panicle,
    Grain,
}

/// <summary>A stretch of a crop's life, to be drawn.</summary>
public sealed record CropSpan(CropPhase Phase, DateOnly From, DateOnly Until)
{
    /// <summary>The stretches of a field as far as its stages reach.</summary>
    public static ImmutableArray<CropSpan> Of(FieldStages field)
    {
        var spans = ImmutableArray.CreateBuilder<CropSpan>();
        var from = field.Sown;
        foreach (var (phase, stage) in new[] { (CropPhase.Seedling, CropStage.Tillering), (CropPhase.Tillering, CropStage.PanicleInitiation), (CropPhase.Panicle, CropStage.Heading), (CropPhase.Grain, CropStage.Mature) })
        {
            if (field.Calendar.Of(stage) is not { } end) break;
            spans.Add(new CropSpan(phase, from, end.Day));
            from = end.Day;
        }

        return spans.ToImmutable();
    }
}
