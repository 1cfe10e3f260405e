using System.Globalization;
using System.Text;
using Watersown.Flight.Flown;

namespace Watersown.Documents.Tracks;

/// <summary>
/// A table with a line of headings: commas, semicolons or tabs; with semicolons or tabs a number may have a comma for its point. Lines before
/// the headings and lines that begin with # are passed over.
/// </summary>
internal sealed class CsvTrack(Action<Fix> take, string file, TrackOptions options) : LineTrack(take)
{
    private const int MostColumns = 256;
    private const int HeadingsWithin = 50;

    private readonly List<Problem> warnings = [];
    private readonly Range[] parts = new Range[MostColumns];
    private readonly StringBuilder number = new();
    private CsvColumns? columns;
    private string? first;
    private bool asked;

    public ImmutableArray<Problem> Warnings => [.. warnings];

    public ImmutableArray<(TrackColumn Column, string Heading)> Columns => columns?.Taken ?? [];

    protected override void Line(ReadOnlySpan<char> line)
    {
        if (line[0] == '#') return;
        if (columns is null)
        {
            Headings(line);
            return;
        }

        var cells = Cut(line, columns.Delimiter);
        var (latitude, longitude) = (Figure(cells[columns.At(TrackColumn.Latitude)]), Figure(cells[columns.At(TrackColumn.Longitude)]));
        if (double.IsNaN(latitude) || double.IsNaN(longitude))
        {
            // A line with no place at all, as between two stretches, is not a place that went wrong.
            if (!cells[columns.At(TrackColumn.Latitude)].IsEmpty || !cells[columns.At(TrackColumn.Longitude)].IsEmpty) Drops.Add(DropReason.Unreadable, Number);
            return;
        }

        Give(new Fix(latitude, longitude)
        {
            Seconds = Time(cells),
            Height = Figure(cells[columns.At(TrackColumn.Height)]) * columns.PerHeight,
            Speed = Figure(cells[columns.At(TrackColumn.Speed)]) * columns.PerSpeed,
            Course = Figure(cells[columns.At(TrackColumn.Course)]),
            Gate = TrackWords.Gate(cells[columns.At(TrackColumn.Gate)]),
        });
    }

    protected override void End()
    {
        if (columns is null) Fault = TrackProblems.NoPlaceColumns.At(file, ("value", "lat, lon"), ("known", Wording.Say.Short(first ?? string.Empty, 200)));
    }

    private void Headings(ReadOnlySpan<char> line)
    {
        first ??= line.ToString();
        var found = CsvColumns.Of(line.ToString(), options.Columns, file);
        if (found.HasValue)
        {
            columns = found.Value;
            warnings.AddRange(found.Problems);

            // Columns told by number need no headings: then the first line is a place already.
            if (!double.IsNaN(Figure(Cut(line, columns.Delimiter)[columns.At(TrackColumn.Latitude)]))) Line(line);
        }
        else if (Number >= HeadingsWithin || !options.Columns.IsEmpty)
        {
            // What was asked for by name is missing in the first line already.
            Fault = found.Problems[0];
        }
    }

    private double Time(Cells cells)
    {
        var time = cells[columns!.At(TrackColumn.Time)];
        var day = cells[columns.At(TrackColumn.Date)];
        if (day.IsEmpty)
        {
            Ask(time);
            return TrackTime.Moment(time);
        }

        Ask(day);
        var date = TrackTime.Date(day, columns.DayFirst);
        return time.IsEmpty ? date : date + TrackTime.Clock(time, zoned: true);
    }

    private void Ask(ReadOnlySpan<char> date)
    {
        if (asked || columns!.DayFirst) return;
        if (date.IndexOf(' ') is > 0 and var blank) date = date[..blank];
        if (!date.IsEmpty && !TrackTime.TwoWays(date))
        {
            asked = date.IndexOfAny('-', '/') > 0;
            return;
        }

        if (date.IsEmpty) return;
        asked = true;
        warnings.Add(TrackProblems.TwoDates.At(file, ("value", date.ToString())));
    }

    private double Figure(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty) return double.NaN;
        if (columns!.Delimiter != ',' && text.Contains(','))
        {
            number.Clear().Append(text).Replace(',', '.');
            return double.TryParse(number.ToString(), NumberStyles.Float, CultureInfo.InvariantCulture, out var comma) ? comma : double.NaN;
        }

        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var found) && double.IsFinite(found) ? found : double.NaN;
    }

    private Cells Cut(ReadOnlySpan<char> line, char delimiter) => new(line, parts.AsSpan(0, line.Split(parts, delimiter)));

    private readonly ref struct Cells(ReadOnlySpan<char> line, ReadOnlySpan<Range> parts)
    {
        private readonly ReadOnlySpan<char> line = line;
        private readonly ReadOnlySpan<Range> parts = parts;

        /// <summary>The text of a column without blanks and quotes; empty where there is none.</summary>
        public ReadOnlySpan<char> this[int index] => index >= 0 && index < parts.Length ? line[parts[index]].Trim(" \t\"'") : [];
    }
}
