using System.Globalization;

namespace Watersown;

/// <summary>
/// A value as it crosses the edge of Core: number, text, yes or no, list, table row, or nothing. It lets a calculation
/// be described and run by name without Core knowing any file format.
/// </summary>
public abstract record Datum
{
    private Datum()
    {
    }

    public static Datum None { get; } = new Nothing();

    public static implicit operator Datum(double value) => new Number(value);

    public static implicit operator Datum(int value) => new Number(value);

    public static implicit operator Datum(string value) => new Text(value);

    public static implicit operator Datum(bool value) => new Flag(value);

    public static Datum Of(double? value) => value is { } v ? new Number(v) : None;

    public static Datum Date(DateOnly day) => new Text(day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    public static Datum Moment(DateTimeOffset moment) => new Text(moment.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture));

    public static Datum ListOf(IEnumerable<Datum> items) => new Sequence([.. items]);

    public static Datum ListOf(IEnumerable<double> items) => new Sequence([.. items.Select(v => (Datum)v)]);

    public static Datum Row(params (string Key, Datum Value)[] cells) => new Table([.. cells]);

    public sealed record Number(double Value) : Datum;

    public sealed record Text(string Value) : Datum;

    public sealed record Flag(bool Value) : Datum;

    public sealed record Nothing : Datum;

    public sealed record Sequence(ImmutableArray<Datum> Items) : Datum;

    /// <summary>Keys and values in the order given.</summary>
    public sealed record Table(ImmutableArray<(string Key, Datum Value)> Cells) : Datum
    {
        public Datum? this[string key]
        {
            get
            {
                foreach (var cell in Cells)
                {
                    if (string.Equals(cell.Key, key, StringComparison.Ordinal)) return cell.Value;
                }

                return null;
            }
        }
    }
}
