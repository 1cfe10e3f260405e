using CsCheck;
using Watersown.Holds;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Season;
using Watersown.Wording;

namespace Watersown;

/// <summary>Marks of every kind about the fields, sources and batches of <see cref="PlannedMorning"/>, and about some that it does not have.</summary>
internal static class AnyMark
{
    private static readonly Gen<string> fields = OneOf("N3", "N4", "R4", "R5", "S2", "S3", "H4", "n4", "Z9");

    private static readonly Gen<string> sources = OneOf("NT-1", "ST-2", "SP-1", "W-2", "XX-1");

    private static readonly Gen<string> batches = OneOf("B-07a", "B-08", "B-09", "B-10", "B-11");

    private static readonly Gen<string> trailers = OneOf("1", "2", "3", "5", "6");

    private static readonly Gen<string> words = OneOf("tule bank", "he said so", "ñandú \"x\" <b>", "4");

    private static readonly Gen<int> checks = Gen.Int[1, 8];

    private static readonly Gen<DateTimeOffset> moments = Gen.Int[0, 6 * 24 * 60].Select(m => PlannedMorning.At(5, 0).AddMinutes(m));

    private static readonly Gen<Boundary> edges = Gen.Select(Gen.Int[0, 40], Gen.Int[1, 9], Gen.Bool).Select((at, size, hole) =>
        new Boundary([new BoundaryPart(Square(at, size, turned: false), hole ? [Square(at + (size / 4.0), size / 2.0, turned: true)] : [])]));

    private static readonly Gen<WaterDepth> depths = Gen.Int[0, 60].Select(q => WaterDepth.FromInches(q / 4.0));

    private static readonly Gen<DrySeed> dry = Gen.Int[1, 20_000].Select(p => DrySeed.FromPounds(p));

    private static readonly Gen<SoakedSeed> soaked = Gen.Int[1, 3000].Select(p => SoakedSeed.FromPounds(p));

    private static readonly Gen<FlowRate> flows = Gen.Int[0, 200].Select(t => FlowRate.FromCubicFeetPerSecond(t / 10.0));

    private static readonly Gen<Speed> winds = Gen.Int[0, 40].Select(m => Speed.FromMilesPerHour(m));

    private static readonly Gen<Bearing> bearings = Gen.Int[0, 359].Select(d => Bearing.FromDegrees(d));

    private static readonly Gen<DateOnly> days = Gen.Int[5, 14].Select(d => new DateOnly(2026, 5, d));

    private static readonly Gen<TimeOnly> hours = Gen.Int[0, 95].Select(q => new TimeOnly(q / 4, q % 4 * 15));

    private static readonly Gen<PlanTaskKind> tasks = Gen.Enum<PlanTaskKind>();

    /// <summary>Names out of a few, so that marks meet.</summary>
    public static Gen<MarkId> SomeId { get; } = Gen.Int[0, 400].Select(Id);

    public static Gen<MarkFact> Fact { get; } = Gen.OneOf(Water(), Land(), Held(), Seed(), Air(), Talk(), Harvest(), Costs());

    public static Gen<Mark> Mark { get; } =
        Gen.Select(SomeId, Fact, moments, Gen.Int[0, 600], Gen.Enum<Sureness>(), May(SomeId), Maybe(words), OneOf("phone-a", "phone-b")).Select((id, fact, happened, late, sure, replaces, note, device) => new Mark
        {
            Id = id,
            Happened = happened,
            Entered = happened.AddMinutes(late).AddMilliseconds(late),
            By = device == "phone-a" ? "Tamsin Wexcombe" : "Lucero Quintabar",
            Device = device,
            Sure = sure,
            Replaces = fact is Withdrawn ? replaces ?? Id(7) : replaces is { } other && other.Text[^1] == '0' ? other : null,
            Note = note,
            Fact = fact,
        });

    /// <summary>A logbook in which every name is used once.</summary>
    public static Gen<ImmutableArray<Mark>> Several { get; } = Mark.Array[0, 40].Select(marks => marks.DistinctBy(m => m.Id).ToImmutableArray());

    public static MarkId Id(int number) => new(number.ToString("x32", System.Globalization.CultureInfo.InvariantCulture));

