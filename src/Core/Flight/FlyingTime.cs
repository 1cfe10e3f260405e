namespace Watersown.Flight;

/// <summary>What one field asks of the aeroplane.</summary>
/// <param name="Net">Acres sown.</param>
/// <param name="Loads">Loads flown.</param>
/// <param name="PassLength">Mean length of a pass.</param>
/// <param name="Ferry">One way from the strip.</param>
public sealed record FlyingJob(Area Net, int Loads, Length PassLength, Length Ferry);

/// <summary>How long a field keeps the aeroplane, load by load.</summary>
public static class FlyingTime
{
    private const double Dust = 1e-9;

    /// <summary>Passes flown on one load: a begun pass counts whole.</summary>
    [Source(nameof(Sources.Arithmetic), "acres of a load over acres of a pass, rounded up")]
    public static int PassesPerLoad(FlyingJob job, Aeroplane aeroplane)
    {
        var perLoad = job.Net / job.Loads;
        var perPass = job.PassLength * aeroplane.Swath;
        return Math.Max(1, (int)Math.Ceiling((perLoad / perPass) - Dust));
    }

    /// <summary>
    /// Reload, ground and air, there and back, and the passes with their turns; times the loads. Common practice in the
    /// trade's own arithmetic; waiting for seed, fuel or people is not in it.
    /// </summary>
    [Source(nameof(Sources.Arithmetic), "time per load: reload + taxi, take-off, landing + 2 × ferry ÷ ferry speed + passes × (length ÷ working speed + turn)")]
    public static TimeSpan Of(FlyingJob job, Aeroplane aeroplane) => PerLoad(job, aeroplane) * job.Loads;

    /// <summary>The same for one load.</summary>
    [Source(nameof(Sources.Arithmetic), "reload + taxi, take-off, landing + 2 × ferry ÷ ferry speed + passes × (length ÷ working speed + turn)")]
    public static TimeSpan PerLoad(FlyingJob job, Aeroplane aeroplane) =>
        aeroplane.Reload + aeroplane.GroundAndAir + FerryPerLoad(job, aeroplane)
        + (PassesPerLoad(job, aeroplane) * ((job.PassLength / aeroplane.Working) + aeroplane.Turn));

    /// <summary>There and back for one load.</summary>
    [Source(nameof(Sources.Arithmetic), "2 × ferry ÷ ferry speed")]
    public static TimeSpan FerryPerLoad(FlyingJob job, Aeroplane aeroplane) => 2 * (job.Ferry / aeroplane.Ferry);

    /// <summary>How the time was worked out.</summary>
    public static Working Working(FlyingJob job, Aeroplane aeroplane) => Watersown.Working.Empty
        .Given("A", "net acres", job.Net.Acres, "ac", "field")
        .Given("n", "loads", job.Loads, string.Empty, "load plan")
        .Given("L", "pass length", job.PassLength.Feet, "ft", "field")
        .Given("S", "swath", aeroplane.Swath.Feet, "ft", "flying service")
        .Given("a", "strip to field", job.Ferry.Miles, "mi", "field")
        .Given("Vs", "working speed", aeroplane.Working.MilesPerHour, "mph", "flying service")
        .Given("Vf", "ferry speed", aeroplane.Ferry.MilesPerHour, "mph", "flying service")
        .Given("Tt", "one turn", aeroplane.Turn.TotalSeconds, "s", "flying service")
        .Given("Tr", "reload", aeroplane.Reload.TotalSeconds, "s", "flying service")
        .Given("Tg", "taxi, take-off and landing", aeroplane.GroundAndAir.TotalSeconds, "s", "flying service")
        .Step("p", "passes on one load", PassesPerLoad(job, aeroplane), string.Empty, "ceil((A / n) / (L × S))", Sources.Arithmetic)
        .Step("T1", "one load", PerLoad(job, aeroplane).TotalSeconds, "s", "Tr + Tg + 2 a / Vf + p (L / Vs + Tt)", Sources.Arithmetic)
        .Step("T", "the field", Of(job, aeroplane).TotalHours, "h", "n × T1", Sources.Arithmetic);
}
