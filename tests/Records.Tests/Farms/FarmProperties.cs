using System.Text;
using CsCheck;
using Watersown.Documents.Farms;
using Watersown.Documents.Json;

namespace Watersown.Farms;

public sealed class FarmProperties
{
    private static readonly byte[] marrowfen = File.ReadAllBytes(Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json"));

    [Fact]
    public void What_is_written_is_read_back_the_same() => AnyState.Gen.Sample(
        state =>
        {
            var read = FarmReading.Read(FarmWriting.Write(state), SmallFarm.Context);
            Assert.True(read.HasValue, SmallFarm.Said(read));
            Assert.Equal(Dump.Of(state), Dump.Of(read.Value));
        },
        iter: 300);

    [Fact]
    public void Marrowfen_is_written_and_read_back_the_same()
    {
        var state = FarmReading.Read(marrowfen, SmallFarm.Context).Value;
        var again = FarmReading.Read(FarmWriting.Write(state), SmallFarm.Context);
        Assert.Empty(again.Problems);
        Assert.Equal(Dump.Of(state), Dump.Of(again.Value));
    }

    [Fact]
    public void The_writer_knows_every_key_of_the_outline()
    {
        string[] never = ["$schema", "boundaries", "cap_gpm"]; // for people who write by hand; the writer says the same in its own way
        var text = Encoding.UTF8.GetString(FarmWriting.Write(AnyState.Full).Span);
        foreach (var key in OutlineSchema.Things(FarmOutline.Root).SelectMany(t => t.Keys).Select(k => k.Name).Except(never, StringComparer.Ordinal))
            Assert.Contains("\"" + key + "\":", text, StringComparison.Ordinal);
    }

    [Fact]
    public void No_damage_to_a_document_makes_the_reader_throw()
    {
        var damage = Gen.Select(Gen.Int[0, marrowfen.Length - 1], Gen.Int[0, 40], Gen.Byte.Array[0, 6]);
        damage.Array[1, 4].Sample(
            cuts =>
            {
                var bytes = marrowfen.ToList();
                foreach (var (at, length, put) in cuts)
                {
                    var from = Math.Min(at, bytes.Count);
                    bytes.RemoveRange(from, Math.Min(length, bytes.Count - from));
                    bytes.InsertRange(from, put);
                }

                _ = FarmReading.Read(bytes.ToArray(), SmallFarm.Context).Problems;
            },
            iter: 400);
    }

    [Fact]
    public void No_value_in_the_place_of_another_makes_the_reader_throw()
    {
        string[] values = ["null", "true", "-1", "0", "1e308", "-1e999", "1e9", "\"\"", "\"x\"", "\"9999-12-31T23:59\"", "\"0001-01-01\"", "[]", "{}", "[[]]", "[null]", "{\"type\":\"Polygon\"}", "\"\\u0000\""];
        var text = Encoding.UTF8.GetString(marrowfen);
        var places = System.Text.RegularExpressions.Regex.Matches(text, ": (?<value>\"[^\"]*\"|[0-9.]+)", System.Text.RegularExpressions.RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(10));
        Gen.Select(Gen.Int[0, places.Count - 1], Gen.Int[0, values.Length - 1].Select(i => values[i])).Sample(
            (place, value) =>
            {
                var group = places[place].Groups["value"];
                var read = SmallFarm.Read(text[..group.Index] + value + text[(group.Index + group.Length)..]);
                _ = read.Problems.Select(p => Wording.Say.Problem(p, Wording.Language.Spanish)).ToList();
            },
            iter: 400);
    }

    [Fact]
    public void Any_bytes_give_problems_and_never_a_farm() =>
        Gen.Byte.Array[0, 200].Sample(bytes => Assert.True(FarmReading.Read(bytes, SmallFarm.Context).IsRefused), iter: 1000);
}
