using Watersown.Water.Flood;

namespace Watersown.Water.Learning;

/// <summary>A field whose true figures are known, and marks of its flood as people would put them down.</summary>
internal sealed class Truth
{
    private readonly Random chance;
    private readonly FloodAdvance advance;
    private readonly double late;
    private readonly double gain;

    public Truth(int seed, int checks = 6, double cfs = 10)
    {
        chance = new Random(seed);
        Network = new FloodNetwork
        {
            Checks = [.. Enumerable.Range(0, checks).Select(i => new FloodCheck("ck", Area.FromAcres(118.0 / checks), WaterDepth.Zero, WaterDepth.FromInches(2)))],
            Inlets = [new FloodInlet("s", 0, [new FlowStep(TimeSpan.Zero, FlowRate.FromCubicFeetPerSecond(cfs))])],
        };
        TakeUp = Before.TakeUp * Math.Exp(Before.TakeUpSpread.Share * Bell());
        Pond = Before.Pond * Math.Exp(Before.PondSpread.Share * Bell());
        Seepage = Before.Seepage * Math.Exp(Before.SeepageSpread.Share * Bell());
        gain = Math.Exp(LearningSpreads.Order.Share * Bell());
        late = 2 * 3600 * Bell();
        advance = new FloodAdvance(Network, [], 400 * 86400.0);
        advance.Run(TakeUp.Meters, Pond.Meters, (Air + Seepage).MetersPerSecond, gain);
        Full = advance.Full[^1] > 300 * 86400.0 ? null : TimeSpan.FromSeconds((advance.Full[^1] * (1 + (LearningSpreads.Flood.Share * Bell()))) + late);
    }

    public static DepthRate Air { get; } = DepthRate.FromInchesPerDay(0.22);

    public static FloodFigures Before { get; } = FloodFigures.OfFarm(WaterDepth.FromFeet(0.60), DepthRate.FromInchesPerDay(0.10), WaterDepth.FromInches(2));

    public FloodNetwork Network { get; }

    public WaterDepth TakeUp { get; }

    public WaterDepth Pond { get; }

    public DepthRate Seepage { get; }

    public TimeSpan? Full { get; }

    /// <summary>Water seen in the checks down to one; none of a check that it does not reach.</summary>
    public ImmutableArray<FloodSighting> Wet(int last, double wider = 1) =>
    [
        .. Enumerable.Range(1, last).Where(c => advance.FirstWet[c] < 300 * 86400.0)
            .Select(c => new FloodSighting(SightingKind.Wet, Seen(advance.FirstWet[c], LearningSpreads.SeenWet * wider)) { Check = c, Wider = wider }),
    ];

    public FloodSighting Stick(int check) => new(SightingKind.Depth, TimeSpan.FromSeconds(advance.Full[check] + 3600)) { Check = check, Depth = Pond + (LearningSpreads.Stick * Bell()) };

    public FloodSighting Gate() => new(SightingKind.Flow, TimeSpan.Zero);

    /// <summary>The case, with the flow as it was read where it was.</summary>
    public FloodCase Case(params IEnumerable<FloodSighting> sightings)
    {
        ImmutableArray<FloodSighting> seen = [.. sightings];
        var read = seen.Any(s => s.Kind == SightingKind.Flow) ? gain * Math.Exp(LearningSpreads.FlowRead.Share * Bell()) : 1;
        return new FloodCase
        {
            Network = read == 1 ? Network : Network with { Inlets = [.. Network.Inlets.Select(i => i with { Flow = [.. i.Flow.Select(f => f with { Flow = f.Flow * read })] })] },
            Before = Before,
            Evaporation = Air,
            InflowSpread = LearningSpreads.Order,
            StartSpread = TimeSpan.FromHours(2),
            Sightings = seen,
        };
    }

    private TimeSpan Seen(double at, TimeSpan spread)
    {
        var (own, flood) = (spread.TotalSeconds, LearningSpreads.Flood.Share * at);
        return TimeSpan.FromSeconds(Math.Max(0, at + late + (Math.Sqrt((own * own) + (flood * flood)) * Bell())));
    }

    // Box and Muller.
    private double Bell() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}
