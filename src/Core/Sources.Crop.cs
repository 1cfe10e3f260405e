namespace Watersown;

/// <summary>Thermal time, nutrients, counting stands, and grain.</summary>
public static partial class Sources
{
    public static Source McMasterWilhelm1997 { get; } = new(nameof(McMasterWilhelm1997),
        "G. S. McMaster, W. W. Wilhelm, Growing degree-days: one equation, two interpretations, Agricultural and Forest Meteorology 87:291-300, 1997", SourceStanding.Read);

    public static Source Zalom1983 { get; } = new(nameof(Zalom1983),
        "F. G. Zalom and others, Degree-Days: The Calculation and Use of Heat Units in Pest Management, University of California leaflet 21373, 1983", SourceStanding.Read);

    public static Source DayCourseGeometry { get; } = new(nameof(DayCourseGeometry),
        "area and time above a threshold under a straight or sine course of the day's temperature", SourceStanding.Derived);

    public static Source Yoshida1981 { get; } = new(nameof(Yoshida1981),
        "S. Yoshida, Fundamentals of Rice Crop Science, International Rice Research Institute, 1981", SourceStanding.Read);

    public static Source Japan1990 { get; } = new(nameof(Japan1990),
        "Japanese Journal of Crop Science 59(4):687-695, 1990: heading of one japonica in 35 environments (abstract)", SourceStanding.Read);

    public static Source WaterWarmth2018 { get; } = new(nameof(WaterWarmth2018),
        "Water and air temperature impacts on rice phenology, California, about 2018 (abstract): inlet fields 5 days later at panicle initiation and 8 at heading", SourceStanding.Read);

    public static Source LeavesUnderWater { get; } = new(nameof(LeavesUnderWater),
        "California Rice Research Board, how rice is grown, education pages, undated", SourceStanding.Read);

    public static Source ColdNights1974 { get; } = new(nameof(ColdNights1974),
        "Cool night temperatures cause sterility in rice, California Agriculture 28(7):12-14, 1974 (abstract)", SourceStanding.Read);

    public static Source ColdNightLimit { get; } = new(nameof(ColdNightLimit),
        "night temperature of concern in California, about 55 °F over several nights, by variety", SourceStanding.FromMemory);

    public static Source StageTargetsFitted { get; } = new(nameof(StageTargetsFitted),
        "degree-days from sowing to each stage, fitted backward from usual dates; ripening 640 °F·d after heading from memory", SourceStanding.Default);

    public static Source Satterthwaite1946 { get; } = new(nameof(Satterthwaite1946),
        "F. E. Satterthwaite, An approximate distribution of estimates of variance components, Biometrics Bulletin 2:110-114, 1946", SourceStanding.FromMemory);

    public static Source Cochran1977 { get; } = new(nameof(Cochran1977),
        "W. G. Cochran, Sampling Techniques, 3rd edition, 1977", SourceStanding.FromMemory);

    public static Source AbramowitzStegun1964 { get; } = new(nameof(AbramowitzStegun1964),
        "M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 1964, sections 6.1, 26.5 and 26.7", SourceStanding.FromMemory);

    public static Source MissouriSampleSize { get; } = new(nameof(MissouriSampleSize),
        "University of Missouri, NR 3110, sample size for a mean", SourceStanding.Read);

    public static Source MississippiAdequacy { get; } = new(nameof(MississippiAdequacy),
        "Mississippi Administrative Code, Title 11 Part 8 Chapter 2, addenda J and K, sample adequacy", SourceStanding.Read);

    public static Source ColoradoAdequacy { get; } = new(nameof(ColoradoAdequacy),
        "Colorado mining-reclamation vegetation report, sample-adequacy table", SourceStanding.Read);

    public static Source FertilizerSteps { get; } = new(nameof(FertilizerSteps),
        "University handout, Four steps in fertilizer calculations: product = nutrient / grade", SourceStanding.Read);

    public static Source LinearProgram { get; } = new(nameof(LinearProgram),
        "least cost over the corners of the region that meets every target", SourceStanding.Derived);

    public static Source OklahomaAqua { get; } = new(nameof(OklahomaAqua),
        "Oklahoma State University, aqua ammonia page: 20 to 25 % N", SourceStanding.Read);

    public static Source IrriMoisture { get; } = new(nameof(IrriMoisture),
        "International Rice Research Institute, Rice Knowledge Bank, moisture content", SourceStanding.Read);

    public static Source UcStand2024 { get; } = new(nameof(UcStand2024),
        "University of California Cooperative Extension rice blog, stand and tadpole shrimp, 2024: best stand about 25 plants per square foot", SourceStanding.Read);

