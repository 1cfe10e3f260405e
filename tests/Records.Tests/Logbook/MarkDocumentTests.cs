using System.Text;
using CsCheck;
using Watersown.Documents.Logbooks;
using Watersown.Season;

namespace Watersown.Logbooks;

public sealed class MarkDocumentTests
{
    private const string Wet = """
        {"id":"00000000000000000000000000000001","kind":"check-water","happened":"2026-05-08T04:50:00-07:00","entered":"2026-05-08T04:50:07.125-07:00",
         "by":"Tamsin Wexcombe","device":"phone-a","sure":"measured","fact":{"field":"N4","check":5,"water":"wet"}}
        """;

    [Fact]
    public void A_mark_is_read_as_it_was_written()
    {
        var mark = Read(Wet).Value;
        Assert.Equal(new CheckWater("N4", 5, WaterSeen.Wet), mark.Fact);
        Assert.Equal(TimeSpan.FromHours(-7), mark.Happened.Offset);
        Assert.Equal(125, mark.Entered.Millisecond);
        Assert.Equal(Wet.ReplaceLineEndings(string.Empty).Replace(" \"by\"", "\"by\"", StringComparison.Ordinal), Text(MarkDocument.Write(mark)));
    }

    [Fact]
    public void Every_kind_of_mark_comes_back_as_it_went() => AnyMark.Mark.Sample(mark =>
    {
        var bytes = MarkDocument.Write(mark);
        var read = MarkReading.Read(bytes);
        Assert.Empty(read.Refusals);
        Assert.Equal(Text(bytes), Text(MarkDocument.Write(read.Value)));
        Assert.Equal(mark.Fact.GetType(), read.Value.Fact.GetType());
    });

    [Fact]
    public void There_is_a_form_for_every_fact()
    {
        var facts = typeof(MarkFact).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(MarkFact)) && t != typeof(UnknownFact)).ToList();
        Assert.All(facts, f => Assert.True(f.IsSealed));
        var seen = new HashSet<Type>();
        AnyMark.Fact.Sample(f => { lock (seen) seen.Add(f.GetType()); }, iter: 5000);
        Assert.Empty(facts.Except(seen));
    }

    [Fact]
    public void A_mark_of_a_kind_from_a_newer_device_is_kept_letter_for_letter()
    {
        const string raw = """{ "tractor":"red" , "to" :[1, 2.50]}""";
        var read = Read(Wet.Replace("check-water", "tractor-moved", StringComparison.Ordinal).Replace("""{"field":"N4","check":5,"water":"wet"}""", raw, StringComparison.Ordinal));
        Assert.Equal(new UnknownFact("tractor-moved", raw), read.Value.Fact);
        Assert.Equal([LogbookProblems.UnknownKind], read.Problems.Select(p => p.Kind));
        Assert.Contains(raw, Text(MarkDocument.Write(read.Value)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_word_from_a_newer_device_is_kept_letter_for_letter_and_not_understood()
    {
        var read = Read(Wet.Replace("\"wet\"", "\"seeping\"", StringComparison.Ordinal));
        Assert.Equal(new UnknownFact("check-water", """{"field":"N4","check":5,"water":"seeping"}""") { Field = "N4" }, read.Value.Fact);
        Assert.Equal([LogbookProblems.UnknownWord], read.Problems.Select(p => p.Kind));
        Assert.Equal(Text(MarkDocument.Write(read.Value)), Text(MarkDocument.Write(Read(Text(MarkDocument.Write(read.Value))).Value)));
        // A newer word does not open the door to what cannot be true.
        Assert.True(Read(Wet.Replace("\"wet\"", "\"seeping\"", StringComparison.Ordinal).Replace("\"check\":5", "\"check\":0", StringComparison.Ordinal)).IsRefused);
    }

    [Theory]
    [InlineData("\"N4\"", "4", "fact.field")]
    [InlineData("\"check\":5", "\"check\":0", "fact.check")]
    [InlineData("\"measured\"", "\"dreamt\"", "sure")]
    [InlineData("04:50:00-07:00", "04:50:00", "happened")]
    [InlineData("0001\"", "000G\"", "id")]
    [InlineData("\"check\":5,", "", "fact.check")]
    public void What_cannot_be_true_is_refused_at_its_place(string from, string to, string where) =>
        Assert.Contains(where, Read(Wet.Replace(from, to, StringComparison.Ordinal)).Refusals.Select(p => p.Where.Split(' ')[0]));

    [Fact]
    public void A_name_that_is_none_says_what_a_name_is() =>
        Assert.Contains(LogbookProblems.NotAName, Read(Wet.Replace("0001\"", "0001AB\"", StringComparison.Ordinal)).Problems.Select(p => p.Kind));

    [Fact]
    public void To_withdraw_nothing_is_refused() =>
        Assert.Contains(LogbookProblems.NothingReplaced, Read(Wet.Replace("check-water", "withdrawn", StringComparison.Ordinal).Replace("""{"field":"N4","check":5,"water":"wet"}""", "{}", StringComparison.Ordinal)).Problems.Select(p => p.Kind));

    [Fact]
    public void One_bad_mark_of_a_list_does_not_take_the_others_along()
    {
        var read = MarkReading.ReadList(Encoding.UTF8.GetBytes("[" + Wet + "," + Wet.Replace("\"check\":5", "\"check\":0", StringComparison.Ordinal) + ",7]"));
        Assert.Single(read.Value);
        Assert.Equal(["marks[1].fact.check", "marks[2]"], read.Refusals.Select(p => p.Where.TrimEnd('.')).Distinct());
    }

    [Fact]
    public void A_list_comes_back_as_it_went() => AnyMark.Several.Sample(marks =>
    {
        var bytes = MarkDocument.Write(marks);
        Assert.Equal(Text(bytes), Text(MarkDocument.Write(MarkReading.ReadList(bytes).Value)));
    });

    [Fact]
    public void Reading_noise_never_throws()
    {
        Gen.Byte.Array[0, 200].Sample(bytes => { _ = MarkReading.Read(bytes); _ = MarkReading.ReadList(bytes); });
        var whole = Encoding.UTF8.GetBytes(Wet);
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte).Array[1, 6].Sample(changes =>
        {
            var bytes = whole.ToArray();
            foreach (var (at, to) in changes) bytes[at] = to;
            _ = MarkReading.Read(bytes);
        });
    }

    private static Outcome<Mark> Read(string text) => MarkReading.Read(Encoding.UTF8.GetBytes(text));

    private static string Text(ReadOnlyMemory<byte> bytes) => Encoding.UTF8.GetString(bytes.Span);
}
