using System.Reflection;

namespace Watersown.HouseRules;

public sealed class DirectionTests
{
    private static readonly Assembly Here = typeof(DirectionTests).Assembly;

    [Fact]
    public void Capabilities_use_only_those_to_their_left() =>
        Breach.None(CapabilityOrder.Breaches(SourceTree.Core, "Watersown", "Watersown.Reckon.Reckonings"));

    [Fact]
    public void A_planted_use_to_the_right_is_reported()
    {
        var found = CapabilityOrder.Breaches(Here, "Watersown.Planted", "none").ToList();
        Breach.Found("Watersown.Planted.Land.LooksRight uses a capability to the right of Land", found);
        Breach.Found("Watersown.Planted.Wording.KnowsAFarm is a tool and uses a capability", found);
        Assert.DoesNotContain(found, f => f.StartsWith("Watersown.Planted.Season", StringComparison.Ordinal));
    }

    [Fact]
    public void Core_refers_to_nothing_that_reads_writes_waits_or_chances() => Breach.None(TypeReferences.Breaches(SourceTree.Core, TypeReferences.Impure));

    [Fact]
    public void A_planted_file_access_is_reported() => Breach.Found("refers to System.IO.File", TypeReferences.Breaches(Here, TypeReferences.Impure));

    [Fact]
    public void Projects_refer_as_the_house_plan_lets_them() =>
        Breach.None(ProjectDirections.Breaches(SourceTree.Under("src").Where(f => f.Path.EndsWith(".csproj", StringComparison.Ordinal))));

    [Fact]
    public void A_planted_project_reference_is_reported()
    {
        var found = ProjectDirections.Breaches(
        [
            new TextFile("src/Core/Core.csproj", """<Project><ItemGroup><ProjectReference Include="../Records/Records.csproj" /></ItemGroup></Project>"""),
            new TextFile("src/Helpers/Helpers.csproj", "<Project />"),
        ]).ToList();
        Breach.Found("src/Core/Core.csproj refers to Records", found);
        Breach.Found("src/Helpers/Helpers.csproj is a project that the house plan does not know", found);
    }

    [Fact]
    public void A_package_is_touched_in_its_room_only() => Breach.None(PackageRooms.Breaches(SourceTree.Product, PackageRooms.Rooms));

    [Fact]
    public void A_planted_use_of_a_package_elsewhere_is_reported() =>
        Breach.Found("Watersown.HouseRules.CapabilityOrder uses NetArchTest", PackageRooms.Breaches([Here], [("NetArchTest", "Watersown.Shapes")]));
}
