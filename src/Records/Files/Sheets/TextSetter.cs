using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>A stretch of words in one face.</summary>
internal sealed record Stretch(string Text, Face Face);

/// <summary>Breaks words into lines of a width.</summary>
internal static class TextSetter
{
    /// <summary>Lines of a width; a word too long for a line is broken, so nothing ever sticks out.</summary>
    public static ImmutableArray<ImmutableArray<Stretch>> Lines(IEnumerable<Run> runs, double width, double size) =>
        Lines(runs.Select(r => new Stretch(r.Text, r.Bold ? Face.WordBold : Face.Word)), width, size);

    public static ImmutableArray<ImmutableArray<Stretch>> Lines(IEnumerable<Stretch> stretches, double width, double size)
    {
        var lines = ImmutableArray.CreateBuilder<ImmutableArray<Stretch>>();
        var line = new List<Stretch>();
        double used = 0;
        foreach (var word in stretches.SelectMany(s => Words(s, width, size)))
        {
            var wide = SheetFonts.Width(word.Text.TrimEnd(' '), word.Face, size);
            if (line.Count > 0 && used + wide > width + 0.01)
            {
                lines.Add(Joined(line));
                line.Clear();
                used = 0;
            }

            if (line.Count == 0 && string.IsNullOrWhiteSpace(word.Text)) continue;
            line.Add(word);
            used += SheetFonts.Width(word.Text, word.Face, size);
        }

        if (line.Count > 0) lines.Add(Joined(line));
        return lines.ToImmutable();
    }

    public static Laid Lay(IEnumerable<Run> runs, double width, double size = Paper.Body, double lineHeight = Paper.BodyLine, Setting setting = Setting.Left) =>
        Lay(Lines(runs, width, size), width, size, lineHeight, setting);

    public static Laid Lay(ImmutableArray<ImmutableArray<Stretch>> lines, double width, double size, double lineHeight, Setting setting = Setting.Left)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        for (var i = 0; i < lines.Length; i++)
        {
            var wide = lines[i].Sum(s => SheetFonts.Width(s.Text, s.Face, size));
            var x = setting switch { Setting.Right => width - wide, Setting.Center => (width - wide) / 2, _ => 0 };
            var baseLine = (i * lineHeight) + (lineHeight / 2) + (size * 0.345);
            foreach (var stretch in lines[i])
            {
                marks.Add(new Mark.Words(stretch.Text, x, baseLine, stretch.Face, size));
                x += SheetFonts.Width(stretch.Text, stretch.Face, size);
            }
        }

        return new Laid(lines.Length * lineHeight, marks.ToImmutable());
    }

    /// <summary>Width of the widest word, which a column cannot go below without breaking it.</summary>
    public static double WidestWord(IEnumerable<Run> runs, double size) =>
        runs.SelectMany(r => r.Text.Split(' ').Select(w => SheetFonts.Width(w, r.Bold ? Face.WordBold : Face.Word, size))).DefaultIfEmpty().Max();

    public static double Width(IEnumerable<Run> runs, double size) =>
        runs.Sum(r => SheetFonts.Width(r.Text, r.Bold ? Face.WordBold : Face.Word, size));

    // Words with the space that follows them; one too long for a line in pieces.
    private static IEnumerable<Stretch> Words(Stretch stretch, double width, double size)
    {
        var start = 0;
        while (start < stretch.Text.Length)
        {
            var space = stretch.Text.IndexOf(' ', start);
            var end = space < 0 ? stretch.Text.Length : space + 1;
            var word = stretch.Text[start..end];
            start = end;
            while (word.Length > 1 && SheetFonts.Width(word.TrimEnd(), stretch.Face, size) > width)
            {
                var fits = word.Length - 1;
                while (fits > 1 && SheetFonts.Width(word[..fits], stretch.Face, size) > width) fits--;
                yield return stretch with { Text = word[..fits] };
                word = word[fits..];
            }

            yield return stretch with { Text = word };
        }
    }

    private static ImmutableArray<Stretch> Joined(List<Stretch> words)
    {
        var joined = ImmutableArray.CreateBuilder<Stretch>();
        foreach (var word in words)
        {
            if (joined.Count > 0 && joined[^1].Face == word.Face) joined[^1] = word with { Text = joined[^1].Text + word.Text };
            else joined.Add(word);
        }

        joined[^1] = joined[^1] with { Text = joined[^1].Text.TrimEnd() };
        return joined.ToImmutable();
    }
}
