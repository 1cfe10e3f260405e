namespace Watersown.Pocket.Keeping;

/// <summary>Names of the papers that a device keeps.</summary>
internal static class Papers
{
    public const string Settings = "settings";

    /// <summary>Name of the device.</summary>
    public const string Device = "device";

    public const string Farm = "farm";

    public const string FarmVersion = "farm-version";

    public const string Plan = "plan";

    public const string PlanNumber = "plan-number";

    /// <summary>Numbers of the plans that are kept whole.</summary>
    public const string KeptPlans = "kept-plans";

    /// <summary>The list of plans as the host last told it.</summary>
    public const string Plans = "plans";

    /// <summary>When it did.</summary>
    public const string PlansHeard = "plans-heard";

    /// <summary>A plan kept whole under its number.</summary>
    public static string PlanOf(int number) => "plan-" + number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Number of the last mark that the host told of.</summary>
    public const string Upto = "upto";

    /// <summary>Name of the host's book.</summary>
    public const string Book = "book";

    /// <summary>Whom the host takes us for.</summary>
    public const string Name = "name";

    public const string Role = "role";

    /// <summary>Where map tiles come from, where the farm has set a source.</summary>
    public const string Tiles = "tiles";

    /// <summary>A list of fields that was pasted and is no farm yet.</summary>
    public const string List = "list";

    /// <summary>When the host last answered.</summary>
    public const string Heard = "heard";

    /// <summary>How far this device's clock is behind the host's, in seconds.</summary>
    public const string Skew = "skew";
}
