using CsCheck;

namespace Watersown.Schedule.Lists;

/// <summary>A list pasted on the first evening, read with nothing but Core.</summary>
public sealed class ListSplittingTests
{
    [Theory]
    [InlineData(",")]
    [InlineData("\t")]
    [InlineData(";")]
    [InlineData(" | ")]
    [InlineData("    ")]
    public void The_pasted_farm_comes_to_2900_acres_and_442930_pounds_dry(string apart)
    {
        var state = PlannedMorning.State();
        var lines = state.Farm.Fields.Select(f => string.Join(apart, f.Name, f.Net.Acres.ToString("0.##"), f.Basins.Length, state.Season(f.Code).Rate.PoundsPerAcre.ToString("0.##")));
        var list = ListSplitting.Split("Feild" + apart + "Acers" + apart + "Chekcs" + apart + "Raet\n" + string.Join('\n', lines)).Then(rows => ListReading.Read(rows));
        Assert.Empty(list.Problems);
        Assert.Equal(28, list.Value.Fields.Length);
        Assert.Equal(2900, list.Value.Net.Acres, 0.001);
        Assert.Equal(442_930, list.Value.Dry.Pounds, 0.5);
        Assert.Equal(state.Farm.Fields.Select(f => f.Name), list.Value.Fields.Select(f => f.Name));
    }

    [Theory]
    [InlineData("a,b", "a|b")]
    [InlineData("\"a,1\",b", "a,1|b")]
    [InlineData("\"say \"\"hay\"\"\",b", "say \"hay\"|b")]
    [InlineData("5\" box,b", "5\" box|b")]
    [InlineData("a,,b", "a||b")]
    [InlineData(" \"a\" , b ", "a|b")]
    [InlineData("sep=;\na;b", "|a|b")]
    public void Cells_are_told_apart_as_spreadsheets_write_them(string text, string cells) =>
        Assert.Equal(cells, string.Join('|', ListSplitting.Split(text).Value.SelectMany(r => r.Cells)));

    [Fact]
    public void A_quote_left_open_is_named_by_its_line_and_swallows_no_other()
    {
        var problem = Assert.Single(ListSplitting.Split("a,b\n\"c,d\ne,f").Problems);
        Assert.Equal((ListProblems.QuoteOpen, "line 2"), (problem.Kind, problem.Where));
    }

    [Fact]
    public void What_is_quoted_comes_back_whatever_is_in_it() =>
        Gen.String[Gen.Char["ab ,;|\t\"é"], 1, 12].Where(s => s.Trim() == s && s.Length > 0).Array[1, 5].Sample(cells =>
        {
            var line = "x,y,z,w,v,u\n" + string.Join(',', cells.Select(c => "\"" + c.Replace("\"", "\"\"", StringComparison.Ordinal) + "\""));
            Assert.Equal(cells, ListSplitting.Split("sep=,\n" + line).Value[^1].Cells);
        });
}