    public static Source NswPlantStand { get; } = new(nameof(NswPlantStand),
        "New South Wales DPI, Primefact 1476, plant population and re-sowing of rice, 2016 and 2023", SourceStanding.Read);

    public static Source OlsenP2011 { get; } = new(nameof(OlsenP2011),
        "Re-evaluating diagnostic phosphorus tests for rice systems, Agronomy Journal 103:501-508, 2011 (abstract)", SourceStanding.Read);

    public static Source RicePotassium2013 { get; } = new(nameof(RicePotassium2013),
        "California Rice Research Board, annual report summary, 2013: potassium", SourceStanding.Read);

    public static Source NitrogenStrip2021 { get; } = new(nameof(NitrogenStrip2021),
        "AgAlert, 15 September 2021: topdress likely to pay at a strip-to-field ratio of 1.07 and more", SourceStanding.Read);

    public static Source AquaUsual { get; } = new(nameof(AquaUsual),
        "aqua of 20 % nitrogen weighs about 7.6 lb a gallon at 60 °F; the delivery ticket beats it", SourceStanding.FromMemory);

    public static Source MidSouthStand { get; } = new(nameof(MidSouthStand),
        "University of Arkansas FSA2157; Texas A&M AgriLife Beaumont, 2007 rice guidelines, p. 23; seed-industry extension, 2017: 15 to 20 plants per square foot", SourceStanding.Read);

    public static Source EvenStand2020 { get; } = new(nameof(EvenStand2020),
        "Plant population of aerial- and drill-sown rice, Crop and Pasture Science 71(3):219-228, 2020 (abstract)", SourceStanding.Read);

    public static Source ReseedTrigger { get; } = new(nameof(ReseedTrigger),
        "over-fly trigger in California, below about 6 to 8 plants per square foot over an area that can be told apart", SourceStanding.FromMemory);

    public static Source UcShrimpSheet { get; } = new(nameof(UcShrimpSheet),
        "University of California Cooperative Extension, Agronomy Fact Sheet 8, tadpole shrimp", SourceStanding.Read);

    public static Source ShrimpSafe { get; } = new(nameof(ShrimpSafe),
        "University of California Pest Management Guidelines: Rice, tadpole shrimp, 2009 and later; Rice Farming magazine", SourceStanding.Read);

    public static Source MidgeLouisiana { get; } = new(nameof(MidgeLouisiana),
        "LSU AgCenter, seed midge fact sheet, Louisiana", SourceStanding.Read);

    public static Source LsuWaterSeeding { get; } = new(nameof(LsuWaterSeeding),
        "LSU extension article on water seeding, April 2022", SourceStanding.Read);

    public static Source WeevilScars { get; } = new(nameof(WeevilScars),
        "California Rice Research Board, annual report summary, 2009: feeding scars of the rice water weevil", SourceStanding.Read);

    public static Source WeevilMemory { get; } = new(nameof(WeevilMemory),
        "rice water weevil, about 10 to 20 % of plants with fresh scars at 2 to 4 leaves", SourceStanding.FromMemory);

    public static Source ArmywormUc { get; } = new(nameof(ArmywormUc),
        "University of California armyworm monitoring page, 2017; Pest Management Guidelines: Rice", SourceStanding.Read);

    public static Source ReseedSum { get; } = new(nameof(ReseedSum),
        "worth of the grain gained, less seed, flight and the price of the days lost", SourceStanding.Derived);

    public static Source CalendarCount { get; } = new(nameof(CalendarCount),
        "counting days on the calendar, by the farm's own convention for the day of application", SourceStanding.Derived);

    public static Source UcHarvestMoisture { get; } = new(nameof(UcHarvestMoisture),
        "University of California Cooperative Extension rice notes, 2014: field drying 0.4 to 0.8 points a day; below 17 to 18 % grain cracks if wetted again", SourceStanding.Read);

    public static Source LeastSquaresLine { get; } = new(nameof(LeastSquaresLine),
        "a straight line by least squares, its slope's error by Student's t", SourceStanding.Derived);

    public static Source HarvestBalance { get; } = new(nameof(HarvestBalance),
        "green grain cut in a day against the room of the dryers", SourceStanding.Derived);

    public static Source DrainPractice { get; } = new(nameof(DrainPractice),
        "boards out 21 to 28 days after half heading on heavy clay, 28 to 35 on light or leaky ground; 10 to 20 days until a combine is carried", SourceStanding.CommonPractice);

    public static Source ArkansasDrain2010 { get; } = new(nameof(ArkansasDrain2010),
        "University of Arkansas, notes on draining rice, 5 August 2010: 25 to 28 days after half heading, heads turned down", SourceStanding.Read);
}
