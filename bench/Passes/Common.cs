using Watersown.Flight.Laying;
using Watersown.Shapes;

namespace Watersown.Bench;

/// <summary>The aeroplane of all tables.</summary>
internal static class Common
{
    public static PassPace Pace { get; } = new(Length.FromFeet(50), Speed.FromMilesPerHour(120), TimeSpan.FromSeconds(32));

    public static HopperAsk Hopper(PlanePoint strip) => new()
    {
        Rate = SoakedRate.FromPoundsPerAcre(187.5),
        Limit = SoakedSeed.FromPounds(2800),
        Strip = strip,
        Ferry = Speed.FromMilesPerHour(130),
        Turnaround = TimeSpan.FromSeconds(190),
    };
}
