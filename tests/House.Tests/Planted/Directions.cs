// Violations on purpose: the direction rules must report each of these.
namespace Watersown.Planted.Season
{
    internal static class Closing
    {
        public static int Year => 2026;

        // To the left, as it should be: must not be reported.
        public static string Name => Land.LooksRight.Name;
    }
}

namespace Watersown.Planted.Land
{
    internal static class LooksRight
    {
        public static string Name => "planted";

        // Inside a body only, where plain reflection sees nothing.
        public static bool IsOld(int year) => year < Season.Closing.Year;
    }
}

namespace Watersown.Planted.Wording
{
    internal static class KnowsAFarm
    {
        public static string Say() => Land.LooksRight.Name;
    }
}
