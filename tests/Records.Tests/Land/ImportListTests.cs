using System.Text;
using System.Text.Json;
using Watersown.Farms;
using Watersown.Documents.Farms;
using Watersown.Records.Land;
using Watersown.Schedule;
using Watersown.Schedule.Lists;
using Watersown.Wording;

namespace Watersown.Records;

public sealed class ImportListTests
{
    private static readonly ImportListOptions options = new("Listed", "America/Los_Angeles") { Clock = new DateTimeOffset(2026, 5, 8, 11, 50, 0, TimeSpan.Zero) };

    /// <summary>The fields of the example farm, from its document: name, acres, checks, rate.</summary>
    private static readonly (string Name, double Acres, int Checks, double Rate)[] fields =
        [.. JsonDocument.Parse(File.ReadAllText(Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json"))).RootElement.GetProperty("fields").EnumerateArray()
            .Select(f => (f.GetProperty("name").GetString()!, f.GetProperty("net_ac").GetDouble(), f.GetProperty("checks").GetInt32(), f.GetProperty("rate_dry_lb_ac").GetDouble()))];

    public static TheoryData<string, string, string> Lists => new()
    {
        // 2,900 ac and 442,930 lb dry: the totals of the example farm, worked by hand.
        { "commas, misspelt headings, a total", "Feild,Acers,Chekcs,Raet\n" + Lines(f => $"{f.Name},{f.Acres},{f.Checks},{f.Rate}") + "Total 2,900\n", string.Empty },
        { "tabs, no headings, units", Lines(f => $"{f.Name}\t{f.Acres} ac\t{f.Checks}\t{f.Rate} lb/ac"), "LIST-018 " },
        { "semicolons, Spanish, another order, line ends of Windows, blank lines", "Dosis;Melgas;Lote;Acres netos\r\n" + Lines(f => $"{f.Rate};{f.Checks};{f.Name};{f.Acres}\r\n\r") + ";;Total;2.900\r\n", string.Empty },
        { "quotes", "\"Field\",\"Net ac\",\"Rate\"\n" + Lines(f => $"\"{f.Name}\",\"{f.Acres}\",\"{f.Rate}\"") + "\"Total\",\"2,900\",\n", string.Empty },
        { "a column more, a title, a ruled line", "The farm in 2026\nField,Acres,Rate,Landlord\n---,---,---,---\n" + Lines(f => $"{f.Name},{f.Acres},{f.Rate},east"), "LIST-015 line 1\nLIST-017 " },
        { "bars", "| Name | Ck | Net ac | lb/ac dry |\n|---|---:|---:|---:|\n" + Lines(f => $"| {f.Name} | {f.Checks} | {f.Acres} | {f.Rate} |"), string.Empty },
        { "blanks between columns", Lines(f => $"{f.Name}   {f.Acres}   {f.Checks}   {f.Rate}"), "LIST-018 " },
        { "pounds in place of rates", "Field,Acres,Dry lb\n" + Lines(f => $"{f.Name},{f.Acres},{f.Acres * f.Rate}"), string.Empty },
        { "a line that names its delimiter", "sep=;\nField;Acres;Rate\n" + Lines(f => $"{f.Name};{f.Acres};{f.Rate}"), string.Empty },
        { "hectares and kilograms", "Field;Area (ha);kg/ha\n" + Lines(f => FormattableString.Invariant($"{f.Name};{f.Acres * 0.40468564224:0.00000};{f.Rate * 1.12085115:0.00000}")), string.Empty },
    };

    [Theory]
    [MemberData(nameof(Lists))]
    public void The_28_fields_come_to_2900_acres_and_442930_pounds_however_they_are_listed(string how, string list, string said)
    {
        var read = Import(list);
        Assert.True(read.HasValue, how + ": " + SmallFarm.Said(read));
        Assert.Equal(said, SmallFarm.Said(read));
        Assert.Equal(28, read.Value.List.Fields.Length);
        Assert.Equal(2900, read.Value.List.Net.Acres, 0.001);
        Assert.Equal(442_930, read.Value.List.Dry.Pounds, 0.5);
        Assert.Equal(string.Join('|', fields.Select(f => f.Name)), string.Join('|', read.Value.State.Farm.Fields.Select(f => f.Name)));
        Assert.Equal(28, read.Value.Open.Length);
    }

    [Fact]
    public void Every_encoding_that_programs_save_is_read()
    {
        const string list = "Lote,Acres,Dosis\nÑandú,40,150\n";
        foreach (var encoding in new Encoding[] { new UTF8Encoding(true), new UTF8Encoding(false), new UnicodeEncoding(false, true), new UnicodeEncoding(true, true), new UnicodeEncoding(false, false), new UnicodeEncoding(true, false) })
        {
            var read = ImportList.Run([.. encoding.GetPreamble(), .. encoding.GetBytes(list)], options);
            Assert.Empty(read.Problems);
            Assert.Equal("Ñandú", read.Value.List.Fields[0].Name);
        }

        var western = ImportList.Run(Encoding.Latin1.GetBytes(list), options);
        Assert.Equal("LIST-003 ", SmallFarm.Said(western));
        Assert.Equal("Ñandú", western.Value.List.Fields[0].Name);
    }

    [Fact]
    public void What_the_list_says_of_a_field_is_kept_and_what_it_does_not_say_stays_open()
    {
        var list = Import("Code,Name,Net,Gross,Certified,Checks,Var,Rate,State\nN4,Two Gates,118,124.5,116,6,E-2,150,Flooding 4 of 6\nN5,School House,74,,,,,,\n");
        var (first, second) = (list.Value.List.Fields[0], list.Value.List.Fields[1]);
        Assert.Equal(("N4", 124.5, 116, 6, "E-2", FieldStage.Flooding), (first.Code!, Math.Round(first.Gross!.Value.Acres, 6), Math.Round(first.Certified!.Value.Acres, 6), first.Checks!.Value, first.Variety!, first.Stage!.Value));
        Assert.Equal((null, null, null, null, null), (second.Gross, second.Certified, second.Checks, second.Variety, second.Stage));
        Assert.Equal("LIST-013 ", SmallFarm.Said(list));
        Assert.Equal("School House", Assert.Single(list.Value.Open).Name);
        Assert.Equal(6, list.Value.State.Farm.Field("N4").Basins.Length);
        Assert.DoesNotContain("\"stage\": \"unworked\"", Encoding.UTF8.GetString(list.Value.Document.Span), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "LIST-001 ")]
    [InlineData("\n \n,,\n", "LIST-001 ")]
    [InlineData("Field,Acres\n", "LIST-016 ")]
    [InlineData("12,13\n14,15\n", "LIST-005 \nLIST-018 ")]
    [InlineData("Field,Acres,Rate\nA,40,150\nB,60,150\n,99,\n", "LIST-022 line 4")]
    [InlineData("Field,Note\nTin Barn,east\n", "LIST-006 \nLIST-017 ")]
    [InlineData("Field,Acres,Acres\nTin Barn,40,41\n", "LIST-007 line 1")]
    [InlineData("Field,Acres,Rate\nTin Barn,1,200,150\n", "LIMIT-004 line 2, Tin Barn, net acres\nLIST-008 line 2, Tin Barn")]
    [InlineData("Field,Acres,Rate\nTin Barn,,150\n", "LIST-009 line 2, Tin Barn")]
    [InlineData("Field,Acres,Rate\nTin Barn,forty,150\n", "LIST-010 line 2, Tin Barn")]
    [InlineData("Field,Acres,Checks,Rate\nTin Barn,40,2.5,150\n", "LIST-010 line 2, Tin Barn")]
    [InlineData("Field,Acres,Rate\nTin Barn,40 rods,150\n", "LIST-011 line 2, Tin Barn")]
    [InlineData("Field,Acres,Rate\nTin Barn,40,150 tons\n", "LIST-011 line 2, Tin Barn")]
    [InlineData("Field,Acres,Rate\nTin Barn,40,150\ntin barn,41,150\n", "LIST-012 line 3, tin barn")]
    [InlineData("Field,Acres,Rate\n,40,150\n", "LIST-022 line 2")]
    [InlineData("Field,Acres,Rate\n\"Tin Barn,40,150\nDogleg,61,150\n", "LIST-004 line 2")]
    [InlineData("Field,Acres,Rate\nTin Barn,0,150\n", "LIMIT-001 line 2, Tin Barn, net acres")]
    [InlineData("Field,Acres,Rate\nTin Barn,40,-5\n", "LIMIT-001 line 2, Tin Barn, lb of dry seed an acre")]
    [InlineData("Field,Acres,Gross,Rate\nTin Barn,40,30,150\n", "LAND-004 fields[0].net_ac (Tin Barn)")]
    [InlineData("A\u0001B,1", "LIST-002 ")]
    public void A_list_that_cannot_be_taken_is_refused_with_every_line_named(string list, string said)
    {
        var read = Import(list);
        Assert.True(read.IsRefused);
        Assert.Equal(said, SmallFarm.Said(read));
    }

    [Theory]
    [InlineData("Field,Acres,Rate\nTin Barn,40,150\nTotal,41\n", "LIST-014 line 3")]
    [InlineData("Field,Acres,Rate\nTin Barn,40,150\nTotal,40.4\n", "")]
    [InlineData("Field,Acres,Rate\nA,40,150\nSubtotal,40\nB,60,150\nSubtotal,60\nTotal,100\n", "")]
    [InlineData("Field,Acres,Rate\nA,40,150\nSubtotal,40\nB,60,150\nSubtotal,61\nGrand total: 100\n", "LIST-014 line 5")]
    [InlineData("Field,Acres,Rate\nTin Barn,40,150\nTotal,,\n", "")]
    [InlineData("Field,Acres,Rate\nA,40,150\nB,60,150\n,100,\n", "")]
    [InlineData("Field,Acres,Rate\nNorth block,,\nTin Barn,40,150\n", "LIST-015 line 2")]
    [InlineData("Field,Acres,Rate,Dry lb\nTin Barn,40,150,\"6,000\"\n", "")]
    [InlineData("Field,Acres,Rate,Dry lb\nTin Barn,40,150,\"6,500\"\n", "LIST-019 line 2, Tin Barn")]
    [InlineData("Field,Acres,Rate,Stage\nTin Barn,40,150,whatever\n", "LIST-021 line 2, Tin Barn")]
    [InlineData("Code,Field,Acres,Rate\nBARNS,Tin Barn,40,150\nB,Dogleg,61,150\nB,Sill,41,150\n", "LIST-023 line 2, Tin Barn\nLIST-023 line 4, Sill")]
    [InlineData("Field,Acres,Rate\nTin Barn,40,250\n", "LIMIT-005 line 2, Tin Barn, lb of dry seed an acre")]
    [InlineData("Field,Acres\nTin Barn,40\n", "LIST-013 ")]
    public void What_is_merely_odd_is_warned_of(string list, string said)
    {
        var read = Import(list);
        Assert.True(read.HasValue);
        Assert.Equal(said, SmallFarm.Said(read));
    }

    [Fact]
    public void More_lines_than_any_farm_has_are_refused()
    {
        var list = "Field,Acres,Rate\n" + string.Concat(Enumerable.Range(0, 6000).Select(i => $"F{i},40,150\n"));
        Assert.Equal("LIST-020 ", SmallFarm.Said(Import(list)));
    }

    [Theory]
    [InlineData("PK\u0003\u0004rest", "a spreadsheet or an archive")]
    [InlineData("%PDF-1.7", "a PDF")]
    public void A_file_of_another_sort_is_told_as_what_it_is(string bytes, string sort)
    {
        var read = ImportList.Run(Encoding.Latin1.GetBytes(bytes), options);
        Assert.Contains(sort, Say.Problem(read.Problems[0], Language.English), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("142", 142, "")]
    [InlineData(" 142 ac", 142, "ac")]
    [InlineData("142ac.", 142, "ac")]
    [InlineData("2,900", 2900, "")]
    [InlineData("1,234,567.5", 1_234_567.5, "")]
    [InlineData("2 900", 2900, "")]
    [InlineData("2\u00A0900", 2900, "")]
    [InlineData("142,5", 142.5, "")]
    [InlineData("142,50", 142.5, "")]
    [InlineData(".5", 0.5, "")]
    [InlineData("−3", -3, "")]
    [InlineData("150 lb/ac", 150, "lbac")]
    [InlineData("150#", 150, "#")]
    public void A_number_is_read_as_people_write_it(string cell, double value, string unit) =>
        Assert.Equal(new ListNumber(value, unit), ListNumber.Read(cell));

    [Theory]
    [InlineData("")]
    [InlineData("ac")]
    [InlineData("-")]
    [InlineData("1,2,3")]
    [InlineData("1.2.3")]
    [InlineData("~142")]
    public void What_is_no_number_is_none(string cell) => Assert.Null(ListNumber.Read(cell));

    [Fact]
    public void A_given_rate_and_moment_stand_in_the_document()
    {
        var read = ImportList.Run("Field,Acres\nTin Barn,40\n"u8, options with { Rate = Quantities.SeedRate.FromPoundsPerAcre(160), Now = "2026-05-08T04:50" });
        Assert.Equal(160, read.Value.State.Fields[0].Rate.PoundsPerAcre, 1e-9);
        Assert.Contains("\"now\": \"2026-05-08T04:50\"", Encoding.UTF8.GetString(read.Value.Document.Span), StringComparison.Ordinal);
        Assert.Equal("FARM-001 time_zone", SmallFarm.Said(ImportList.Run("Field,Acres,Rate\nTin Barn,40,150\n"u8, options with { Zone = "Ossel" })));
    }

    private static string Lines(Func<(string Name, double Acres, int Checks, double Rate), string> line) => string.Concat(fields.Select(f => line(f) + "\n"));

    private static Outcome<ImportedList> Import(string list) => ImportList.Run(Encoding.UTF8.GetBytes(list), options);
}
