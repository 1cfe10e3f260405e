namespace Watersown.HouseRules;

public sealed class TidinessTests
{
    [Fact]
    public void No_file_is_longer_than_can_be_read_at_a_sitting() => Breach.None(Tidiness.LongFiles(SourceTree.Files));

    [Fact]
    public void A_planted_long_file_is_reported() =>
        Breach.Found("src/Core/Long.cs has 401 lines", Tidiness.LongFiles([new TextFile("src/Core/Long.cs", new string('\n', 400)), new TextFile("src/Core/Short.cs", new string('\n', 399))]));

    [Fact]
    public void No_folder_is_named_for_a_pattern() => Breach.None(Tidiness.NamelessFolders(SourceTree.Files));

    [Fact]
    public void A_planted_nameless_folder_is_reported() => Breach.Found("in a folder called Helpers", Tidiness.NamelessFolders([new TextFile("src/Core/Helpers/Thing.cs", string.Empty)]));

    [Fact]
    public void Every_folder_of_core_is_a_capability_or_a_tool() => Breach.None(Tidiness.UnknownCoreFolders(SourceTree.Files));

    [Fact]
    public void A_planted_folder_of_core_is_reported() =>
        Breach.Found("src/Core/Engine/Run.cs lies in a folder of Core", Tidiness.UnknownCoreFolders([new TextFile("src/Core/Engine/Run.cs", string.Empty), new TextFile("src/Core/Problem.cs", string.Empty)]));

    [Fact]
    public void A_namespace_of_core_follows_its_folder() => Breach.None(Tidiness.StrayNamespaces(SourceTree.Files));

    [Fact]
    public void A_planted_stray_namespace_is_reported() =>
        Breach.Found("src/Core/Land/Field.cs says 'namespace Watersown.Season;'", Tidiness.StrayNamespaces([new TextFile("src/Core/Land/Field.cs", "namespace Watersown.Season;\n")]));
}
