using Watersown.Land;
using Watersown.Schedule;
using Watersown.Season.Ground;

namespace Watersown.Season;

public sealed class LandBoardTests
{
    private static readonly DateTimeOffset Now = PlannedMorning.Now;

    [Fact]
    public void Each_kind_of_acres_is_summed_for_itself_and_says_how_many_fields_lack_it()
    {
        var rows = LandBoard.Of(Book());
        var total = LandBoard.Total(rows);
        Assert.Equal(rows.Sum(r => r.Field.Net.Acres), total.Net.Acres, 6);
        Assert.Equal(rows.Sum(r => r.Field.Gross?.Acres ?? 0), total.Gross.Acres, 6);
        Assert.Equal(rows.Count(r => r.Field.Certified is null), total.WithoutCertified);
        Assert.Equal(rows.Sum(r => r.Season.Rate.PoundsPerAcre * r.Field.Net.Acres), total.Dry.Pounds, 3);
    }

    [Fact]
    public void A_field_of_which_nobody_has_spoken_looks_unknown_and_one_mark_ends_that()
    {
        var ground = PlannedMorning.State();
        ground = ground with { Fields = [.. ground.Fields.Select(f => f.Code == "H4" ? f with { Stage = FieldStage.Unworked, StageUntold = true } : f)] };
        Assert.Equal(GroundLook.Unknown, Row(ground, "H4").Look);
        Assert.Equal(GroundLook.Full, Row(ground, "H4", new StageReached("H4", FieldStage.Full)).Look);
        Assert.Equal(GroundLook.Filling, Row(ground, "N4").Look);
    }

    [Theory]
    [InlineData("N4", "NT-1", "N")]
    [InlineData("H12", "W-1", "H")]
    [InlineData("TG", "NT-1", "NT-1")]
    [InlineData("4B", null, "")]
    public void Blocks_are_the_letters_of_numbered_codes_and_else_the_source(string code, string? source, string block) =>
        Assert.Equal(block, Blocks.Of(new Field { Code = code, Name = "Tin Barn", Net = Area.FromAcres(96), Sources = source is null ? [] : [source] }));

    [Fact]
    public void Depth_is_the_span_of_the_newest_reading_of_each_check_unless_the_whole_field_was_read_later()
    {
        var book = new FieldBook("N4")
        {
            Checks =
            [
                new CheckBook(1) { IsWet = true, Depth = Note(2.5, 3) },
                new CheckBook(2) { IsWet = true, Depth = Note(1.5, 1) },
                new CheckBook(3),
            ],
        };
        var span = Of(book).Depth!;
        Assert.Equal((Inches(1.5), Inches(2.5), Now.AddHours(-1)), (span.Least, span.Most, span.At!.Value));
        span = Of(book with { Depth = Note(2, 0.5) }).Depth!;
        Assert.Equal((Inches(2), Inches(2)), (span.Least, span.Most));
        Assert.Equal(Inches(1.5), Of(book with { Depth = Note(2, 2) }).Depth!.Least);
    }

    [Fact]
    public void What_is_chosen_is_in_order_and_what_is_alike_stays_in_the_farms()
    {
        var rows = LandBoard.Of(Book());
        Assert.Equal(rows, LandChoice.All.Of(rows));
        Assert.All((LandChoice.All with { Look = GroundLook.Full }).Of(rows), r => Assert.Equal(FieldStage.Full, r.Season.Stage));
        Assert.All((LandChoice.All with { Block = "N" }).Of(rows), r => Assert.StartsWith("N", r.Field.Code, StringComparison.Ordinal));
        var stages = (LandChoice.All with { Order = LandOrder.Stage }).Of(rows).Select(r => r.Season.Stage).ToList();
        Assert.Equal(stages.OrderDescending(), stages);
        var acres = (LandChoice.All with { Order = LandOrder.Acres }).Of(rows).Select(r => r.Field.Net.Acres).ToList();
        Assert.Equal(acres.OrderDescending(), acres);
    }

    private static LandRow Of(FieldBook field)
    {
        var book = Book();
        return LandBoard.Row(book with { Fields = [field] }, book.State.Farm.Field("N4"));
    }

    private static DepthNote Note(double inches, double hoursAgo) => new(Inches(inches), Now.AddHours(-hoursAgo), "Lucero Quintabar", Sureness.Measured);

    private static WaterDepth Inches(double inches) => WaterDepth.FromInches(inches);

    private static LandRow Row(SeasonState ground, string code, params MarkFact[] facts)
    {
        var marks = facts.Select((f, i) => new Mark { Id = AnyMark.Id(i), Happened = Now.AddMinutes(-1), Entered = Now, By = "Tamsin Wexcombe", Device = "phone-a", Fact = f });
        var book = SeasonFold.Fold(ground, Logbook.Empty.With(marks), Now);
        return LandBoard.Row(book, book.State.Farm.Field(code));
    }

    private static SeasonBook Book() => SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty, Now);
}
