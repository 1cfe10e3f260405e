namespace Watersown;

public sealed class SourcesTests
{
    [Fact]
    public void The_bibliography_lists_the_sources_of_every_topic_file()
    {
        Assert.Contains(Sources.Karney2013, Sources.All);
        Assert.Contains(Sources.CommonPractice, Sources.All);
        Assert.DoesNotContain(null, Sources.All);
        Assert.Equal(Sources.All.Length, Sources.All.Select(s => s.Key).Distinct(StringComparer.Ordinal).Count());
    }
}
