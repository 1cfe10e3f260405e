namespace Watersown.Water.Filling;

/// <summary>How fields that could take water at the same time get it.</summary>
public enum FillingWay
{
    /// <summary>All at once, by the land that each has still dry.</summary>
    SideBySide,

    /// <summary>The first gets all that its gate passes, the next what is left.</summary>
    OneAfterAnother,
}

/// <summary>What a source gives from a moment on, and what is taken up of it, until the next such moment.</summary>
/// <param name="From">Since the start.</param>
/// <param name="Gives">What it gives.</param>
/// <param name="Takes">What wet ground and filling fields take up; above <paramref name="Gives"/> where holding alone is short.</param>
public readonly record struct FlowSpan(TimeSpan From, FlowRate Gives, FlowRate Takes)
{
    /// <summary>What nothing takes up; below zero, what holding is short of.</summary>
    public FlowRate Over => Gives - Takes;
}
