using System.Globalization;
using Watersown.Flight.Patterns;

namespace Watersown.Pocket.Flight;

/// <summary>A pattern test as it is being typed: it becomes a test once its rows can be worked.</summary>
public sealed class PatternDraft
{
    // Grams, one list for each pass; the last is being typed.
    private readonly List<List<double>> passes = [[]];

    /// <summary>Trays of a quarter of a square meter a meter apart, as common ground practice lays them.</summary>
    public Length Spacing { get; set; } = Length.FromMeters(1);

    public Area Tray { get; set; } = Area.FromSquareMeters(0.25);

    public Length Offset { get; set; }

    public Speed? Speed { get; set; }

    public MassFlow? Gate { get; set; }

    public double? GrainGrams { get; set; }

    public string Seed { get; set; } = string.Empty;

    public Fraction Limit { get; set; } = TrayAsk.UsualLimit;

    public Length Steering { get; set; } = TrayAsk.UsualSteering;

    /// <summary>Grams of each pass that has any.</summary>
    public ImmutableArray<ImmutableArray<double>> Rows => [.. passes.Where(p => p.Count > 0).Select(p => p.ToImmutableArray())];

    /// <summary>The pass being typed has a tray.</summary>
    public bool IsOpen => passes[^1].Count > 0;

    /// <summary>The first pass with another number of trays than the first of all.</summary>
    public int? Uneven
    {
        get
        {
            var at = passes.FindIndex(p => p.Count > 0 && p.Count != passes[0].Count);
            return at < 0 ? null : at;
        }
    }

    /// <summary>The test, of the passes that are as long as the first; none where not even that can be worked.</summary>
    public TrayTest? Test(DateOnly day, string? aeroplane)
    {
        var test = new TrayTest
        {
            Day = day,
            Aeroplane = aeroplane,
            Seed = Seed.Trim() is { Length: > 0 } told ? told : null,
            Passes = [.. passes.Where(p => p.Count == passes[0].Count).Select(p => p.Select(g => SoakedSeed.FromKilograms(g / 1000)).ToImmutableArray())],
            Spacing = Spacing,
            Tray = Tray,
            Offset = Offset,
            Speed = Speed,
            Gate = Gate,
            ThousandGrains = GrainGrams is { } grams ? SoakedSeed.FromKilograms(grams / 1000) : null,
        };
        return test.IsWhole ? test : null;
    }

    /// <summary>Takes a kept test up again.</summary>
    public void Take(TrayTest test)
    {
        (Spacing, Tray, Offset, Speed, Gate, Seed) = (test.Spacing, test.Tray, test.Offset, test.Speed, test.Gate, test.Seed ?? string.Empty);
        GrainGrams = test.ThousandGrains?.Kilograms * 1000;
        passes.Clear();
        passes.AddRange(test.Passes.Select(p => p.Select(t => Math.Round(t.Kilograms * 1000, 6)).ToList()));
    }

    /// <summary>A pasted row as a pass of its own; the first word that is no weight where there is one.</summary>
    public string? Paste(string text)
    {
        var row = new List<double>();
        foreach (var word in text.Split([' ', ',', ';', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (!double.TryParse(word, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var grams) || grams > 10_000) return word;
            row.Add(grams);
        }

        if (row.Count is 0 or > TrayTest.MostTrays) return row.Count == 0 ? string.Empty : Wording.Say.Number(row.Count);
        if (!IsOpen) passes.RemoveAt(passes.Count - 1);
        if (passes.Count < TrayTest.MostPasses) passes.Add(row);
        return null;
    }

    /// <summary>One more tray of the pass being typed.</summary>
    public void Add(double grams)
    {
        if (passes[^1].Count < TrayTest.MostTrays) passes[^1].Add(grams);
    }

    public void DropTray()
    {
        if (IsOpen) passes[^1].RemoveAt(passes[^1].Count - 1);
    }

    public void Next()
    {
        if (IsOpen && passes.Count < TrayTest.MostPasses) passes.Add([]);
    }

    /// <summary>Takes a pass out; one to type in is always left.</summary>
    public void Drop(int pass)
    {
        passes.RemoveAt(pass);
        if (passes.Count == 0) passes.Add([]);
    }
}
