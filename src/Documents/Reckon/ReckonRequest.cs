using System.Globalization;
using Watersown.Reckon;

namespace Watersown.Documents.Reckon;

/// <summary>The values somebody gives to a reckoning, as JSON or typed by hand.</summary>
public static class ReckonRequest
{
    /// <summary>No boundary or count of one reckoning is as long as this.</summary>
    public const int LengthMost = 16_000_000;

    /// <summary>
    /// Reads one JSON object. A value can stand beside problems, so that faults of the text and faults of its values are
    /// told together.
    /// </summary>
    public static Outcome<Datum.Table> FromJson(string text, Reckoning reckoning)
    {
        if (text.Length > LengthMost)
            return Outcome<Datum.Table>.Refuse(RequestProblems.TooLong.At(string.Empty, ("limit", LengthMost.ToString("N0", CultureInfo.InvariantCulture))));
        var trimmed = text.TrimStart('\uFEFF');
        if (string.IsNullOrWhiteSpace(trimmed))
            return Outcome<Datum.Table>.Refuse(RequestProblems.Empty.At(string.Empty, ("example", Example(reckoning)), ("typed", Typed(reckoning))));
        return DatumReader.Read(trimmed).Then(value => value is Datum.Table table
            ? Outcome<Datum.Table>.Of(table)
            : Outcome<Datum.Table>.Refuse(RequestProblems.NotAnObject.At(string.Empty, ("value", Wording.Say.Datum(value)), ("example", Example(reckoning)))));
    }

    /// <summary>Reads <c>key=value</c> words; a value is JSON where it can be read so, else text.</summary>
    public static Outcome<Datum.Table> FromWords(IEnumerable<string> words, Reckoning reckoning)
    {
        var cells = ImmutableArray.CreateBuilder<(string, Datum)>();
        var problems = new List<Problem>();
        foreach (var word in words)
        {
            var equals = word.IndexOf('=', StringComparison.Ordinal);
            if (equals > 0) cells.Add((word[..equals], FromWord(word[(equals + 1)..])));
            else problems.Add(RequestProblems.NoEqualsSign.At(string.Empty, ("value", word), ("typed", FirstWord(reckoning))));
        }

        return Outcome<Datum.Table>.Of(new Datum.Table(cells.ToImmutable()), problems);
    }

    /// <summary>The example of a reckoning as JSON on one line.</summary>
    public static string Example(Reckoning reckoning) =>
        DatumWriter.Text(FromWords(Words(reckoning), reckoning).Value, indented: false);

    /// <summary>The example of a reckoning as words.</summary>
    public static string[] Words(Reckoning reckoning) => reckoning.Example.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static Datum FromWord(string value)
    {
        var read = DatumReader.Read(value);
        if (read.HasValue && read.Problems.IsEmpty) return read.Value;
        // People type .5 and +3, which JSON does not know.
        return double.TryParse(value, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            && double.IsFinite(number) && value.All(c => c is '.' or '+' or '-' || char.IsAsciiDigit(c))
                ? number
                : value;
    }

    private static string Typed(Reckoning reckoning) => "watersown reckon " + reckoning.Name + " " + reckoning.Example;

    private static string FirstWord(Reckoning reckoning) => Words(reckoning)[0];
}
