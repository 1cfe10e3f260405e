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

    /// <summary>Number of the last mark that the host told of.</summary>
    public const string Upto = "upto";

    /// <summary>Whom the host takes us for.</summary>
    public const string Name = "name";

    public const string Role = "role";

    /// <summary>When the host last answered.</summary>
    public const string Heard = "heard";

    /// <summary>How far this device's clock is behind the host's, in seconds.</summary>
    public const string Skew = "skew";
}
