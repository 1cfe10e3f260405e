using System.Globalization;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Schedule.Lists;

/// <summary>
/// From the lines of a list, as somebody keeps it, to fields: any order of columns, headings or none, totals recognized and
/// checked. Everything that is wrong is said at once.
/// </summary>
public static class ListReading
{
    /// <summary>Most lines that are read.</summary>
    public const int MaxLines = 5000;

    /// <summary>The fields, or what is wrong.</summary>
    /// <param name="rows">Lines in order; blank ones may be there.</param>
    /// <param name="rate">Rate for fields whose line gives none; the usual where not given.</param>
    [Source(nameof(Sources.FarmRecord))]
    public static Outcome<FieldList> Read(ImmutableArray<ListRow> rows, SeedRate? rate = null)
    {
        rows = [.. rows.Where(r => r.Cells.Any(c => !string.IsNullOrWhiteSpace(c)))];
        if (rows.IsEmpty) return Outcome<FieldList>.Refuse(ListProblems.Empty.At(string.Empty));
        if (rows.Length > MaxLines)
            return Outcome<FieldList>.Refuse(ListProblems.TooManyLines.At(string.Empty, ("value", Say.Number(rows.Length)), ("limit", Say.Number(MaxLines))));
        var problems = ImmutableArray.CreateBuilder<Problem>();
        rows = SkipTitle(rows, problems);
        var (columns, headed) = ListColumns.Understand(rows, problems);
        var seen = string.Join(", ", columns.Select(c => ListColumns.ColumnName(c.Index, c.Heading)));
        if (columns.All(c => c.Meaning is not (ListColumn.Name or ListColumn.Code))) problems.Add(ListProblems.NoNames.At(string.Empty, ("value", seen)));
        if (columns.All(c => c.Meaning != ListColumn.Net)) problems.Add(ListProblems.NoAcres.At(string.Empty, ("value", seen)));
        if (Refused(problems)) return Outcome<FieldList>.Refuse(problems);
        var fields = new ListLines(columns, rate ?? FieldList.UsualRate, problems).Read(headed ? rows[1..] : rows);
        if (fields.IsEmpty && !Refused(problems)) problems.Add(ListProblems.NoFields.At(string.Empty));
        return Refused(problems) ? Outcome<FieldList>.Refuse(problems) : Outcome<FieldList>.Of(new FieldList(fields, columns), problems);
    }

    /// <summary>A line of one cell above wider ones is the list's title.</summary>
    private static ImmutableArray<ListRow> SkipTitle(ImmutableArray<ListRow> rows, ImmutableArray<Problem>.Builder problems)
    {
        while (rows.Length > 1 && ListColumns.Trimmed(rows[0]) == 1 && ListColumns.Trimmed(rows[1]) > 1 && ListNumber.Read(rows[0].Cells[0]) is null)
        {
            problems.Add(LeftOut(rows[0]));
            rows = rows[1..];
        }

        return rows;
    }

    internal static Problem LeftOut(ListRow row) =>
        ListProblems.LineLeftOut.At("line " + row.Line.ToString(CultureInfo.InvariantCulture), ("value", Say.Short(string.Join(' ', row.Cells.Select(c => c.Trim()).Where(c => c.Length > 0)))));


    private static bool Refused(ImmutableArray<Problem>.Builder problems) => problems.Any(p => p.Kind.Weight == ProblemWeight.Refuse);
}

/// <summary>Reads the lines under the headings.</summary>
internal sealed class ListLines(ImmutableArray<UnderstoodColumn> columns, SeedRate usualRate, ImmutableArray<Problem>.Builder problems)
{
    private readonly List<string> rateless = [];

    private readonly Dictionary<string, int> lines = new(StringComparer.OrdinalIgnoreCase);

    private readonly HashSet<string> codes = new(StringComparer.OrdinalIgnoreCase);

