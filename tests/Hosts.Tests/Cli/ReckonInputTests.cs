using System.Text;
using static Watersown.Hosts.Asking;

namespace Watersown.Hosts;

/// <summary>What is put on the standard input is read strictly, and whatever is wrong with it is told plainly.</summary>
public sealed class ReckonInputTests
{
    private static readonly string[] WetWeight = ["reckon", "wet-weight"];

    [Theory]
    [InlineData("")]
    [InlineData(" \n\t ")]
    [InlineData("\uFEFF")]
    public async Task Nothing_at_all_is_told_with_an_example(string input)
    {
        var fault = Assert.Single((await AsksAsync(input, WetWeight)).Refused().Faults);
        Assert.StartsWith("JSON-001 · nothing was given. Give one JSON object such as {\"dry_lb\":15450,", fault, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nothing", "line 1, character 2, at 'othing'")]
    [InlineData("{} {}", "line 1, character 4, at '{}'")]
    [InlineData("{\"dry_lb\":1,}", "line 1, character 13, at '}'")]
    [InlineData("{\n  \"año\": 1,\n  dry_lb: 2\n}", "line 3, character 3, at 'dry_lb: 2\\u000a}'")]
    [InlineData("{'dry_lb':1}", "line 1, character 2, at ''dry_lb':1}'")]
    public async Task Text_that_is_not_json_is_told_by_line_and_character(string input, string place)
    {
        var fault = Assert.Single((await AsksAsync(input, WetWeight)).Refused().Faults);
        Assert.Equal($"JSON-002 · the text stops being JSON at {place}. Give one JSON object and nothing after it.", fault);
    }

    [Theory]
    [InlineData("{\"dry_lb\":", "dry_lb: the text stops being JSON at line 1, character 11, at the end.")]
    [InlineData("{\"dry_lb\":1x}", "dry_lb: the text stops being JSON at line 1, character 12, at 'x}'.")]
    [InlineData("{\"dry_lb\":[1,,2]}", "dry_lb #2: the text stops being JSON at line 1, character 14, at ',2]}'.")]
    public async Task The_key_that_was_being_read_is_named(string input, string told) =>
        Assert.StartsWith("JSON-002 · " + told, Assert.Single((await AsksAsync(input, WetWeight)).Refused().Faults), StringComparison.Ordinal);

    [Theory]
    [InlineData("NaN", "NaN")]
    [InlineData("Infinity", "Infinity")]
    [InlineData("-Infinity", "-Infinity")]
    public async Task What_is_no_finite_number_is_told_by_its_key(string word, string told)
    {
        var fault = Assert.Single((await AsksAsync("{\"moisture_before_pct\":13,\"dry_lb\":" + word + ",\"moisture_after_pct\":30}", WetWeight)).Refused().Faults);
        Assert.Equal($"JSON-010 · dry_lb: {told} is not a number that can be worked with. Give a finite number, or leave the key out where it may be left out.", fault);
    }

    [Theory]
    [InlineData("[1, 2]", "[1, 2]")]
    [InlineData("3", "3")]
    [InlineData("\"wet\"", "wet")]
    [InlineData("null", "none")]
    public async Task Json_that_is_no_object_is_refused(string input, string said)
    {
        var fault = Assert.Single((await AsksAsync(input, WetWeight)).Refused().Faults);
        Assert.StartsWith($"JSON-003 · {said} is not a JSON object.", fault, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_key_given_twice_is_refused_however_deep()
    {
        var said = (await AsksAsync("""{"dry_lb":{"a":1,"a":2},"moisture_before_pct":1,"moisture_before_pct":2,"moisture_after_pct":3}""", WetWeight)).Refused();
        Assert.Contains("RECKON-008 · dry_lb a: the key was given twice. Give it once.", said.Faults, StringComparer.Ordinal);
        Assert.Single(said.Faults, "RECKON-008 · moisture_before_pct: the key was given twice. Give it once.");
        Assert.Equal(3, said.Faults.Length);
    }

    [Fact]
    public async Task Lists_within_lists_have_a_floor()
    {
        var deep = """{"dry_lb":""" + new string('[', 100_000) + new string(']', 100_000) + "}";
        var fault = Assert.Single((await AsksAsync(deep, WetWeight)).Refused().Faults);
        Assert.StartsWith("JSON-004 · dry_lb #1 #1", fault, StringComparison.Ordinal);
        Assert.EndsWith("the lists and objects lie more than 32 deep. Give them at most 32 deep.", fault, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_text_beyond_all_measure_is_not_read_to_the_end()
    {
        using var endless = new Endless();
        using var output = new StringWriter();
        using var error = new StringWriter();
        Assert.Equal(2, await Watersown.Cli.Desk.RunAsync(WetWeight, new Watersown.Cli.Edge(output, error, endless, TimeProvider.System)));
        Assert.StartsWith("JSON-005 · the text is longer than 16,000,000 characters.", error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bytes_that_are_not_utf8_are_told_as_that()
    {
        var latin = Encoding.Latin1.GetBytes("""{"dry_lb":"año"}""");
        var fault = Assert.Single((await AsksWithBytesAsync(latin, WetWeight)).Refused().Faults);
        Assert.Equal("JSON-006 · the text is not in UTF-8. Save it as UTF-8 and give it again.", fault);
    }

    [Fact]
    public async Task A_byte_order_mark_does_no_harm()
    {
        var marked = Encoding.UTF8.GetPreamble().Concat(Encoding.UTF8.GetBytes("""{"dry_lb":1,"moisture_before_pct":0,"moisture_after_pct":50}""")).ToArray();
        Assert.Equal(0, (await AsksWithBytesAsync(marked, WetWeight)).Code);
    }

    [Fact]
    public async Task A_number_too_large_to_hold_is_told_once()
    {
        var fault = Assert.Single((await AsksAsync("""{"dry_lb":1e999,"moisture_before_pct":0,"moisture_after_pct":50}""", WetWeight)).Refused().Faults);
        Assert.StartsWith("JSON-007 · dry_lb: 1e999 is larger than any number", fault, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Half_a_character_is_told()
    {
        var fault = Assert.Single((await AsksAsync("""{"dry_lb":"\ud800","moisture_before_pct":0,"moisture_after_pct":50}""", WetWeight)).Refused().Faults);
        Assert.StartsWith("JSON-008 · dry_lb: ", fault, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_fault_stays_on_one_line_and_short_whatever_was_given()
    {
        var value = "first\\nsecond\\u2028" + new string('x', 10_000);
        var fault = Assert.Single((await AsksAsync("{\"dry_lb\":\"" + value + "\",\"moisture_before_pct\":0,\"moisture_after_pct\":50}", WetWeight)).Refused().Faults);
        Assert.StartsWith("RECKON-003 · dry_lb: 'first\\u000asecond\\u2028xxx", fault, StringComparison.Ordinal);
        Assert.InRange(fault.Length, 60, 200);
    }

    [Fact]
    public async Task Null_is_no_number()
    {
        var fault = Assert.Single((await AsksAsync("""{"dry_lb":null,"moisture_before_pct":0,"moisture_after_pct":50}""", WetWeight)).Refused().Faults);
        Assert.Equal("RECKON-003 · dry_lb: 'none' is not a number. Give a number.", fault);
    }

    /// <summary>Text that never ends.</summary>
    private sealed class Endless : TextReader
    {
        public override ValueTask<int> ReadAsync(Memory<char> buffer, CancellationToken cancellationToken = default)
        {
            buffer.Span.Fill(' ');
            return ValueTask.FromResult(buffer.Length);
        }
    }
}
