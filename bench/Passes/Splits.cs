using Watersown.Flight.Laying;
using Watersown.Shapes;

namespace Watersown.Bench;

/// <summary>Two hundred passes shared out over loads.</summary>
internal static class Splits
{
    private const int Many = 200;

    public static void Measure()
    {
        Console.WriteLine();
        Console.WriteLine($"{Many} passes of a field that widens from 200 to 1,500 m, 2,800 lb a load, strip 1.5 miles off");
        Measured.Row("what", "best, µs", "median, µs", "loads", "ferry, min", "ferry, turnaround and turns, min");
        Measured.Row("---", "---:", "---:", "---:", "---:", "---:");
        ImmutableArray<FlownLine> lines = [.. Enumerable.Range(1, Many).Select(Line)];
        var hopper = Common.Hopper(new PlanePoint(-1700, -1700));
        var pace = new LoadPace { Limit = hopper.Limit, Strip = hopper.Strip, Ferry = hopper.Ferry, Turnaround = hopper.Turnaround, Passes = Common.Pace };
        Say("filled up in the order flown", () => LoadSplitting.FilledUp(lines, pace)!);
        Say("LoadSplitting.Whole", () => LoadSplitting.Whole(lines, pace)!);
    }

    private static FlownLine Line(int number)
    {
        var (right, length) = (number * 15.24, 200 + (1300.0 * number / Many));
        var open = Length.FromMeters(length);
        return new FlownLine(number, new PlanePoint(right, 0), new PlanePoint(right, length), open, Common.Hopper(default).Rate * (open * Common.Pace.Swath));
    }

    private static void Say(string what, Func<LoadSplit> split)
    {
        var (best, median) = Measured.Time(() => split());
        var found = split();
        Measured.Row(what, Measured.Figure(best.TotalMicroseconds, "0.0"), Measured.Figure(median.TotalMicroseconds, "0.0"), Measured.Figure(found.Loads.Length, "0"), Measured.Figure(found.Ferry.TotalMinutes, "0.0"), Measured.Figure(found.Time.TotalMinutes, "0.0"));
    }
}