    // Counter-clockwise, or the other way for a hole.
    private static ImmutableArray<GeoPoint> Square(double at, double size, bool turned)
    {
        GeoPoint Corner(double east, double north) => new(39 + ((at + north) / 1000), -122 + ((at + east) / 1000));
        ImmutableArray<GeoPoint> ring = [Corner(0, 0), Corner(size, 0), Corner(size, size), Corner(0, size)];
        return turned ? [ring[0], ring[3], ring[2], ring[1]] : ring;
    }

    private static Temperature? Warm(int? degrees) => degrees is { } f ? Temperature.FromFahrenheit(f) : null;

    private static Gen<MarkFact> Water() => Gen.OneOf(
        Gen.Select(fields, checks, Gen.Enum<WaterSeen>()).Select((f, c, w) => (MarkFact)new CheckWater(f, c, w)),
        Gen.Select(fields, May(checks), depths).Select((f, c, d) => (MarkFact)new DepthRead(f, c, d)),
        Gen.Select(fields, checks, depths).Select((f, b, d) => (MarkFact)new BoardsSet(f, b, d)),
        Gen.Select(sources, flows, Maybe(words)).Select((s, f, h) => (MarkFact)new FlowSeen(s, f, h)),
        Gen.Select(sources, moments, flows, Gen.Enum<OrderState>(), Maybe(words), Gen.Bool).Select((s, m, f, o, n, v) => (MarkFact)new WaterOrdered(s, m, f, o) { OrderNumber = n, ByVoice = v }),
        Gen.Select(sources, Gen.Bool).Select((s, up) => (MarkFact)new SourceSwitched(s, up)),
        Gen.Select(sources, moments, May(flows), Gen.Int[0, 90]).Select((s, m, f, h) => (MarkFact)new WaterCurtailed(s, m) { Left = f, Until = f is null || h == 0 ? null : m.AddHours(h) }),
        Gen.Select(sources, sources, Gen.Bool).Select((s, o, j) => (MarkFact)new DitchesJoined(s, o, j)),
        Gen.Select(words, sources.Array[1, 3], May(flows)).Select((n, s, f) => (MarkFact)new CapShared(n, [.. s]) { Cap = f is { CubicFeetPerSecond: > 0 } ? f : null }),
        Gen.Select(sources, fields.Array[0, 4], May(Gen.Int[0, 500])).Select((s, f, a) => (MarkFact)new TailwaterWaits(s, [.. f]) { Full = a is { } acres ? Area.FromAcres(acres) : null }),
        Gen.Select(Gen.Enum<FaultKind>(), Maybe(fields), Maybe(sources), May(checks), May(checks), Maybe(words)).Select((k, f, s, c, b, p) =>
            (MarkFact)new FaultFound(k) { Field = f, Source = s, Check = c, ToCheck = c + 1, Box = b, Photo = p, Width = c is null ? null : Length.FromFeet(c.Value) }),
        SomeId.Select(id => (MarkFact)new FaultMended(id)));

