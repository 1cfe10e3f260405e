namespace Watersown;

/// <summary>Calibrating, spreading, turning, waiting at the strip, air, and how seed falls.</summary>
public static partial class Sources
{
    public static Source UsArmyAcreageChart { get; } = new(nameof(UsArmyAcreageChart),
        "US Army, TM 5-3740-218-13P, acreage chart: acres a minute = mph × swath in feet × 0.0020202", SourceStanding.Read);

    public static Source UcFundamentalRelationship { get; } = new(nameof(UcFundamentalRelationship),
        "University of California, The Fundamental Relationship (calibration of applicators): flow = rate × land rate", SourceStanding.Read);

    public static Source FloridaDryCalibration { get; } = new(nameof(FloridaDryCalibration),
        "University of Florida IFAS, Dry chemical applicator calibration", SourceStanding.Read);

    public static Source SpreaderSetUp { get; } = new(nameof(SpreaderSetUp),
        "extension article on setting up ram-air spreaders, reposted 2019: the spread falls off above about 250 lb an acre", SourceStanding.Read);

    public static Source Baltin1959 { get; } = new(nameof(Baltin1959),
        "Baltin, 1959, as repeated in Quantick, Aviation in Crop Protection, 1985, and Matthews, Pesticide Application Methods: time for each hectare of aerial work", SourceStanding.FromMemory);

    public static Source WholePassCount { get; } = new(nameof(WholePassCount),
        "counting whole passes and whole loads", SourceStanding.Derived);

    public static Source OverlapGeometry { get; } = new(nameof(OverlapGeometry),
        "one pass laid over its neighbors a swath apart; population standard deviation over mean", SourceStanding.Derived);

    public static Source CountingStatistics { get; } = new(nameof(CountingStatistics),
        "a perfectly even random drop of N seeds a tray shows 100 / √N percent", SourceStanding.Derived);

    public static Source AviationFormulary { get; } = new(nameof(AviationFormulary),
        "Aviation Formulary", SourceStanding.Read);

    public static Source TurnGeometry { get; } = new(nameof(TurnGeometry),
        "arcs of one radius that end on the next line", SourceStanding.Derived);

    public static Source AgAviationTurns2015 { get; } = new(nameof(AgAviationTurns2015),
        "agricultural-aviation trade magazine, editorial on turns, 2015: 20 to 45 s a turn, 30 s a fair mean", SourceStanding.Read);

    public static Source FiniteQueue { get; } = new(nameof(FiniteQueue),
        "Anderson, Sweeney, Williams and others, An Introduction to Management Science, finite calling population, eqs 11.35 to 11.39", SourceStanding.Read);

    public static Source StandardAtmosphere1976 { get; } = new(nameof(StandardAtmosphere1976),
        "US Standard Atmosphere, 1976", SourceStanding.Read);

    public static Source AltimeterDefinition { get; } = new(nameof(AltimeterDefinition),
        "what an altimeter set to the local setting reads on the ground, by the standard atmosphere", SourceStanding.Derived);

    public static Source HumidAir { get; } = new(nameof(HumidAir),
        "virtual temperature T / (1 − 0.378 e / p) with e = 6.11 × 10^(7.5 Td / (237.7 + Td)) hPa", SourceStanding.FromMemory);

    public static Source QuadraticDrag { get; } = new(nameof(QuadraticDrag),
        "motion with drag as the square of the speed through the air, fourth-order Runge-Kutta in steps of 1 ms or less", SourceStanding.Derived);

    public static Source PaddyTerminalSpeed { get; } = new(nameof(PaddyTerminalSpeed),
        "CIGR Journal, Effect of awn on aerodynamic properties of paddy grains: 5.73 to 5.88 m/s, dry grain", SourceStanding.Read);

    public static Source WidthTheorem { get; } = new(nameof(WidthTheorem),
        "McGill University, computational-geometry notes, width of a convex polygon: one of the two closest parallel support lines lies along an edge", SourceStanding.Read);
}
