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

    /// <summary>The same for people who read Spanish.</summary>
    public static string CalledSpanish(ListColumn meaning) => meaning switch
    {
        ListColumn.Name => "el nombre",
        ListColumn.Code => "la clave corta",
        ListColumn.Net => "acres netos",
        ListColumn.Gross => "acres brutos",
        ListColumn.Certified => "acres certificados",
        ListColumn.Checks => "melgas",
        ListColumn.Rate => "lb de semilla seca por acre",
        ListColumn.DryPounds => "lb de semilla seca del lote",
        ListColumn.Variety => "la variedad",
        ListColumn.Stage => "qué tan adelantado va",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
