using System.Globalization;
using System.Text.Json;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Documents.Json;

/// <summary>Holds a document against its outline and says everything that does not fit, each with its path.</summary>
public sealed class OutlineCheck
{
    private readonly ImmutableArray<Problem>.Builder problems = ImmutableArray.CreateBuilder<Problem>();

    private OutlineCheck()
    {
    }

    public static ImmutableArray<Problem> Check(JsonElement root, Outline.Thing outline)
    {
        var check = new OutlineCheck();
        check.Visit(root, outline, string.Empty, string.Empty);
        return check.problems.ToImmutable();
    }

    private void Visit(JsonElement value, Outline outline, string path, string name)
    {
        switch (outline)
        {
            case Outline.Thing thing when value.ValueKind == JsonValueKind.Object:
                VisitThing(value, thing, path, name);
                return;
            case Outline.Several several when value.ValueKind == JsonValueKind.Array:
                VisitSeveral(value, several, path, name);
                return;
            case Outline.NumberOrSeveral either:
                Visit(value, value.ValueKind == JsonValueKind.Array ? either.Many : either.One, path, name);
                return;
            case Outline.Number number when value.ValueKind == JsonValueKind.Number:
                VisitNumber(value, number, path, name);
                return;
            case Outline.Text text when value.ValueKind == JsonValueKind.String:
                VisitText(value.GetString()!, text, path, name);
                return;
            case Outline.Word word when value.ValueKind == JsonValueKind.String:
                VisitWord(value.GetString()!, word, path, name);
                return;
            case Outline.Anything:
            case Outline.Flag when value.ValueKind is JsonValueKind.True or JsonValueKind.False:
            case Outline.Day when JsonFacts.DayOf(value) is not null:
            case Outline.Hour when JsonFacts.HourOf(value) is not null:
            case Outline.Moment when JsonFacts.MomentOf(value) is not null:
            case Outline.Instant when JsonFacts.InstantOf(value) is not null:
                return;
            case Outline.Geometry when value.ValueKind == JsonValueKind.Object:
                problems.AddRange(BoundaryReading.Read(JsonFacts.DatumOf(value), Place.Named(path, name)).Problems);
                return;
            default:
                problems.Add(JsonProblems.WrongSort.At(Place.Named(path, name), ("value", OutlineWords.Shown(value)), ("wanted", OutlineWords.Wanted(outline)), ("wanted:es", OutlineWords.WantedSpanish(outline))));
                return;
        }
    }

    private void VisitThing(JsonElement value, Outline.Thing thing, string path, string outerName)
    {
        var name = NameOf(value) ?? outerName;
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var property in value.EnumerateObject())
        {
            var place = path.Length == 0 ? property.Name : path + "." + property.Name;
            if (!seen.Add(property.Name))
            {
                problems.Add(JsonProblems.GivenTwice.At(Place.Named(place, name)));
                continue;
            }

            var key = thing.Keys.FirstOrDefault(k => string.Equals(k.Name, property.Name, StringComparison.Ordinal));
            if (key is not null) Visit(property.Value, key.Value, place, name);
            else problems.Add(JsonProblems.UnknownKey.At(Place.Named(place, name), ("nearest", Meant(property.Name, thing.Keys.Select(k => k.Name)))));
        }

        foreach (var key in thing.Keys.Where(k => k.Required && !seen.Contains(k.Name)))
            problems.Add(JsonProblems.Missing.At(Place.Named(path.Length == 0 ? key.Name : path + "." + key.Name, name), ("meaning", key.Meaning), ("meaning:es", OutlineWords.KeySpanish(key.Name))));
        if (!thing.ExactlyOne.IsEmpty) CheckOne(thing, [.. thing.ExactlyOne.Where(seen.Contains)], path, name);
    }

    private void CheckOne(Outline.Thing thing, ImmutableArray<string> given, string path, string name)
    {
        var all = string.Join(" and ", thing.ExactlyOne);
        if (given.IsEmpty) problems.Add(JsonProblems.NoneGiven.At(Place.Named(path + "." + thing.ExactlyOne[0], name), ("limit", all), ("meaning", thing.Keys.First(k => k.Name == thing.ExactlyOne[0]).Meaning), ("meaning:es", OutlineWords.KeySpanish(thing.ExactlyOne[0]))));
        if (given.Length > 1) problems.Add(JsonProblems.MoreThanOne.At(Place.Named(path + "." + given[^1], name), ("value", string.Join(" and ", given))));
    }

    private void VisitSeveral(JsonElement value, Outline.Several several, string path, string name)
    {
        var length = value.GetArrayLength();
        if (length > several.Most)
        {
            problems.Add(JsonProblems.TooMany.At(Place.Named(path, name), ("value", length.ToString(CultureInfo.InvariantCulture)), ("limit", several.Most.ToString(CultureInfo.InvariantCulture))));
            return;
        }

        var index = 0;
        foreach (var entry in value.EnumerateArray())
        {
            Visit(entry, several.Entry, path + "[" + index.ToString(CultureInfo.InvariantCulture) + "]", name);
            index++;
        }
    }

    private void VisitNumber(JsonElement value, Outline.Number number, string path, string name)
    {
        var where = Place.Named(path, name);
        if (JsonFacts.NumberOf(value) is not { } figure || (number.Limit.Whole && figure != Math.Floor(figure)))
            problems.Add(JsonProblems.WrongSort.At(where, ("value", OutlineWords.Shown(value)), ("wanted", OutlineWords.Wanted(number)), ("wanted:es", OutlineWords.WantedSpanish(number))));
        else if (number.Limit.Judge(figure, where) is { } problem)
            problems.Add(problem);
    }

    private void VisitText(string value, Outline.Text text, string path, string name)
    {
        if (!text.MayBeEmpty && string.IsNullOrWhiteSpace(value))
            problems.Add(JsonProblems.EmptyText.At(Place.Named(path, name)));
        else if (value.Length > text.Most)
            problems.Add(JsonProblems.TooLong.At(Place.Named(path, name), ("value", value.Length.ToString(CultureInfo.InvariantCulture)), ("limit", text.Most.ToString(CultureInfo.InvariantCulture))));
    }

    private void VisitWord(string value, Outline.Word word, string path, string name)
    {
        if (!word.Choices.Contains(value, StringComparer.Ordinal))
            problems.Add(JsonProblems.NotAWord.At(Place.Named(path, name), ("value", Say.Short(value)), ("limit", string.Join(", ", word.Choices)), ("nearest", Meant(value, word.Choices))));
    }

    private static string Meant(string word, IEnumerable<string> known) => Nearest.Of(word, known) is { } near ? " '" + near + "'?" : string.Empty;

    /// <summary>What people know the entry by: its name, else its code.</summary>
    private static string? NameOf(JsonElement value)
    {
        foreach (var key in (ReadOnlySpan<string>)["name", "code"])
        {
            if (value.TryGetProperty(key, out var found) && found.ValueKind == JsonValueKind.String && found.GetString() is { Length: > 0 } text) return Say.Short(text);
        }

        return null;
    }
}
