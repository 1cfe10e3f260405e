using Watersown.Flight.Flown;

namespace Watersown.Documents.Tracks;

/// <summary>
/// A drawn line whose times, gate and speeds stand in lists beside its places, before or behind them: all is held until both are there.
/// </summary>
internal sealed class LineParts
{
    /// <summary>Most places of one line.</summary>
    public const int Most = 4_000_000;

    private readonly List<(double Latitude, double Longitude, float Height)> places = [];
    private readonly List<int> begins = [];
    private readonly List<double> times = [];
    private readonly List<GateSign> gates = [];
    private readonly List<float> speeds = [];

    public bool IsEmpty => places.Count == 0;

    public bool TooLong { get; private set; }

    /// <summary>What holds for the whole line.</summary>
    public double Time { get; set; } = double.NaN;

    /// <summary>What holds for the whole line.</summary>
    public GateSign Gate { get; set; }

    /// <summary>What holds for the whole line.</summary>
    public double Speed { get; set; } = double.NaN;

    /// <summary>What holds for the whole line.</summary>
    public double Course { get; set; } = double.NaN;

    /// <summary>What holds for the whole line, where its places tell none.</summary>
    public double Height { get; set; } = double.NaN;

    public void Begin() => begins.Add(places.Count);

    public void Place(double latitude, double longitude, double height)
    {
        if (places.Count < Most) places.Add((latitude, longitude, (float)height));
        else TooLong = true;
    }

    public void Tell(TrackColumn column, ReadOnlySpan<char> said, double number)
    {
        switch (column)
        {
            case TrackColumn.Time when times.Count < Most:
                times.Add(TrackTime.Moment(said));
                break;
            case TrackColumn.Gate when gates.Count < Most:
                gates.Add(TrackWords.Gate(said));
                break;
            case TrackColumn.Speed when speeds.Count < Most:
                speeds.Add((float)number);
                break;
            default:
                break;
        }
    }

    /// <summary>Gives its places, and is empty after.</summary>
    /// <param name="give">Gets each.</param>
    /// <param name="apart">Each piece stands apart from what came before; single places of a row do not.</param>
    public void Give(Action<Fix> give, bool apart)
    {
        var next = 0;
        var starts = false;
        for (var i = 0; i < places.Count; i++)
        {
            for (; next < begins.Count && begins[next] <= i; next++) starts = true;

            // What could not be read was counted when it was met, and only keeps the lists in step.
            if (double.IsNaN(places[i].Latitude) || double.IsNaN(places[i].Longitude)) continue;
            give(new Fix(places[i].Latitude, places[i].Longitude)
            {
                Seconds = times.Count == places.Count ? times[i] : Time,
                Gate = gates.Count == places.Count ? gates[i] : Gate,
                Speed = speeds.Count == places.Count ? speeds[i] : Speed,
                Height = float.IsNaN(places[i].Height) ? Height : places[i].Height,
                Course = Course,
                Begins = apart && starts,
            });
            starts = false;
        }

        Clear();
    }

    public void Clear()
    {
        places.Clear();
        begins.Clear();
        times.Clear();
        gates.Clear();
        speeds.Clear();
        (Time, Gate, Speed, Course, Height) = (double.NaN, GateSign.NotTold, double.NaN, double.NaN, double.NaN);
    }
}