    public ImmutableArray<ListedField> Read(ImmutableArray<ListRow> rows)
    {
        var fields = new List<ListedField>();
        var since = 0;
        foreach (var row in rows)
        {
            if (row.Cells.All(c => c.Trim().Trim('-', ':', '=').Length == 0)) continue; // a ruled line
            if (ListTotals.IsTotal(row))
            {
                // A sum over fields that could not all be read would only add noise.
                if (!Refused && ListTotals.Check(row, fields, fields[since..], Unit()) is { } problem) problems.Add(problem);
                since = fields.Count;
                continue;
            }

            if (IsNamelessTotal(row, fields)) continue;
            if (Field(row) is { } field) fields.Add(field);
        }

        if (rateless.Count > 0 && !Refused)
            problems.Add(ListProblems.RateTaken.At(string.Empty, ("value", Some(rateless)), ("limit", Say.Figure(usualRate.PoundsPerAcre) + " lb/ac dry")));
        return [.. fields];
    }

    /// <summary>Many lists put their sum under the acres with nothing beside it.</summary>
    private bool IsNamelessTotal(ListRow row, List<ListedField> fields) =>
        fields.Count > 1 && Cell(row, ListColumn.Name).Length == 0 && Cell(row, ListColumn.Code).Length == 0
        && ListNumber.Read(Cell(row, ListColumn.Net)) is not null && ListTotals.Check(row, fields, fields, Unit()) is null;

    private bool Refused => problems.Any(p => p.Kind.Weight == ProblemWeight.Refuse);

    private static string Some(List<string> names) =>
        string.Join(", ", names.Take(6)) + (names.Count > 6 ? string.Create(CultureInfo.InvariantCulture, $" and {names.Count - 6} more") : string.Empty);

    private Area Unit() => ListUnits.Acres(new ListNumber(1, string.Empty), HeadingUnit(ListColumn.Net))!.Value;

    private ListedField? Field(ListRow row)
    {
        var (name, code) = (Cell(row, ListColumn.Name), Cell(row, ListColumn.Code));
        if (name.Length == 0) name = code;
        var where = "line " + row.Line.ToString(CultureInfo.InvariantCulture) + (name.Length == 0 ? string.Empty : ", " + Say.Short(name));
        var before = problems.Count(p => p.Kind.Weight == ProblemWeight.Refuse);
        if (!row.Cells.Any(c => ListNumber.Read(c) is not null))
        {
            // A heading of a block, or a field whose acres are written in words or missing.
            if (ListColumns.Trimmed(row) > 1 && Cell(row, ListColumn.Net).Length > 0) problems.Add(NotANumber(row, ListColumn.Net, where));
            else problems.Add(ListReading.LeftOut(row));
            return null;
        }

        if (ListColumns.Trimmed(row) > columns.Length)
            problems.Add(ListProblems.TooManyCells.At(where, ("value", Say.Number(ListColumns.Trimmed(row))), ("limit", Say.Number(columns.Length))));
        if (name.Length == 0) problems.Add(ListProblems.NoName.At(where));
        else if (!lines.TryAdd(name, row.Line)) problems.Add(ListProblems.NameTwice.At(where, ("other", lines[name].ToString(CultureInfo.InvariantCulture))));
        var net = Acres(row, ListColumn.Net, LandLimits.Net, where);
        if (net is null && Cell(row, ListColumn.Net).Length == 0) problems.Add(ListProblems.AcresMissing.At(where));
        var rate = Rate(row, net, where);
        if (rate is null && Cell(row, ListColumn.Rate).Length == 0) rateless.Add(name);
        var field = new ListedField(row.Line, name, net ?? Area.Zero, rate ?? usualRate)
        {
            Code = Code(code, where),
            Gross = Acres(row, ListColumn.Gross, LandLimits.Gross, where),
            Certified = Acres(row, ListColumn.Certified, LandLimits.Certified, where),
            Checks = Checks(row, where),
            Variety = Cell(row, ListColumn.Variety) is { Length: > 0 } variety ? variety : null,
            Stage = Stage(row, where),
        };
        return problems.Count(p => p.Kind.Weight == ProblemWeight.Refuse) == before ? field : null;
    }

    private string? Code(string code, string where)
    {
        if (code.Length == 0) return null;
        if (code.Length <= LandLimits.MaxCodeLength && codes.Add(code)) return code;
        problems.Add(ListProblems.CodeUnfit.At(where, ("value", Say.Short(code)), ("limit", code.Length > LandLimits.MaxCodeLength ? "4 letters at most" : "given twice")));
        return null;
    }

