using Watersown.Land;
using Watersown.Water;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Boxes, leaks and whatever a relief must know about the fields on the route.</summary>
public static class WaterNotes
{
    internal static IEnumerable<Block> Blocks(WaterSheet sheet, Telling tell)
    {
        var fields = sheet.Routes.SelectMany(r => r.Stops).Concat(sheet.Loose).Select(s => s.Field).Concat(sheet.NoSpill).DistinctBy(f => f.Code, StringComparer.Ordinal);
        var notes = fields.Select(f => (Field: f, Runs: Notes(f, tell))).Where(n => !n.Runs.IsEmpty).ToList();
        if (notes.Count == 0) yield break;
        yield return new Block.Heading(tell.Words.Water.Notes);
        foreach (var (field, runs) in notes) yield return new Block.Paragraph([new Run(Telling.Name(field) + ": ", Bold: true), .. runs]);
    }

    /// <summary>Boxes, leaks and notes of one field; nothing where nobody has told any.</summary>
    public static ImmutableArray<Run> Notes(Field field, Telling tell)
    {
        var runs = new List<Run>();
        void Add(params ReadOnlySpan<Run> more)
        {
            if (runs.Count > 0) runs.Add(new Run("; "));
            runs.AddRange(more);
        }

        foreach (var box in field.Boxes.OrderBy(b => b.Number))
        {
            if (box.Leaks) Add(new Run(Said(box, tell) + ", "), new Run(tell.Words.Water.LeaksLoud, Bold: true));
            else Add(new Run(Said(box, tell)));
        }

        if (field.BoxNotes is { } boxes) Add(new Run(boxes.TrimEnd('.')));
        if (field.Note is { } note) Add(new Run(note.TrimEnd('.')));
        if (runs.Count > 0) runs.Add(new Run("."));
        return [.. runs];
    }

    private static string Said(Box box, Telling tell)
    {
        var words = tell.Words.Water;
        (string, string) number = ("n", Telling.Count(box.Number));
        var said = box.Kind switch
        {
            BoxKind.Inlet => Template.Fill(words.Inlet, number, ("to", Check(box.ToCheck))),
            BoxKind.BetweenChecks => Template.Fill(words.Between, number, ("from", Check(box.FromCheck)), ("to", Check(box.ToCheck))),
            BoxKind.Drain => Template.Fill(words.DrainBox, number, ("from", Check(box.FromCheck))),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        if (box.DrainsTo is { } place) said += " " + Template.Fill(words.DrainsTo, ("place", Place(place, words)));
        if (box.Boards is { } boards) said += ", " + Template.Fill(words.Boards, ("depth", tell.Depth(boards)));
        return said;
    }

    // The usual places in the reader's language; what else the farm calls it stands as it is.
    private static string Place(string place, WaterWords words)
    {
        bool Is(string usual) => string.Equals(place.Trim(), usual, StringComparison.OrdinalIgnoreCase);
        return Is(WaterWords.English.PublicDrain) || Is(WaterWords.Spanish.PublicDrain) ? words.PublicDrain
            : Is(WaterWords.English.OwnReturn) || Is(WaterWords.Spanish.OwnReturn) ? words.OwnReturn
            : Is(WaterWords.English.Recirculation) || Is(WaterWords.Spanish.Recirculation) ? words.Recirculation
            : place;
    }

    private static string Check(int? number) => number is { } n ? Telling.Count(n) : "?";
}
