using CsCheck;
using Watersown.Wording;

namespace Watersown.Season.Texts;

public sealed class TextMarksProperties
{
    private static readonly TextContext Sender = new(PlannedMorning.State(), PlannedMorning.Now, "Tamsin Wexcombe");

    private static readonly string[] Said =
    [
        .. ("wet full dry reflooded check ck box boards leaking levee out broken pump gate on off sown resown load loads gone loaded batch drained dumped trailer left wind gust told heard agreed shrimp leaf "
            + "none small large rolled flooding aqua rain fog may jun north west in inch cfs gpm lb ac mph ° the at and to for from water n s mojado lleno seco cuadro caja tablas gotea bordo roto bomba compuerta "
            + "prendida apagada sembrado carga cargas cargado remojo escurrido tirado remolque sobran viento avisado nada chico pulg cm secas wobbly n9 campo").Split(' '),
        "in soak", "not flying", "no vuela", "lb dry", "lb wet", "too wet", "de acuerdo", "not reached", "en remojo", "Two Gats", "gander",
    ];

    // Written as crew write: words of both languages, codes, figures, and what no one means.
    private static readonly Gen<string> Talk = Gen.OneOf(
        Gen.Int[0, Said.Length - 1].Select(i => Said[i]),
        Gen.Int[0, Said.Length - 1].Select(i => Said[i]),
        Gen.Int[0, 27].Select(i => Sender.State.Farm.Fields[i].Code),
        Gen.Int[0, 27].Select(i => Sender.State.Farm.Fields[i].Name),
        Gen.Int[0, 4].Select(i => Sender.State.Farm.Sources[i].Code),
        Gen.Int[0, 3].Select(i => Sender.State.Batches[i].Code),
        Gen.Int[0, 20_000].Select(n => n.ToString()),
        Gen.Double[0, 40].Select(d => d.ToString("0.000")),
        Gen.Int[0, 9].Select(n => "ck" + n),
        Gen.Int[0, 9].Select(n => n + "in"),
        Gen.Int[0, 9].Select(n => "t" + n),
        Gen.Int[0, 9].Select(n => n + "-" + (n + 1)),
        Gen.String[0, 6]).Array[0, 9].SelectMany(words => Gen.Int[0, 3].Select(j => string.Join(j switch { 0 => ", ", 1 => "; ", _ => " " }, words)));

    [Fact]
    public void Reading_a_text_never_throws()
    {
        Gen.String.Sample(text => TextMarks.Read(text, Sender));
        Talk.Sample(text => TextMarks.Read(text, Sender), iter: 3000);
    }

    [Fact]
    public void What_is_echoed_is_understood_to_say_the_same() => Talk.Sample(
        text =>
        {
            var read = TextMarks.Read(text, Sender);
            var again = TextMarks.Read(read.Echo, Sender with { Language = read.Language });
            Assert.Equal(read.Facts.Where(f => f is not Told), again.Facts);
        },
        iter: 5000);

    [Fact]
    public void A_fact_is_written_as_a_text_only_where_the_text_says_the_very_same() => AnyMark.Fact.Sample(fact =>
    {
        foreach (var language in new[] { Language.English, Language.Spanish })
        {
            var context = new TextContext(PlannedMorning.State(), PlannedMorning.Now, "Lucero Quintabar") { Language = language };
            if (TextMarks.Write(fact, context) is { } text) Assert.Equal(fact, Assert.Single(TextMarks.Read(text, context).Facts));
        }
    });

    [Fact]
    public void The_usual_taps_can_be_written_as_a_text()
    {
        var context = new TextContext(PlannedMorning.State(), PlannedMorning.Now, "Lucero Quintabar");
        Assert.Equal("N4 check 5 wet", TextMarks.Write(new CheckWater("N4", 5, WaterSeen.Wet), context));
        Assert.NotNull(TextMarks.Write(new DepthRead("N4", 5, WaterDepth.FromInches(2.5)), context));
        Assert.NotNull(TextMarks.Write(new FaultFound(FaultKind.Box) { Field = "N4", Box = 2 }, context));
        Assert.NotNull(TextMarks.Write(new WindSeen(Speed.FromMilesPerHour(15), Speed.FromMilesPerHour(22)), context));
        Assert.Null(TextMarks.Write(new PlanIssued(3, PlannedMorning.Now, null), context));
    }

    [Fact]
    public void What_is_said_in_English_and_in_Spanish_is_one_fact() => Talk.Sample(text =>
    {
        var read = TextMarks.Read(text, Sender);
        var other = TextMarks.Read(text, Sender with { Language = Language.Spanish });
        Assert.Equal(read.Facts, other.Facts);
    });
}
