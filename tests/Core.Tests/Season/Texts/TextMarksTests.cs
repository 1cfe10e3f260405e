using Watersown.Wording;

namespace Watersown.Season.Texts;

public sealed class TextMarksTests
{
    private static readonly TextContext Sender = new(PlannedMorning.State(), PlannedMorning.Now, "Tamsin Wexcombe");

    [Theory]
    [InlineData("N4 ck5 wet 2in", "N4 check 5 wet; N4 check 5 2 in")]
    [InlineData("N4 5 wet", "N4 check 5 wet")]
    [InlineData("n4 C5 WET", "N4 check 5 wet")]
    [InlineData("n4c5 wet", "N4 check 5 wet")]
    [InlineData("n-4 check 5 wet!", "N4 check 5 wet")]
    [InlineData("N 4 ck 5 wet", "N4 check 5 wet")]
    [InlineData("R3 2.5in", "R3 2.5 in")]
    [InlineData("R3 2.5\"", "R3 2.5 in")]
    [InlineData("pump SP-1 off", "SP-1 off")]
    [InlineData("sp1 on", "SP-1 on")]
    [InlineData("pump off", "SP-1 off")]
    [InlineData("SP-1 broken", "pump SP-1 broken")]
    [InlineData("NT-1 gate stuck", "gate NT-1 broken")]
    [InlineData("NT-1 14cfs", "NT-1 gives 14 cfs")]
    [InlineData("NT-1 down to 14 cfs", "NT-1 curtailed to 14 cfs from Fri 8 May")]
    [InlineData("NT-1 curtailed to 14cfs from sat", "NT-1 curtailed to 14 cfs from Sat 9 May")]
    [InlineData("nt1 cut to 14 cfs from 12 may until further notice", "NT-1 curtailed to 14 cfs from Tue 12 May")]
    [InlineData("NT-1 down", "NT-1 off")]
    [InlineData("N2 levee out 2-3", "N2 levee out 2-3")]
    [InlineData("N2 levee out", "N2 levee out")]
    [InlineData("S2 box 4 leaking", "S2 box 4 leaking")]
    [InlineData("N4 box 2 boards 6in", "N4 box 2 boards 6 in")]
    [InlineData("T5 R4", "trailer 5 for R4")]
    [InlineData("trailer 5 18,100 lb wet", "trailer 5 18,100 lb wet")]
    [InlineData("trailer 5 left 1900 lb", "trailer 5 left 1,900 lb wet")]
    [InlineData("T3 B-08 loaded", "trailer 3 batch B-08 loaded")]
    [InlineData("B-08 drained", "B-08 drained")]
    [InlineData("B-10 in soak 15,450 lb dry", "B-10 in soak 15,450 lb dry")]
    [InlineData("B-07a dumped", "B-07a dumped")]
    [InlineData("R4 load 3 gone T5", "R4 load 3 gone trailer 5")]
    [InlineData("sown N3", "N3 sown")]
    [InlineData("N3 flown, 15 loads", "N3 sown 15 loads")]
    [InlineData("N3 sown 48 ac B-08 15 loads", "N3 sown 48 ac batch B-08 15 loads")]
    [InlineData("N1 and N2 full", "N1 full; N2 full")]
    [InlineData("N5 rolled. N7 aqua on", "N5 rolled; N7 aqua on")]
    [InlineData("N4 ck5 wet, ck6 full; R3 2in", "N4 check 5 wet; N4 check 6 full; R3 2 in")]
    [InlineData("H1 flooding", "H1 filling")]
    [InlineData("wind 15 g22 N", "wind 15 mph gust 22 mph from 0°")]
    [InlineData("N1 shrimp none", "N1 shrimp: none")]
    [InlineData("R1 leaf 2", "R1 leaf: 2")]
    [InlineData("not flying: wind", "not flying Fri 8 May: wind")]
    [InlineData("N4 note: east inlet sticks; bring a bar", "N4 note: east inlet sticks; bring a bar")]
    [InlineData("two gates 5 wet", "N4 check 5 wet")]
    [InlineData("Two Gats ck 5 wet", "N4 check 5 wet")]
    [InlineData("long check 3 wet", "R6 check 3 wet")]
    [InlineData("dry tank ck2 dry", "H3 check 2 dry")]
    [InlineData("widows eighty rolled", "H6 rolled")]
    [InlineData("N4 floodng", "N4 filling")]
    public void What_crew_write_in_English_is_understood(string text, string echo)
    {
        var read = TextMarks.Read(text, Sender);
        Assert.Equal(echo, read.Echo);
        Assert.Empty(read.Questions);
        Assert.Equal(Language.English, read.Language);
    }

