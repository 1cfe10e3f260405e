using Watersown.Water.Filling;

namespace Watersown.Schedule.Finish;

/// <summary>A field of a way of opening gates, with the morning on which it could be sown.</summary>
/// <param name="Finish">When it is full.</param>
public sealed record GateField(FieldFinish Finish)
{
    /// <summary>The first hour of flying once it is full; none where it is never full.</summary>
    public DateTimeOffset? Sow { get; init; }

    /// <summary>Age of its head check then.</summary>
    public TimeSpan? HeadAge { get; init; }

    /// <summary>Its seed that can be sown no longer then: batches meant for it.</summary>
    public ImmutableArray<string> SeedLost { get; init; } = [];

    public required Money Delay { get; init; }

    public required Money HeadCost { get; init; }

    public required Money SeedCost { get; init; }

    public Money Total => Delay + HeadCost + SeedCost;
}

/// <summary>One way of opening the next gates, priced as a plan is.</summary>
/// <param name="Fields">Fields opened, the first to get water first.</param>
/// <param name="Way">One after another, or side by side.</param>
/// <param name="Finish">What comes of it.</param>
/// <param name="Opened">Each field that fills, those that fill already too.</param>
public sealed record GateChoice(ImmutableArray<string> Fields, FillingWay Way, SourceFinish Finish, ImmutableArray<GateField> Opened)
{
    public Money Total => Opened.Aggregate(Money.Zero, (sum, f) => sum + f.Total);

    /// <summary>The oldest head check on its morning of sowing.</summary>
    public TimeSpan? OldestHead => Opened.Max(f => f.HeadAge);

    /// <summary>The lines behind it.</summary>
    public Working Working()
    {
        var working = Watersown.Working.Empty;
        foreach (var field in Opened)
        {
            var code = field.Finish.Field.Code;
            working = working
                .Step("f(" + code + ")", "full after", Datum.Of((field.Finish.Full - field.Finish.HeadWet)?.TotalDays), "days from its first water", "check by check, other wet land held first", Sources.WaterBalance)
                .Step("a(" + code + ")", "age of its head check when it can be sown", Datum.Of(field.HeadAge?.TotalDays), "days", "first hour of flying once it is full − first water", Sources.Arithmetic)
                .Step("c(" + code + ")", "delay, head check and seed together", (double)field.Total.Amount, "$", field.Finish.Never ? "acres × price of an acre not sown" : "acres × (price a day × days + k × (a − 8)²) + seed that can be sown no longer", Sources.FarmDefault);
        }

        return working.Step("C", "all of them", (double)Total.Amount, "$", "Σ c", Sources.Arithmetic);
    }
}