    private Area? Acres(ListRow row, ListColumn column, Limit limit, string where)
    {
        if (Number(row, column, where) is not { } number) return null;
        if (ListUnits.Acres(number, HeadingUnit(column)) is not { } area)
        {
            problems.Add(Unknown(row, column, "ac, ha", where));
            return null;
        }

        return Judge(limit, area.Acres, column, where) ? area : null;
    }

    /// <summary>The rate of the line, or what its total seed comes to an acre.</summary>
    private SeedRate? Rate(ListRow row, Area? net, string where)
    {
        var dry = Number(row, ListColumn.DryPounds, where) is { } pounds ? ListUnits.Dry(pounds) : null;
        if (Number(row, ListColumn.Rate, where) is not { } number)
            return Cell(row, ListColumn.Rate).Length == 0 && dry is { } seed && net is { } acres && acres > Area.Zero ? SeedRate.FromPoundsPerAcre(seed.Pounds / acres.Acres) : null;
        if (ListUnits.Rate(number, HeadingUnit(ListColumn.Rate)) is not { } rate)
        {
            problems.Add(Unknown(row, ListColumn.Rate, "lb/ac, kg/ha", where));
            return null;
        }

        if (!Judge(Watersown.Seed.SeedLimits.Rate, rate.PoundsPerAcre, ListColumn.Rate, where)) return null;
        if (dry is { } said && net is { } land && Math.Abs(said.Pounds - (rate * land).Pounds) > Math.Max(1, 0.01 * (rate * land).Pounds))
            problems.Add(ListProblems.DryDiffers.At(where, ("value", Say.Number(said.Pounds) + " lb dry"), ("limit", Say.Number((rate * land).Pounds) + " lb dry")));
        return rate;
    }

    private int? Checks(ListRow row, string where)
    {
        if (Number(row, ListColumn.Checks, where) is not { } number) return null;
        if (!ListUnits.IsChecks(number) || number.Value != Math.Floor(number.Value))
        {
            problems.Add(NotANumber(row, ListColumn.Checks, where));
            return null;
        }

        return Judge(LandLimits.BasinCount, number.Value, ListColumn.Checks, where) ? (int)number.Value : null;
    }

    private FieldStage? Stage(ListRow row, string where)
    {
        var cell = Cell(row, ListColumn.Stage);
        if (cell.Length == 0) return null;
        if (ListStages.Find(cell) is { } stage) return stage;
        problems.Add(ListProblems.UnknownStage.At(where, ("value", Say.Short(cell)), ("limit", ListStages.Examples)));
        return null;
    }

    private bool Judge(Limit limit, double value, ListColumn column, string where)
    {
        // The figure has been through a conversion; the grower's own has not the dust of it.
        if (limit.Judge(Math.Round(value, 9), where + ", " + ListWords.Called(column)) is not { } problem) return true;
        problems.Add(problem);
        return problem.Kind.Weight == ProblemWeight.Warn;
    }

    private ListNumber? Number(ListRow row, ListColumn column, string where)
    {
        var cell = Cell(row, column);
        if (cell.Length == 0 || cell.All(c => c is '-' or '–' or '—' or '?')) return null;
        var number = ListNumber.Read(cell);
        if (number is null) problems.Add(NotANumber(row, column, where));
        return number;
    }

    private Problem NotANumber(ListRow row, ListColumn column, string where) => ListProblems.NotANumber.At(where,
        ("value", Say.Short(Cell(row, column))), ("meaning", ListWords.Called(column)), ("meaning:es", ListWords.CalledSpanish(column)), ("limit", column == ListColumn.Checks ? "6" : "142"));

    private Problem Unknown(ListRow row, ListColumn column, string units, string where) => ListProblems.UnknownUnit.At(where,
        ("value", Say.Short(Cell(row, column))), ("meaning", ListWords.Called(column)), ("meaning:es", ListWords.CalledSpanish(column)), ("limit", units));

    private string HeadingUnit(ListColumn column) => columns.FirstOrDefault(c => c.Meaning == column) is { } found ? ListUnits.OfHeading(found.Heading) : string.Empty;

    private string Cell(ListRow row, ListColumn column)
    {
        var found = columns.FirstOrDefault(c => c.Meaning == column);
        return found is null || found.Index >= row.Cells.Length ? string.Empty : row.Cells[found.Index].Trim();
    }
}
