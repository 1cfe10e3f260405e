namespace Watersown.Pocket.Land;

/// <summary>Figures of the land table, without the unit that stands in its head.</summary>
internal static class LandNumbers
{
    public static string Land(Area land, Desk desk) => Bare(desk.Telling.Land(land));

    /// <summary>The figure in front of its unit.</summary>
    public static string Bare(string said) => said.Split(' ')[0];
}
