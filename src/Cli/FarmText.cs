using System.Globalization;
using System.Text;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Seed;
using Watersown.Wording;

namespace Watersown.Cli;

/// <summary>A farm document as a grower reads it.</summary>
internal static class FarmText
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>Fields in the farm's order, with what is known of each.</summary>
    public static string Table(SeasonState state) => TextTable.Write(
        ["Code", "Name", ">Net ac", ">Gross ac", ">Checks", "Soil", "Water from", "Variety", ">lb/ac dry", ">lb dry", "Stage"],
        state.Farm.Fields.Zip(state.Fields, Row));

    /// <summary>What it all adds up to, by source, by variety, by stage.</summary>
    public static string Totals(SeasonState state)
    {
        var text = new StringBuilder();
        var farm = state.Farm;
        var pairs = farm.Fields.Zip(state.Fields).ToList();
        text.Append(Plain, $"{farm.Name} · season {farm.SeasonYear} · as of {state.Now:yyyy-MM-dd HH:mm} {farm.TimeZone}\n");
        text.Append(Plain, $"{farm.Fields.Length} {Plural(farm.Fields.Length, "field")} · {Acres(pairs.Select(p => p.First.Net))} ac net sown{Known(" · {0} ac gross", farm.Fields, f => f.Gross)}{Known(" · {0} ac certified", farm.Fields, f => f.Certified)}\n");
        text.Append(SeedLine(pairs.Select(p => p.Second.Rate * p.First.Net), state.WetFactor));
        Group(text, "By source", pairs, p => p.First.Sources.IsEmpty ? "not said" : p.First.Sources[0], state.WetFactor);
        Group(text, "By variety", pairs, p => p.Second.Variety ?? "not said", state.WetFactor);
        Group(text, "By stage", pairs.OrderByDescending(p => p.Second.Stage), p => StageWords.Of(p.Second.Stage), state.WetFactor);
        return text.ToString();
    }

    /// <summary>Dry seed and what it weighs soaked.</summary>
    public static string SeedLine(IEnumerable<DrySeed> seed, double wetFactor)
    {
        var dry = seed.Aggregate(DrySeed.Zero, (sum, s) => sum + s);
        return string.Create(Plain, $"{Say.Number(dry.Pounds)} lb dry seed · {Trim(Soaking.Weigh(dry, wetFactor).Pounds, 1)} lb soaked at {Trim(wetFactor, 3)}\n");
    }

    public static string Plural(int count, string word) => count == 1 ? word : word + "s";

    public static string Acres(IEnumerable<Area> areas) => Trim(areas.Aggregate(Area.Zero, (sum, a) => sum + a).Acres, 1);

    private static void Group(StringBuilder text, string title, IEnumerable<(Field First, FieldSeason Second)> pairs, Func<(Field First, FieldSeason Second), string> by, double wetFactor)
    {
        var groups = pairs.GroupBy(by, StringComparer.Ordinal).ToList();
        if (groups.Count == 1 && groups[0].Key == "not said") return;
        text.Append('\n').Append(TextTable.Write(
            [title, ">fields", ">ac net", ">lb dry", ">lb soaked"],
            groups.Select(g =>
            {
                var dry = g.Aggregate(DrySeed.Zero, (sum, p) => sum + (p.Second.Rate * p.First.Net));
                return (ImmutableArray<string>)[g.Key, g.Count().ToString(Plain), Acres(g.Select(p => p.First.Net)), Say.Number(dry.Pounds), Trim(Soaking.Weigh(dry, wetFactor).Pounds, 1)];
            })));
    }

    private static ImmutableArray<string> Row(Field field, FieldSeason season) =>
    [
        field.Code,
        field.Name,
        Trim(field.Net.Acres, 1),
        field.Gross is { } gross ? Trim(gross.Acres, 1) : "-",
        field.Basins.IsEmpty ? "-" : field.Basins.Length.ToString(Plain),
        field.Soil ?? "-",
        field.Sources.IsEmpty ? "-" : string.Join(", ", field.Sources),
        season.Variety ?? "-",
        Trim(season.Rate.PoundsPerAcre, 1),
        Say.Number((season.Rate * field.Net).Pounds),
        Stage(field, season),
    ];

    private static string Stage(Field field, FieldSeason season)
    {
        var word = StageWords.Of(season.Stage);
        return season.Stage == FieldStage.Flooding && season.ChecksWet is { } wet && !field.Basins.IsEmpty
            ? string.Create(Plain, $"{word}, {wet} of {field.Basins.Length} checks wet")
            : word;
    }

    /// <summary>A second acre figure, with how many fields have one where not all do.</summary>
    private static string Known(string form, ImmutableArray<Field> fields, Func<Field, Area?> of)
    {
        var known = fields.Select(of).OfType<Area>().ToList();
        if (known.Count == 0) return string.Empty;
        var said = string.Format(Plain, form, Acres(known));
        return known.Count == fields.Length ? said : said + string.Create(Plain, $" on {known.Count} of them");
    }

    private static string Trim(double value, int decimals)
    {
        var text = Say.Number(value, decimals);
        return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
    }
}