    private static Gen<MarkFact> Land() => Gen.OneOf(
        Gen.Select(fields, Gen.Enum<FieldStage>()).Select((f, s) => (MarkFact)new StageReached(f, s)),
        Gen.Select(fields, May(Gen.Int[5, 300]), May(Gen.Int[120, 200]), Maybe(words), Maybe(words)).Select((f, a, r, v, n) => (MarkFact)new FieldCorrected(f)
        {
            Net = a is { } acres ? Area.FromAcres(acres) : null,
            Gross = a is { } inside ? Area.FromAcres(inside * 2) : null,
            Certified = r is { } held ? Area.FromAcres(held) : null,
            Rate = r is { } rate ? SeedRate.FromPoundsPerAcre(rate) : null,
            Variety = v,
            Name = n,
        }),
        Gen.Select(OneOf("hatchery pond", "prune orchard", "new pole"), Gen.Enum<HazardSighting>(), Maybe(fields), May(Gen.Enum<HazardKind>()), May(Gen.Int[15, 200]), Gen.Bool).Select((n, w, f, k, h, at) =>
            (MarkFact)new HazardSeen(n, w) { Field = f, Kind = k, Height = h is { } feet ? Length.FromFeet(feet) : null, At = at ? new GeoPoint(39.01, -122.01) : null }),
        Gen.Select(fields, edges).Select((f, e) => (MarkFact)BoundaryDrawn.Of(f, e)),
        Gen.Select(fields, words, May(Gen.Int[5, 60]), Gen.Int[0, 60].Array[0, 9]).Select((f, z, a, r) => (MarkFact)new RingsCounted(f, z, a is { } acres ? Area.FromAcres(acres) : null, [.. r]) { Ring = r.Length > 5 ? Area.FromSquareFeet(10.7) : null }),
        Gen.Select(fields, Gen.Enum<NitrogenTiming>(), Gen.Int[1, 200], May(Gen.Int[100, 9000])).Select((f, t, r, g) => (MarkFact)new NitrogenOn(f, t, NutrientRate.FromPoundsPerAcre(r)) { Ticket = g is { } gallons ? Volume.FromGallons(gallons) : null }),
        Gen.Select(fields, Gen.Enum<Watersown.Nutrition.NutrientReading>(), Gen.Int[0, 90]).Select((f, r, v) => (MarkFact)new NutrientRead(f, r, v / 4.0)),
        Gen.Select(fields, May(Gen.Int[1, 60])).Select((f, r) => (MarkFact)new TopdressDecided(f, r is { } rate ? NutrientRate.FromPoundsPerAcre(rate) : null)),
        Gen.Select(fields, Gen.Enum<Pest>(), Gen.Bool, May(Gen.Int[0, 100])).Select((f, p, s, d) => (MarkFact)new PestLooked(f, p, s) { Damaged = d is { } share ? Fraction.FromPercent(share) : null }),
        Gen.Int[1, 9].Select(n => (MarkFact)new StandResponseSet([new(PlantDensity.FromPerSquareFoot(0), Fraction.Zero), new(PlantDensity.FromPerSquareFoot(n), Fraction.FromPercent(100))])),
        Gen.Select(fields, words, words).Select((f, w, s) => (MarkFact)new Scouted(f, w, s)),
        Gen.Select(words, Maybe(fields)).Select((t, f) => (MarkFact)new Noted(t, f)),
        Gen.Select(words, Maybe(fields)).Select((t, f) => (MarkFact)new Photographed(t, f)));

    private static Gen<MarkFact> Held() => Gen.OneOf(
        Gen.Select(Gen.Select(fields, words, days, Gen.Int[0, 9]), Gen.Select(May(Gen.Int[0, 40]), Gen.Enum<WaterNeeded>(), Gen.Bool, May(Gen.Enum<ApplicationDay>())), Gen.Select(Maybe(words), Maybe(words), May(moments), May(winds)), Gen.Enum<TreatmentState>()).Select((t, r, p, s) =>
            (MarkFact)new TreatmentTold(
                new Treatment(t.Item1, t.Item2, t.Item3, t.Item3.AddDays(t.Item4))
                {
                    Round = 1 + (t.Item4 % 2),
                    Rule = new HoldRule { Days = r.Item1, Needs = r.Item2, MovesWithin = r.Item3, Counting = r.Item4, Releases = p.Item1, Buffer = p.Item2, WindLeast = p.Item4, NoticeHours = r.Item1, LeastDepth = r.Item3 ? WaterDepth.FromInches(4) : null, Text = p.Item1 },
                    Paper = new TreatmentPaper { Registration = p.Item1, Active = p.Item2, NoticeFiled = p.Item3, Permit = p.Item2, ReentryHours = r.Item1, PreHarvestDays = r.Item1, Leaves = p.Item1, EnteredBy = p.Item2, EnteredOn = p.Item2 is null ? null : t.Item3, LabelPhoto = p.Item1, Recommendation = p.Item2 },
                    Work = new TreatmentWork { Amount = p.Item1, Land = r.Item1 is > 0 ? Area.FromAcres(r.Item1.Value) : null, Method = p.Item2, Begun = p.Item3, Ended = p.Item3?.AddHours(2), Wind = p.Item4, Applicator = p.Item1, Hired = r.Item3 },
                },
                s)),
        Gen.Select(fields, Gen.Enum<WaterWish>(), Gen.Bool, days).Select((f, w, there, d) => (MarkFact)new WaterWished(f, w) { Days = there ? new DaySpan(d, d.AddDays(3)) : null }),
        Gen.Select(fields, Maybe(words)).Select((f, w) => (MarkFact)new HeldWaterGone(f) { Reason = w, Reference = w }),
        Gen.Select(Gen.Enum<ApplicationDay>(), Gen.Bool, May(Gen.Int[1, 28])).Select((c, h, d) => (MarkFact)new HoldSettingsTold(new HoldSettings { Counting = c, OfficeFrom = h ? new TimeOnly(8, 0) : null, OfficeUntil = h ? new TimeOnly(17, 0) : null, OwnReportDay = d, HiredReportDays = d })));

