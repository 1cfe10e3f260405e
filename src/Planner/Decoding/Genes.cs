namespace Watersown.Planner.Decoding;

/// <summary>The choices a list-made plan follows: who goes first, and how a shared cap is split.</summary>
/// <param name="Order">Field indices, first served first, for ground and water.</param>
/// <param name="Splits">For each joint cap: the share of each of its sources, in its order; shares sum to one.</param>
/// <param name="Haste">How much a slow fill is shunned: 0 takes the earliest end, more waits for a fuller flow.</param>
internal sealed record Genes(ImmutableArray<int> Order, ImmutableArray<ImmutableArray<double>> Splits, double Haste);
