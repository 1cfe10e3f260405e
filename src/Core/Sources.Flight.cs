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

    public static Source OhioB817 { get; } = new(nameof(OhioB817),
        "Ohio State University, bulletin B-817: a swath of twice the distance at which the deposit is half of that in the middle", SourceStanding.Read);

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

    public static Source MountainFlyingRules { get; } = new(nameof(MountainFlyingRules),
        "mountain-flying rules of thumb: take-off distance with weight squared, and by density altitude", SourceStanding.Read);

    public static Source HumidAir { get; } = new(nameof(HumidAir),
        "virtual temperature T / (1 − 0.378 e / p) with e = 6.11 × 10^(7.5 Td / (237.7 + Td)) hPa", SourceStanding.FromMemory);

    public static Source QuadraticDrag { get; } = new(nameof(QuadraticDrag),
        "motion with drag as the square of the speed through the air, fourth-order Runge-Kutta in steps of 1 ms or less", SourceStanding.Derived);

    public static Source PaddyTerminalSpeed { get; } = new(nameof(PaddyTerminalSpeed),
        "CIGR Journal, Effect of awn on aerodynamic properties of paddy grains: 5.73 to 5.88 m/s, dry grain", SourceStanding.Read);

    public static Source PublicObstacleFile { get; } = new(nameof(PublicObstacleFile),
        "FAA Digital Obstacle File, public record: fixed-width layout as in open parsers, held against published records", SourceStanding.Read);

    public static Source WidthTheorem { get; } = new(nameof(WidthTheorem),
        "McGill University, computational-geometry notes, width of a convex polygon: one of the two closest parallel support lines lies along an edge", SourceStanding.Read);

    public static Source CellCounting { get; } = new(nameof(CellCounting),
        "square cells counted by their middles, swaths as quadrilaterals with shared borders; areas are out by at most half a cell along every edge", SourceStanding.Derived);

    public static Source SteeringNoise { get; } = new(nameof(SteeringNoise),
        "passes independently and normally off their lines: the mean gap at a seam is the standard deviation / √π, and so is the mean overlap", SourceStanding.Derived);

    public static Source CircularErrors { get; } = new(nameof(CircularErrors),
        "distance from the true place with equal, independent, normal errors on both axes; US National Research Council, 1995, prints CEP = 0.589 (σN + σE)", SourceStanding.Derived);

    public static Source Bang1951 { get; } = new(nameof(Bang1951),
        "Bang, A solution of the plank problem, Proceedings of the American Mathematical Society 2, 1951", SourceStanding.FromMemory);

    public static Source ShortestPath { get; } = new(nameof(ShortestPath),
        "shortest way through the breaks between passes, by dynamic programming", SourceStanding.Derived);

    public static Source RacetrackSequence { get; } = new(nameof(RacetrackSequence),
        "passes taken by turns from two halves of a field, so that each half is flown one way", SourceStanding.Derived);

    public static Source TrackCleaning { get; } = new(nameof(TrackCleaning),
        "dropping of positions that an aeroplane cannot have flown: times in order, speed and turn within limits", SourceStanding.CommonPractice);

    public static Source TrackInterpolation { get; } = new(nameof(TrackInterpolation),
        "Transactions of the ASABE 59(6):1609, 2016: nearest points overstate cross-track error by 8.2 % at 1.25 m/s against interpolation along the path", SourceStanding.Read);

    public static Source SamplingError { get; } = new(nameof(SamplingError),
        "a change between two samples lies anywhere between them: ground speed × step / 2 either way", SourceStanding.Derived);
}