    private static Gen<MarkFact> Seed() => Gen.OneOf(
        Gen.Select(batches, Maybe(OneOf("E-1 lot 2", "E-2 lot 1", "no lot")), Maybe(OneOf("E-1", "E-2")), May(dry), fields.Array[0, 2]).Select((b, l, v, d, m) =>
            (MarkFact)new BatchInSoak(b) { Lot = l, Variety = v, Dry = d, MeantFor = [.. m] }),
        batches.Select(b => (MarkFact)new BatchDrained(b)),
        Gen.Select(batches, May(dry)).Select((b, d) => (MarkFact)new BatchDumped(b, d)),
        Gen.Select(trailers, Maybe(batches), May(soaked), Maybe(fields), Maybe(words)).Select((t, b, w, f, p) => (MarkFact)new TrailerSeen(t) { Batch = b, Weighed = w, Field = f, Place = p }),
        Gen.Select(trailers, soaked, Maybe(fields)).Select((t, w, f) => (MarkFact)new SeedLeft(t, w) { Field = f }));

    private static Gen<MarkFact> Air() => Gen.OneOf(
        Gen.Select(fields, May(Gen.Int[5, 90]), Maybe(words), Maybe(batches), May(dry), May(Gen.Int[1, 20]), Gen.Bool).Select((f, a, p, b, d, l, r) => (MarkFact)new FieldSown(f)
        {
            Land = a is { } acres ? Area.FromAcres(acres) : null,
            Part = p,
            Batch = b,
            Dry = d,
            Loads = l,
            Resow = r,
        }),
        Gen.Select(fields, May(Gen.Int[1, 20]), Maybe(trailers), May(soaked)).Select((f, n, t, w) => (MarkFact)new LoadGone(f, n) { Trailer = t, Soaked = w }),
        Gen.Select(fields, May(Gen.Int[1, 300]), May(soaked), Maybe(words)).Select((f, a, s, i) => (MarkFact)new FlightBilled(f) { Land = a is { } acres ? Area.FromAcres(acres) : null, Soaked = s, Invoice = i }),
        Gen.Select(fields, Gen.Int[0, 100], Gen.Int[0, 20], May(bearings), Gen.Bool, edges).Select((f, k, n, h, t, e) => (MarkFact)new TrackLooked(f, Length.FromFeet(50), Area.FromAcres(100 + n))
        {
            Skip = Fraction.FromPercent(k / 2.0),
            SkipError = Fraction.FromPercent(n / 4.0),
            Overlap = Fraction.FromPercent(n),
            OffField = Fraction.FromPercent(n),
            Passes = n,
            Heading = h,
            Spacing = h is null ? null : Length.FromFeet(48),
            GateTold = t,
            Places = n < 10 ? [] : [new BarePlace(e.Parts[0].Outer[0], Area.FromAcres(0.5), h ?? Bearing.FromDegrees(90))],
            Lines = t ? [[.. e.Parts[0].Outer]] : [],
        }),
        Gen.Select(fields, Gen.Int[0, 13]).Select((f, n) => (MarkFact)new StageSeen(f, Watersown.Growth.StagePoint.All[n % Watersown.Growth.StagePoint.All.Length])),
        Gen.Select(Gen.Enum<Watersown.Seed.Maturity>(), Gen.Int[500, 1500], Gen.Int[100, 900], Gen.Int[100, 900]).Select((c, p, h, m) => (MarkFact)new StageTargetsSet(c,
            new Watersown.Growth.StageTargets(DegreeDays.FromFahrenheit(p), DegreeDays.FromFahrenheit(p + h), DegreeDays.FromFahrenheit(p + h + m)))),
        Gen.Select(fields, days, Gen.Int[60, 99], Gen.Int[30, 60]).Select((f, d, h, l) => (MarkFact)new FloodWarmth(f, d, Warm(h)!.Value, Warm(l)!.Value)),
        Gen.Select(words, days, May(Gen.Int[60, 99]), May(Gen.Int[30, 60]), May(Gen.Int[0, 8])).Select((s, d, h, l, r) => (MarkFact)new WeatherTaken(s,
            [new Watersown.Weather.WeatherDay(d) { High = Warm(h), Low = Warm(l), Rain = r is { } q ? WaterDepth.FromInches(q / 8.0) : null }, new Watersown.Weather.WeatherDay(d.AddDays(3)) { High = Warm(h ?? 77), Low = Warm(50) }])),
        Gen.Select(words, Gen.Int[4, 9], Gen.Int[60, 99], Gen.Int[30, 60]).Select((s, m, h, l) => (MarkFact)new NormalsTaken(s, [new Watersown.Weather.MonthNormal(m, Warm(h)!.Value, Warm(l)!.Value)])),
        Gen.Select(days, hours, hours, Maybe(words)).Select((d, f, u, a) => (MarkFact)new SlotGiven(d, f, u) { Aeroplane = a }),
        Gen.Select(days, words, Gen.Enum<StandDownReason>(), Maybe(fields)).Select((d, w, y, f) => (MarkFact)new StoodDown(d, w, y) { Field = f }),
        Gen.Select(days, Gen.Int[0, 90].Array[3, 6].Array[1, 3], Maybe(words), May(winds), May(Gen.Int[20, 40]), Gen.Int[-4, 4]).Select((d, p, w, v, g, o) =>
            (MarkFact)new PatternTested(d, [.. p.Select(row => (FactList<SoakedSeed>)[.. row.Select(t => SoakedSeed.FromKilograms(t / 10_000.0))])], Length.FromMeters(1), Area.FromSquareMeters(0.25))
            {
                Aeroplane = w is null ? null : "hired aeroplane",
                Seed = w,
                Offset = Length.FromMeters(o / 2.0),
                Speed = v is { MilesPerHour: > 0 } ? v : null,
                Gate = g is { } flow ? MassFlow.FromPoundsPerMinute(flow * 100) : null,
                ThousandGrains = g is { } grams ? SoakedSeed.FromKilograms(grams / 1000.0) : null,
            }),
        Gen.Select(winds, winds, May(bearings), Maybe(words)).Select((s, g, b, p) => (MarkFact)new WindSeen(s, g) { From = b, Place = p }),
        Gen.Select(moments, Gen.Select(moments, winds, winds, May(bearings)).Array[0, 4], Maybe(words)).Select((i, h, s) =>
            (MarkFact)new ForecastHeard(i, [.. h.Select(x => new ForecastHour(x.Item1, x.Item2, x.Item3) { From = x.Item4 })], s)),
        Gen.Select(days, Gen.Int[60, 100], Gen.Int[40, 59]).Select((d, h, l) => (MarkFact)new WarmthRead(d, Temperature.FromFahrenheit(h), Temperature.FromFahrenheit(l))));

