using System.Buffers.Binary;
using System.Xml.Linq;
using Watersown.Documents.Handout;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Records.Files.Handout;

/// <summary>ISO 11783-10:2015, version 4 of its schemas, as told in tests/Reference/iso11783-10.</summary>
public sealed class TaskDataTests
{
    [Theory]
    [InlineData(Language.English)]
    [InlineData(Language.Spanish)]
    public void It_keeps_the_rules_of_the_schemas(Language language)
    {
        var files = TaskDataHandout.Write(SomeHandout.Whole, language);
        Assert.Equal(["TASKDATA.XML", "TLG00001.xml", "TLG00001.bin"], files.Select(f => f.Name));
        Assert.Empty(TaskDataRules.Breaches(Root(files[0].Bytes)));
        Assert.Empty(TaskDataRules.LogBreaches(Root(files[1].Bytes)));
    }

    [Fact]
    public void The_whole_demo_farm_keeps_them_too()
    {
        var handout = Handouts.Of(Land.OpenFarm.Run(Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json")).Value, []).Value;
        Assert.Equal(28, handout.Fields.Length);
        Assert.Empty(TaskDataRules.Breaches(Root(TaskDataHandout.Write(handout, Language.English)[0].Bytes)));
    }

    [Theory]
    [InlineData("PFD", "D", "-1")]
    [InlineData("PFD", "D", "12.5")]
    [InlineData("PNT", "C", "91")]
    [InlineData("PNT", "D", "-122.0123456789")]
    [InlineData("LSG", "A", "10")]
    [InlineData("TSK", "E", "PFD9")]
    [InlineData("TSK", "A", "task one")]
    [InlineData("GPN", "G", "361")]
    [InlineData("PDV", "A", "6")]
    [InlineData("CTR", "B", "a name that is longer than thirty-two")]
    public void The_rules_can_be_broken(string element, string attribute, string value)
    {
        var root = Root(TaskDataHandout.Write(SomeHandout.Whole, Language.English)[0].Bytes);
        root.Descendants(element).First().SetAttributeValue(attribute, value);
        Assert.NotEmpty(TaskDataRules.Breaches(root));
    }

    [Fact]
    public void A_missing_or_misplaced_element_is_seen_by_the_rules()
    {
        var root = Root(TaskDataHandout.Write(SomeHandout.Whole, Language.English)[0].Bytes);
        root.Descendants("PNT").First().Attribute("C")!.Remove();
        root.Add(new XElement("LSG", new XAttribute("A", "1")));
        Assert.Equal(2, TaskDataRules.Breaches(root).Count);
    }

    [Fact]
    public void The_set_point_is_the_soaked_rate_in_milligrams_on_a_square_meter()
    {
        // DDI 6, setpoint mass per area, mg/m², resolution 1: 187.5 lb/ac = 187.5 × 0.45359237 kg / 4,046.8564224 m².
        var value = Root(TaskDataHandout.Write(SomeHandout.Whole, Language.English)[0].Bytes).Descendants("PDV").Single();
        Assert.Equal(("0006", "21016"), (value.Attribute("A")!.Value, value.Attribute("B")!.Value));
    }

    [Fact]
    public void A_time_log_tells_where_the_gate_stood_open_and_when()
    {
        var rows = TaskDataHandout.Write(SomeHandout.Whole, Language.English)[2].Bytes.Span;
        var at = 0;
        for (var run = 1; run <= 2; run++)
        {
            for (var i = 0; i < 4; i++)
            {
                var moment = SomeHandout.Made.AddSeconds((60 * (run - 1)) + (0.2 * i));
                Assert.Equal(moment.TimeOfDay.TotalMilliseconds, BinaryPrimitives.ReadUInt32LittleEndian(rows[at..]), 1.0);
                Assert.Equal(16_930, BinaryPrimitives.ReadUInt16LittleEndian(rows[(at + 4)..])); // 1 January 1980 to 9 May 2026: 46 years with 12 leap days, and 128 days
                Assert.Equal(390_100_000 + (30_000 * i), BinaryPrimitives.ReadInt32LittleEndian(rows[(at + 6)..]));
                Assert.Equal(-1_220_200_000 + (1_000 * run), BinaryPrimitives.ReadInt32LittleEndian(rows[(at + 10)..]));
                Assert.Equal(1, rows[at + 14]);
                var values = rows[at + 15];
                at += 16;
                if (values == 0) continue;
                Assert.Equal((0, i == 0 ? 1 : 0), (rows[at], BinaryPrimitives.ReadInt32LittleEndian(rows[(at + 1)..])));
                at += 5;
            }
        }

        Assert.Equal(rows.Length, at);
    }

    [Fact]
    public void A_flight_with_no_times_has_no_log_but_counts_as_flown()
    {
        var files = TaskDataHandout.Write(SomeHandout.Of("Two Gates", timed: false), Language.English);
        var root = Root(files[0].Bytes);
        Assert.Single(files);
        Assert.Empty(root.Descendants("DVC"));
        Assert.Equal("4", root.Element("TSK")!.Attribute("G")!.Value);
        Assert.Empty(TaskDataRules.Breaches(root));
    }

    private static XElement Root(ReadOnlyMemory<byte> bytes)
    {
        using var stream = new MemoryStream(bytes.ToArray());
        return XElement.Load(stream);
    }
}
