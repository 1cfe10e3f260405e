using Watersown.Shapes;

namespace Watersown.Flight.Cover;

/// <summary>A place in the field with little or no seed, to walk to.</summary>
/// <param name="Rank">1 for the largest.</param>
/// <param name="Area">Its bare or thin ground, without what lies between pieces of it.</param>
/// <param name="Middle">Its center of mass.</param>
/// <param name="At">The nearest to that which is bare or thin itself: where to stand.</param>
/// <param name="Heading">The way the nearest pass runs, as an axis: 0 up to but not including 180.</param>
/// <param name="Long">Extent along that.</param>
/// <param name="Wide">Extent across it.</param>
/// <param name="NearestRuns">The two runs that pass nearest, the nearest first, counted from 0 in the order given; one where there is but one.</param>
public sealed record ThinPlace(int Rank, Area Area, PlanePoint Middle, PlanePoint At, Bearing Heading, Length Long, Length Wide, ImmutableArray<int> NearestRuns);
