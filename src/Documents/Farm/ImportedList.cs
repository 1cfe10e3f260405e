using Watersown.Schedule;
using Watersown.Schedule.Lists;

namespace Watersown.Documents.Farms;

/// <summary>What a list becomes.</summary>
/// <param name="Farm">The farm's name.</param>
/// <param name="Zone">The farm's time zone, IANA.</param>
public sealed record ImportListOptions(string Farm, string Zone)
{
    /// <summary>Rate for fields whose line gives none.</summary>
    public SeedRate? Rate { get; init; }

    /// <summary>The moment the list was true, as the farm's clock says it.</summary>
    public string? Now { get; init; }

    /// <summary>The moment of reading.</summary>
    public required DateTimeOffset Clock { get; init; }
}

/// <summary>A list that was understood: its fields, the farm document made of it, and that document read back.</summary>
public sealed record ImportedList(FieldList List, ReadOnlyMemory<byte> Document, SeasonState State)
{
    /// <summary>Fields of which the list does not say how far they have come.</summary>
    public ImmutableArray<ListedField> Open => [.. List.Fields.Where(f => f.Stage is null)];

    /// <summary>Makes a farm document of a pasted list of fields. It needs no file and no signal: the phone reads it so, too.</summary>
    public static Outcome<ImportedList> Of(string text, ImportListOptions options) =>
        ListSplitting.Split(text).Then(rows => ListReading.Read(rows, options.Rate)).Then(fields => ReadBack(fields, options));

    /// <summary>The document is read back by the reader of all documents: what it warns of, it would warn of tomorrow.</summary>
    private static Outcome<ImportedList> ReadBack(FieldList fields, ImportListOptions options)
    {
        var document = ListedFarm.Write(fields, options.Farm, options.Zone, options.Now);
        var read = FarmReading.Read(document, new FarmContext(options.Clock));
        // Single figures were judged where they stood in the list; how far the fields have come is asked, not warned of.
        var problems = read.Problems.Where(p => p.Kind != FarmProblems.StageUnknown && p.Kind != LimitProblems.Low && p.Kind != LimitProblems.High);
        return read.HasValue ? Outcome<ImportedList>.Of(new ImportedList(fields, document, read.Value), problems) : Outcome<ImportedList>.Refuse(problems);
    }
}
