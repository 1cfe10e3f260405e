using System.Text;
using CsCheck;
using Watersown.Documents.Farms;
using Watersown.Records.Land;

namespace Watersown.Records;

public sealed class ImportListProperties
{
    private static readonly ImportListOptions options = new("Listed", "America/Los_Angeles") { Clock = new DateTimeOffset(2026, 5, 8, 11, 50, 0, TimeSpan.Zero) };

    [Fact]
    public void No_text_makes_the_reader_throw() =>
        Gen.String[Gen.Frequency((8, Gen.Char["abF \"',;\t|\n\r0123456789.-#/"]), (1, Gen.Char)), 0, 120].Sample(text => _ = ImportList.Run(Encoding.UTF8.GetBytes(text), options).Problems, iter: 2000);

    [Fact]
    public void No_bytes_make_the_reader_throw() =>
        Gen.Byte.Array[0, 100].Sample(bytes => _ = ImportList.Run(bytes, options).Problems, iter: 2000);

    [Fact]
    public void No_mix_of_words_that_lists_hold_makes_the_reader_throw()
    {
        var word = Gen.Int[0, 23].Select(i => new[]
        {
            "Field", "Acres", "Rate", "Checks", "Dry lb", "Stage", "Code", "Total", "2,900", "142", "142 ac", "\"", "\"1,200\"", "", " ", "Tin Barn", "N4", "-5", "1e99", "ha", "99999999999999", "---", "sep=;", "上",
        }[i]);
        var line = Gen.Select(word.Array[0, 6], Gen.Char[",;\t|"], (words, mark) => string.Join(mark, words));
        line.Array[0, 12].Sample(lines => _ = ImportList.Run(Encoding.UTF8.GetBytes(string.Join('\n', lines)), options).Problems, iter: 3000);
    }

    [Fact]
    public void Fields_of_any_name_and_size_come_through_whatever_sets_them_apart()
    {
        var name = Gen.String[Gen.Char["abcdefgh ABC'é"], 1, 20].Select(s => "X" + s.Trim());
        var field = Gen.Select(name, Gen.Int[50, 4000], Gen.Int[1200, 2000]);
        Gen.Select(field.Array[1, 20], Gen.Char[",;\t|"]).Sample(
            (fields, mark) =>
            {
                var different = fields.DistinctBy(f => f.Item1.ToUpperInvariant(), StringComparer.Ordinal).ToList();
                var list = $"Field{mark}Acres{mark}Rate\n" + string.Concat(different.Select(f => FormattableString.Invariant($"{f.Item1}{mark}{f.Item2 / 10.0}{mark}{f.Item3 / 10.0}\n")));
                var read = ImportList.Run(Encoding.UTF8.GetBytes(list), options);
                Assert.True(read.HasValue, list);
                Assert.Equal(different.Select(f => f.Item1), read.Value.State.Farm.Fields.Select(f => f.Name));
                Assert.Equal(different.Sum(f => f.Item2 / 10.0), read.Value.List.Net.Acres, 1e-6);
                Assert.Equal(different.Sum(f => f.Item2 / 10.0 * f.Item3 / 10.0), read.Value.List.Dry.Pounds, 1e-3);
            },
            iter: 500);
    }
}
