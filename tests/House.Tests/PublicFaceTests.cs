using System.Reflection;

namespace Watersown.HouseRules;

public sealed class PublicFaceTests
{
    private static readonly Assembly Here = typeof(PublicFaceTests).Assembly;

    private static readonly ImmutableArray<string> Keys = [.. Sources.All.Select(s => s.Key)];

    [Fact]
    public void Core_shows_no_bare_number_without_saying_why() => Breach.None(PublicFace.BareNumbers(SourceTree.Core, "Watersown"));

    [Fact]
    public void Planted_bare_numbers_are_reported_and_explained_ones_are_not()
    {
        var found = PublicFace.BareNumbers(Here, "Watersown.Planted.Water").ToList();
        Breach.Found("Pumping.Lift(head)", found);
        Breach.Found("Pumping.Lift returns", found);
        Breach.Found("Pumping.Depths returns", found);
        Breach.Found("PumpRecord.Power is a bare number", found);
        Assert.DoesNotContain(found, f => f.Contains("Efficiency", StringComparison.OrdinalIgnoreCase) || f.Contains("Ratio", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_in_core_can_be_changed_after_it_is_made() => Breach.None(PublicFace.Changeable(SourceTree.Core, "Watersown"));

    [Fact]
    public void A_planted_settable_property_is_reported()
    {
        var found = PublicFace.Changeable(Here, "Watersown.Planted.Water").ToList();
        Breach.Found("PumpRecord.Running can be changed", found);
        Breach.Found("PumpRecord.Hours can be changed", found);
        Assert.DoesNotContain(found, f => f.Contains("Efficiency", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_calculator_names_its_source() => Breach.None(Sourced.Unsourced(SourceTree.Core, "Watersown"));

    [Fact]
    public void Every_exception_is_still_needed() => Breach.None(Sourced.StaleExceptions(SourceTree.Core, "Watersown"));

    [Fact]
    public void Planted_calculators_without_a_source_are_reported_and_sourced_ones_are_not()
    {
        var found = Sourced.Unsourced(Here, "Watersown.Planted").ToList();
        Breach.Found("Pumping.Lift has no [Source]", found);
        Breach.Found("Pumping.Flow has no [Source]", found);
        Breach.Found("Pumping.Record has no [Source]", found);
        Assert.DoesNotContain(found, f => f.Contains("Pumping.Sourced", StringComparison.Ordinal) || f.Contains("Pumping.Words", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_source_that_is_named_is_in_the_bibliography() => Breach.None(SourceTree.Product.SelectMany(a => Sourced.UnknownKeys(a, Keys)));

    [Fact]
    public void Every_entry_of_the_bibliography_is_named_by_the_code() =>
        Breach.None(Sourced.Unused(Keys, SourceTree.Under("src").Where(f => f.Path.EndsWith(".cs", StringComparison.Ordinal))));

    [Fact]
    public void A_planted_entry_that_nobody_names_is_reported() =>
        Assert.Equal("Old1900 is in the bibliography and no code names it", Assert.Single(Sourced.Unused(["Old1900", "New2000"], [new TextFile("src/Core/Water/Box.cs", "[Source(nameof(Sources.New2000))] // Sources.Old1900b")])));

    [Fact]
    public void A_planted_unknown_source_is_reported() => Breach.Found("Pumping.Sourced names the source NobodyWroteThis", Sourced.UnknownKeys(Here, Keys));
}
