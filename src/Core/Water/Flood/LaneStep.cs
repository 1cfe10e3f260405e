using Lanes = System.Runtime.Intrinsics.Vector512<float>;

namespace Watersown.Water.Flood;

/// <summary>One step of one check of sixteen fields: what is held at its two ends and how fast it grows there, m and m/s.</summary>
internal readonly struct LaneStep(double from, double to, Lanes before, Lanes slopeBefore, Lanes after, Lanes slopeAfter)
{
    private const int Tries = 30;

    /// <summary>When the pond came to a level, s: on the cubic through both ends, by false positions.</summary>
    public double Find(int lane, double level, LaneGround ground)
    {
        double low = 0, high = 1, under = ground.Pond(before[lane]) - level, over = ground.Pond(after[lane]) - level;
        if (under >= 0) return from;
        var side = 0;
        for (var i = 0; i < Tries && high - low > 1e-7; i++)
        {
            var share = low + ((high - low) * (-under / (over - under)));
            var there = ground.Pond(Held(lane, share)) - level;
            // An end that stays twice counts for half: else it might stay for good.
            if (there < 0)
            {
                (low, under) = (share, there);
                if (side < 0) over /= 2;
                side = -1;
            }
            else
            {
                (high, over) = (share, there);
                if (side > 0) under /= 2;
                side = 1;
            }

            if (there == 0) break;
        }

        return from + (high * (to - from));
    }

    // Hermite's cubic: values and rates at both ends.
    private double Held(int lane, double share)
    {
        double s = share, t = 1 - share, seconds = to - from;
        return (t * t * (1 + (2 * s)) * before[lane]) + (s * s * (1 + (2 * t)) * after[lane]) + (s * t * seconds * ((t * slopeBefore[lane]) - (s * slopeAfter[lane])));
    }
}

/// <summary>Ground under what one check holds; what is held itself where it drinks nothing.</summary>
internal readonly struct LaneGround(in LaneCheck check, int lane)
{
    private readonly double takeUp = check.TakeUp[lane];
    private readonly double perFull = check.PerFull[lane];
    private readonly double covered = check.Covered[lane];

    /// <summary>Pond over the ground, m, both spread over the check.</summary>
    public double Pond(double held) => Math.Max(0, held - (takeUp * Math.Max(covered, Math.Min(1, held * perFull))));
}
