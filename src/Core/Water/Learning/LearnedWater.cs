namespace Watersown.Water.Learning;

/// <summary>What marks have taught of a field, with the count behind it.</summary>
/// <param name="Figures">As they stand after its newest flood.</param>
/// <param name="Fill">Water to wet and cover it.</param>
/// <param name="Seepage">Lost down and sideways.</param>
/// <param name="Marks">How many marks it rests on; those that do not agree with the rest are not among them.</param>
/// <param name="Floods">How many floods they are of.</param>
/// <param name="Newest">When the newest of them happened.</param>
public sealed record LearnedWater(FloodFigures Figures, Likely<WaterDepth> Fill, Likely<DepthRate> Seepage, int Marks, int Floods, DateTimeOffset Newest);
