namespace Watersown.Holds;

public sealed class HoldNoticesTests
{
    private static readonly TimeSpan Offset = TimeSpan.FromHours(-7);

    private static readonly HoldSettings Office = new() { OfficeFrom = new TimeOnly(8, 0), OfficeUntil = new TimeOnly(17, 0), OwnReportDay = 10, HiredReportDays = 7 };

    // 2026: 8 May is a Friday, 11 May a Monday.
    [Theory]
    [InlineData(8, 12, 0, 8, 12, 0)]
    [InlineData(8, 17, 0, 8, 17, 0)]
    [InlineData(8, 19, 30, 8, 17, 0)]
    [InlineData(8, 7, 59, 7, 17, 0)]
    [InlineData(9, 12, 0, 8, 17, 0)]
    [InlineData(11, 5, 0, 8, 17, 0)]
    public void A_notice_is_filed_while_the_office_is_open_and_never_later_than_its_hours_say(int day, int hour, int minute, int expectedDay, int expectedHour, int expectedMinute) =>
        Assert.Equal(At(expectedDay, expectedHour, expectedMinute), HoldNotices.FileBy(At(day, hour, minute), Office));

    [Fact]
    public void Where_no_office_hours_are_typed_the_hours_alone_count() => Assert.Equal(At(9, 3, 0), HoldNotices.FileBy(At(9, 3, 0), HoldSettings.Untold));

    [Fact]
    public void A_booked_treatment_is_to_be_filed_and_an_applied_one_reported_by_the_days_typed()
    {
        Treatment Of(string product, bool hired) => new("N4", product, new DateOnly(2026, 5, 12), new DateOnly(2026, 5, 14)) { Rule = new HoldRule { NoticeHours = 24 }, Work = new TreatmentWork { Hired = hired } };
        var notices = HoldNotices.Of([(Of("A", false), TreatmentState.Booked), (Of("B", false), TreatmentState.Applied), (Of("C", true), TreatmentState.Applied), (Of("D", true), TreatmentState.CalledOff)], Office, Offset);
        // 24 h before Tuesday 12 May 00:00 is Monday 00:00, when the office is shut: Friday 17:00.
        Assert.Equal(At(8, 17, 0), notices.Single(n => n.Treatment.Product == "A").FileBy);
        Assert.Equal(new DateOnly(2026, 6, 10), notices.Single(n => n.Treatment.Product == "B").ReportBy);
        Assert.Equal(new DateOnly(2026, 5, 21), notices.Single(n => n.Treatment.Product == "C").ReportBy);
        Assert.Equal(["A", "C", "B"], notices.Select(n => n.Treatment.Product));
    }

    [Fact]
    public void Nobody_is_told_a_day_that_nobody_typed() =>
        Assert.Empty(HoldNotices.Of([(new Treatment("N4", "A", new DateOnly(2026, 5, 12), new DateOnly(2026, 5, 12)), TreatmentState.Applied)], HoldSettings.Untold, Offset));

    [Fact]
    public void A_report_day_that_a_month_does_not_have_is_its_last() => Assert.Equal(
        new DateOnly(2026, 6, 30),
        Assert.Single(HoldNotices.Of([(new Treatment("N4", "A", new DateOnly(2026, 5, 12), new DateOnly(2026, 5, 12)), TreatmentState.Applied)], new HoldSettings { OwnReportDay = 31 }, Offset)).ReportBy);

    private static DateTimeOffset At(int day, int hour, int minute) => new(2026, 5, day, hour, minute, 0, Offset);
}