    private static Gen<MarkFact> Talk() => Gen.OneOf(
        Gen.Select(words, words, Gen.Enum<ToldState>(), Gen.Bool, May(Gen.Int[1, 20]), Maybe(words), Gen.Select(fields, tasks, moments).Array[0, 3]).Select((m, p, s, v, n, t, steps) =>
            (MarkFact)new Told(m, p, s) { ByVoice = v, Plan = n, Text = t, Role = t, Steps = [.. steps.Select(x => new ToldStep(x.Item1, x.Item2, x.Item3))] }),
        Gen.Select(fields, tasks, moments).Select((f, t, m) => (MarkFact)new StepPinned(f, t, m)),
        Gen.Select(fields, tasks).Select((f, t) => (MarkFact)new StepUnpinned(f, t)),
        Gen.Select(words, words, words, Maybe(fields), Maybe(batches), Maybe(trailers)).Select((s, w, r, f, b, t) => (MarkFact)new Overridden(s, w, r) { Field = f, Batch = b, Trailer = t }),
        Gen.Select(words, words, Maybe(words), Gen.Enum<Language>()).Select((n, r, p, s) => (MarkFact)new PersonNamed(n, r) { Phone = p, Speaks = s }),
        Gen.Select(Gen.Int[1, 30], moments, Maybe(words)).Select((n, m, w) => (MarkFact)new PlanIssued(n, m, w)),
        Gen.Const((MarkFact)new Withdrawn()),
        Gen.Const((MarkFact)new UnknownFact("tractor-moved", "{\"tractor\":\"red\",\"to\":[1,2]}")));