    [Theory]
    [InlineData("caja 4 gotea S2", "S2 caja 4 gotea")]
    [InlineData("N4 c5 mojado 2 pulg", "N4 cuadro 5 mojado; N4 cuadro 5 2 pulg")]
    [InlineData("n4 cuadro 5 mojada 2,5 pulgadas", "N4 cuadro 5 mojado; N4 cuadro 5 2.5 pulg")]
    [InlineData("bordo roto N2 2-3", "N2 bordo roto 2-3")]
    [InlineData("bomba SP-1 apagada", "SP-1 apagada")]
    [InlineData("N3 sembrado 15 cargas", "N3 sembrado 15 cargas")]
    [InlineData("R5 lleno", "R5 lleno")]
    [InlineData("B-08 escurrido", "B-08 escurrido")]
    [InlineData("viento 15 ráfaga 22 norte", "viento 15 mi/h ráfaga 22 mi/h del 0°")]
    [InlineData("no vuela: viento", "no vuela vie 8 may: viento")]
    [InlineData("S1 camarón nada", "S1 camarón: nada")]
    [InlineData("N4 nota la caja del este se atora", "N4 nota: la caja del este se atora")]
    [InlineData("N6 muy húmedo", "N6 muy mojado")]
    [InlineData("sobran 1900 lb remolque 5", "remolque 5 sobran 1,900 lb mojadas")]
    public void What_crew_write_in_Spanish_is_understood_and_answered_in_Spanish(string text, string echo)
    {
        var read = TextMarks.Read(text, Sender);
        Assert.Equal(echo, read.Echo);
        Assert.Empty(read.Questions);
        Assert.Equal(Language.Spanish, read.Language);
    }

    [Theory]
    [InlineData("N9 5 wet", "N9 is none of the farm's fields.")]
    [InlineData("5 wet", "Which field?")]
    [InlineData("N4 wet", "Which check?")]
    [InlineData("loaded", "Which trailer?")]
    [InlineData("cargado", "¿Qué remolque?")]
    [InlineData("told", "About which call?")]
    [InlineData("drained", "Which batch?")]
    [InlineData("N4 box boards 6in", "Which box?")]
    public void What_is_missing_is_asked_back_and_nothing_is_put_down(string text, string question)
    {
        var read = TextMarks.Read(text, Sender);
        Assert.Empty(read.Facts);
        Assert.Equal([question], read.Questions);
        Assert.Contains(question, read.Reply, StringComparison.Ordinal);
    }

    [Fact]
    public void Between_two_names_equally_near_it_asks_and_does_not_guess()
    {
        var ground = PlannedMorning.State();
        ground = ground with { Farm = ground.Farm with { Fields = [.. ground.Farm.Fields.Select(f => f.Code switch { "N1" => f with { Name = "Gander Nort" }, "N2" => f with { Name = "Gander Sort" }, _ => f })] } };
        var read = TextMarks.Read("gander mort full", Sender with { State = ground });
        Assert.Empty(read.Facts);
        Assert.Equal(["gander mort: Gander Nort or Gander Sort?"], read.Questions);
    }

    [Fact]
    public void A_question_about_a_field_is_not_answered_with_the_field_before()
    {
        var read = TextMarks.Read("N4 ck5 wet, N9 full", Sender);
        Assert.Equal([new CheckWater("N4", 5, WaterSeen.Wet)], read.Facts);
        Assert.Equal(["N9 is none of the farm's fields."], read.Questions);
    }

    [Fact]
    public void What_the_sheet_says_can_be_left_out()
    {
        var sheet = Sender with { Trailer = "5", Batch = "B-09", Message = "14/warehouse", Field = "R4" };
        Assert.Equal([new TrailerSeen("5") { Batch = "B-09", Place = TextMarks.Loaded }], TextMarks.Read("cargado", sheet).Facts);
        Assert.Equal([new Told("14/warehouse", "Tamsin Wexcombe", ToldState.Agreed)], TextMarks.Read("agreed", sheet).Facts);
        Assert.Equal([new FieldSown("R4") { Loads = 15 }], TextMarks.Read("flown 15 loads", sheet).Facts);
    }

    [Theory]
    [InlineData("")]
    [InlineData("good morning")]
    [InlineData("???")]
    public void Small_talk_is_answered_with_how_to_write(string text)
    {
        var read = TextMarks.Read(text, Sender);
        Assert.Empty(read.Facts);
        Assert.Contains("N4 check 5 wet 2 in", read.Reply, StringComparison.Ordinal);
    }

    [Fact]
    public void A_word_that_means_nothing_is_said_back()
    {
        var read = TextMarks.Read("N4 ck5 wet wobbly", Sender);
        Assert.Equal(["wobbly"], read.NotUnderstood);
        Assert.Equal("Got it: N4 check 5 wet. Not understood: wobbly.", read.Reply);
    }
}
