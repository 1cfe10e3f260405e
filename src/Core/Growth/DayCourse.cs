using System.Diagnostics;

namespace Watersown.Growth;

/// <summary>
/// The shapes a day's temperature may be drawn in: degree-days above a threshold, and the share of the day spent above
/// it. Every method and every cutoff is put together from these two.
/// </summary>
internal static class DayCourse
{
    // Notation after the leaflet: mn, mx lowest and highest, t threshold (any one scale), m = (mx + mn) / 2, w = (mx - mn) / 2.

    /// <summary>Degree-days above <paramref name="t"/> in one day of this course.</summary>
    public static double Above(WarmthMethod method, double mn, double mx, double t)
    {
        var m = (mx + mn) / 2;
        if (method == WarmthMethod.Simple) return Math.Max(0, m - t);
        if (mx <= t) return 0;
        if (mn >= t) return m - t;
        return method switch
        {
            WarmthMethod.SimpleFloored => (mx - t) / 2,
            WarmthMethod.SingleTriangle or WarmthMethod.DoubleTriangle => (mx - t) * (mx - t) / (2 * (mx - mn)),
            WarmthMethod.SingleSine or WarmthMethod.DoubleSine => SineAbove(m, (mx - mn) / 2, t),
            WarmthMethod.Simple or _ => throw new UnreachableException(),
        };
    }

    /// <summary>Share of the day that is warmer than <paramref name="t"/>.</summary>
    public static double TimeAbove(WarmthMethod method, double mn, double mx, double t)
    {
        var m = (mx + mn) / 2;
        if (method == WarmthMethod.Simple) return m > t ? 1 : 0;
        if (mx <= t) return 0;
        if (mn >= t) return 1;
        return method switch
        {
            WarmthMethod.SimpleFloored => 0.5,
            WarmthMethod.SingleTriangle or WarmthMethod.DoubleTriangle => (mx - t) / (mx - mn),
            WarmthMethod.SingleSine or WarmthMethod.DoubleSine => 0.5 - (Math.Asin(Reach(m, (mx - mn) / 2, t)) / Math.PI),
            WarmthMethod.Simple or _ => throw new UnreachableException(),
        };
    }

    private static double SineAbove(double m, double w, double t)
    {
        var theta = Math.Asin(Reach(m, w, t));
        return (((m - t) * ((Math.PI / 2) - theta)) + (w * Math.Cos(theta))) / Math.PI;
    }

    // How far up the course the threshold cuts it; a day of hardly any width may round past the ends.
    private static double Reach(double m, double w, double t) => Math.Clamp((t - m) / w, -1, 1);
}
