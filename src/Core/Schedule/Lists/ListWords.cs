namespace Watersown.Schedule.Lists;

/// <summary>What the columns of a list are called.</summary>
public static class ListWords
{
    /// <summary>For people: what a meaning is called.</summary>
    public static string Called(ListColumn meaning) => meaning switch
    {
        ListColumn.Name => "the name",
        ListColumn.Code => "the short code",
        ListColumn.Net => "net acres",
        ListColumn.Gross => "gross acres",
        ListColumn.Certified => "certified acres",
        ListColumn.Checks => "checks",
        ListColumn.Rate => "lb of dry seed an acre",
        ListColumn.DryPounds => "lb of dry seed for the field",
        ListColumn.Variety => "the variety",
        ListColumn.Stage => "how far it has come",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
