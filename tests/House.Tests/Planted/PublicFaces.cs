// Violations on purpose: the rules about Core's public face must report each of these.
namespace Watersown.Planted.Water;

public static class Pumping
{
    public static double Lift(double head) => head;

    public static ImmutableArray<double> Depths() => [];

    [return: PlainNumber("a ratio")]
    public static double Ratio([PlainNumber("a ratio")] double ratio) => ratio;

    public static FlowRate? Flow(Volume volume) => volume > Volume.Zero ? FlowRate.Zero : null;

    public static Outcome<PumpRecord> Record() => Outcome<PumpRecord>.Refuse();

    [Source("NobodyWroteThis")]
    public static FlowRate Sourced(Volume volume) => volume > Volume.Zero ? FlowRate.Zero : FlowRate.FromCubicMetersPerSecond(1);

    public static string Words() => "words";
}

public sealed record PumpRecord([property: PlainNumber("a ratio")] double Efficiency)
{
#pragma warning disable CA1051, S1104 // a field that can change is what the rule must find
    public int Hours;
#pragma warning restore CA1051, S1104

    public bool Running { get; set; }

    public double Power { get; init; }
}