    private static Gen<MarkFact> Costs() => Gen.OneOf(
        Gen.Select(Gen.Enum<Watersown.Costs.CostCategory>(), Maybe(fields), May(Gen.Int[0, 2000]), May(Gen.Int[0, 40])).Select((c, f, a, w) => (MarkFact)new CostPlanned(c)
        {
            Field = f,
            PerAcre = a is { } acre ? Money.FromDollars(acre / 10m) : null,
            PerHundredweight = w is { } weight ? Money.FromDollars(weight / 10m) : null,
        }),
        Gen.Select(Gen.Enum<Watersown.Costs.CostCategory>(), Gen.Int[-100_00, 20_000_00], fields.Array[0, 3], Maybe(words), Maybe(words)).Select((c, a, f, w, i) =>
            (MarkFact)new CostPaid(c, Money.FromDollars(a / 100m)) { Fields = [.. f.Distinct()], What = w, Invoice = i }));

    private static Gen<MarkFact> Harvest() => Gen.OneOf(
        Gen.Select(May(Gen.Int[1, 6]), May(Gen.Int[20, 60]), May(Gen.Int[1, 20]), May(Gen.Int[60, 110])).Select((c, e, s, g) => (MarkFact)new HarvestMeansTold
        {
            Combines = c,
            EachDay = e is { } each ? Area.FromAcres(each) : null,
            Sets = s,
            SetWeight = s is { } n ? Mass.FromPounds(n * 10_000) : null,
            Expected = g is { } grain ? GrainYield.FromHundredweightsPerAcre(grain) : null,
            CutFrom = e is null ? null : Fraction.FromPercent(22.5),
            CutTo = c is null ? null : Fraction.FromPercent(17.5),
        }),
        Gen.Select(days, days, Gen.Int[0, 20], Maybe(words), Maybe(words)).Select((f, u, n, d, v) => (MarkFact)new DryerRoomGiven(f, u, n) { Dryer = d, Variety = v }),
        Gen.Select(fields, Gen.Int[20, 60]).Select((f, m) => (MarkFact)new MoistureSampled(f, Fraction.FromPercent(m / 2.0))),
        Gen.Select(fields, Gen.Bool).Select((f, l) => (MarkFact)new CropLodged(f, l)),
        fields.Select(f => (MarkFact)new BoardsOut(f)),
        Gen.Select(fields, May(Gen.Int[1, 200])).Select((f, a) => (MarkFact)new FieldCut(f) { Land = a is { } acres ? Area.FromAcres(acres) : null }),
        Gen.Select(Gen.Int[1, 30], Gen.Int[0, 60_000], Gen.Int[0, 30_000], Gen.Int[20, 60], Maybe(words), Maybe(OneOf("E-1", "E-2")), fields.Array[0, 2]).Select((n, g, t, m, d, v, f) => (MarkFact)new GrainTicketed(n.ToString(System.Globalization.CultureInfo.InvariantCulture), Mass.FromPounds(g), Mass.FromPounds(t), Fraction.FromPercent(m / 2.0))
        {
            Dryer = d,
            Variety = v,
            Foreign = Fraction.FromPercent(m % 4),
            Truck = d,
            Parts = [.. f.Distinct().Select(c => new TicketPart(c, Fraction.FromPercent(50)))],
            Head = v is null ? null : Fraction.FromPercent(58),
            Total = v is null ? null : Fraction.FromPercent(69),
        }),
        Gen.Select(fields, words, Gen.Int[1, 60]).Select((f, l, s) => (MarkFact)new CropShareTold(f, l, Fraction.FromPercent(s))));

    private static Gen<string> OneOf(params string[] words) => Gen.Int[0, words.Length - 1].Select(i => words[i]);

    private static Gen<string?> Maybe(Gen<string> gen) => Gen.Select(Gen.Bool, gen).Select((there, text) => there ? text : null);

    private static Gen<T?> May<T>(Gen<T> gen)
        where T : struct => Gen.Select(Gen.Bool, gen).Select((there, value) => there ? value : default(T?));
}
