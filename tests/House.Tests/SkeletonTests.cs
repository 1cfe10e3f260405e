namespace Watersown;

public sealed class SkeletonTests
{
    [Fact]
    public void The_bibliography_is_not_empty() => Assert.NotEmpty(Sources.All);
}
