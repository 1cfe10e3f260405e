namespace Watersown.Wording;

/// <summary>Words of the crop: the weather of its days and its stages.</summary>
public sealed partial record CropWords
{
    public required string Title { get; init; }

    public required string Weather { get; init; }

    public required string ToWeather { get; init; }

    public required string ToCrop { get; init; }

    public required string WeatherLead { get; init; }

    public required string TypeDay { get; init; }

    public required string WhichDay { get; init; }

    public required string High { get; init; }

    public required string Low { get; init; }

    public required string KeepDay { get; init; }

    public required string LowHigh { get; init; }

    public required string Days { get; init; }

    public required string DayHead { get; init; }

    public required string How { get; init; }

    public required string BasisTyped { get; init; }

    public required string BasisFile { get; init; }

    public required string BasisNeighbors { get; init; }

    public required string BasisNormal { get; init; }

    public required string BasisNone { get; init; }

    public required string Gaps { get; init; }

    public required string GapsNone { get; init; }

    public required string GapBridged { get; init; }

    public required string GapNormal { get; init; }

    public required string GapOpen { get; init; }

    public required string Imports { get; init; }

    public required string ImportLine { get; init; }

    public required string ImportHow { get; init; }

    public required string NoImports { get; init; }

    public required string Normals { get; init; }

    public required string NormalsFrom { get; init; }

    public required string NoNormals { get; init; }

    public required string Month { get; init; }

    public required string HighF { get; init; }

    public required string LowF { get; init; }

    public required string Mean { get; init; }

    public required string MeanOnly { get; init; }

    public required string TypeNormal { get; init; }

    public required string KeepNormal { get; init; }

    public required string TypedNormals { get; init; }

    public required string MarkDays { get; init; }

    public required string MarkNormals { get; init; }

    public required string FileRead { get; init; }

    public required string FileTaken { get; init; }

    public required string FileTypical { get; init; }

    public required string FileFailed { get; init; }

    public required string FileGapBridged { get; init; }

    public required string FileGapNormal { get; init; }

    public required string FileGapsMore { get; init; }

    public required string FileSeason { get; init; }

    public required string FileKept { get; init; }

    public required string FileKeptBefore { get; init; }

    public required string MarkStage { get; init; }

    public required string MarkTargets { get; init; }

    public required string MarkFlood { get; init; }

    public required string StageLeaf { get; init; }

    public required string StageTillering { get; init; }

    public required string StageInitiation { get; init; }

    public required string StageBooting { get; init; }

    public required string StageHeading { get; init; }

    public required string StageMature { get; init; }

    public required string ClassVeryEarly { get; init; }

    public required string ClassEarly { get; init; }

    public required string ClassIntermediate { get; init; }

    public required string ClassLate { get; init; }

    public required string ClassOther { get; init; }

    public required string TargetsFarm { get; init; }

    public required string TargetsUsual { get; init; }

    public required string TargetsBorrowed { get; init; }

    public required string TargetsUnknown { get; init; }

    public required string Calendar { get; init; }

    public required string CalendarLead { get; init; }

    public required string NoneSown { get; init; }

    public required string Now { get; init; }

    public required string Sown { get; init; }

    public required string SinceSown { get; init; }

    public required string About { get; init; }

    public required string SeenOn { get; init; }

    public required string SeriesEnds { get; init; }

    public required string KeySeen { get; init; }

    public required string KeyTender { get; init; }

    public required string KeyToday { get; init; }

    public required string Stages { get; init; }

    public required string StageHead { get; init; }

    public required string When { get; init; }

    public required string HowFar { get; init; }

    public required string MarkSeen { get; init; }

    public required string SeeStage { get; init; }

    public required string PassedOver { get; init; }

    public required string Inlet { get; init; }

    public required string Measured { get; init; }

    public required string NoSource { get; init; }

    public required string Course { get; init; }

    public required string CourseSpoken { get; init; }

    public required string CourseNow { get; init; }

    public required string Window { get; init; }

    public required string WindowLead { get; init; }

    public required string WindowFrom { get; init; }

    public required string WindowTo { get; init; }

    public required string WindowDays { get; init; }

    public required string WindowNone { get; init; }

    public required string WindowDefers { get; init; }

    public required string Tender { get; init; }

    public required string TenderLead { get; init; }

    public required string TenderField { get; init; }

    public required string TenderCold { get; init; }

    public required string TenderPast { get; init; }

    public required string TenderNow { get; init; }

    public required string TenderIn { get; init; }

    public required string TenderSource { get; init; }

    public required string RaiseWater { get; init; }

    public required string RaiseDays { get; init; }

    public required string RaiseNotNow { get; init; }

    public required string RaiseNever { get; init; }

    public required string RaiseFirst { get; init; }

    public required string RaiseOf { get; init; }

    public required string RaiseStart { get; init; }

    public required string RaiseStartLate { get; init; }

    public required string RaiseUntold { get; init; }

    public required string Targets { get; init; }

    public required string TargetsLead { get; init; }

    public required string TargetsEdit { get; init; }

    public required string TargetsKeep { get; init; }

    public required string ClassHead { get; init; }

    public required string NotSown { get; init; }

    public required string NoField { get; init; }

    public required string FloodTyped { get; init; }

    public required string FloodLead { get; init; }

    public required string FloodKeep { get; init; }

    public required string PhaseSeedling { get; init; }

    public required string PhasePanicle { get; init; }

    public required string PhaseGrain { get; init; }

    public required string IfSown { get; init; }
}
