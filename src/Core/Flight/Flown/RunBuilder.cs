using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>Puts runs together out of stretches of a track.</summary>
internal sealed class RunBuilder
{
    private readonly List<FlownRun> runs = [];
    private readonly ImmutableArray<PlanePoint>.Builder line = ImmutableArray.CreateBuilder<PlanePoint>();
    private double began;
    private double ended;

    public bool IsOpen => line.Count > 0;

    public ImmutableArray<FlownRun> Runs
    {
        get
        {
            Close();
            return [.. runs];
        }
    }

    /// <summary>Goes on to a place, or begins there.</summary>
    public void To(PlanePoint at, double seconds)
    {
        if (line.Count == 0) began = seconds;
        else if (line[^1] == at) return;
        line.Add(at);
        ended = seconds;
    }

    /// <summary>Ends the run, where there is one. A single place is no run.</summary>
    public void Close()
    {
        if (line.Count > 1) runs.Add(new FlownRun(line.ToImmutable(), began, ended));
        line.Clear();
    }
}
