namespace Watersown.HouseRules;

public sealed class WordsAndLinksTests
{
    private static readonly string[] FlyingWords = ["FlightWords", "FlightScreenWords", "MapWords", "HazardWords", "PatternWords", "StripWords"];

    [Fact]
    public void Links_of_the_documents_lead_somewhere() => Breach.None(Links.Broken(SourceTree.Files.Where(f => f.Path.EndsWith(".md", StringComparison.Ordinal)), Links.OnDisk));

    [Fact]
    public void Planted_dead_links_are_reported_and_live_ones_are_not()
    {
        var found = Links.Broken(
            [new TextFile("docs/guide/planted.md", "[gone](nowhere.md) [up](../../LICENSE) [out](https://example.org/x) [here](#a-heading) [not here](#another)\n# A heading\n`[code](gone.md)`\n")],
            path => path == "docs/guide/planted.md" ? "# A heading\n" : Links.OnDisk(path)).ToList();
        Breach.Found("docs/guide/planted.md links to nowhere.md", found);
        Breach.Found("links to the heading #another", found);
        Assert.Equal(2, found.Count);
    }

    [Fact]
    public void The_names_of_the_glossary_are_those_of_the_code() =>
        Breach.None(Glossary.UnknownNames(SourceTree.Files.First(f => f.Path == "docs/glossary.md"), SourceTree.Product));

    [Fact]
    public void A_planted_name_that_the_code_does_not_have_is_reported() => Assert.Equal(
        "g.md names Fieldd, which the code does not have|g.md names Field.Nett, which the code does not have",
        string.Join('|', Glossary.UnknownNames(new TextFile("g.md", "| field | a field | `Fieldd` |\n| net | acres | `Field.Nett` |\n| gross | acres | `Field.Gross` |\n"), SourceTree.Product)));

    [Fact]
    public void No_interface_stands_before_one_type_alone() => Breach.None(LoneInterfaces.In(SourceTree.Product));

    [Fact]
    public void A_planted_lone_interface_is_reported()
    {
        var found = LoneInterfaces.In([typeof(WordsAndLinksTests).Assembly]).ToList();
        Breach.Found("Watersown.Planted.ILonely is implemented by Watersown.Planted.OnlyOne alone", found);
        Assert.DoesNotContain(found, f => f.Contains("IShared", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_unfinished_and_no_place_of_one_machine_stands_in_the_tree() => Breach.None(ForbiddenWords.InTree(SourceTree.Files));

    [Fact]
    public void Planted_unfinished_work_is_reported()
    {
        var found = ForbiddenWords.InTree([new TextFile("src/Core/Planted.cs", "// fine\n// TO" + "DO later\nvar path = \"/ho" + "me/somebody\";\n")]).ToList();
        Breach.Found("src/Core/Planted.cs:2 says TO" + "DO", found);
        Breach.Found("src/Core/Planted.cs:3 says /ho" + "me/", found);
    }

    [Fact]
    public void Nobody_is_told_what_only_pilot_label_or_county_can_say() => Breach.None(ForbiddenWords.SaidToPeople(
        SourceTree.Under("src").Where(f => f.Path.EndsWith(".cs", StringComparison.Ordinal)).Concat(SourceTree.Under("docs/guide"))));

    [Fact]
    public void No_word_of_flying_says_clear_safe_or_approved_in_either_language() => Breach.None(ForbiddenWords.OfFlying(SourceTree.Under("src/Core/Wording")
        .Where(f => FlyingWords.Any(w => f.Path.Contains("/" + w, StringComparison.Ordinal)))
        .Concat(SourceTree.Under("src/Core/Flight"))));

    [Fact]
    public void Planted_leave_to_fly_is_reported_in_both_languages()
    {
        var found = ForbiddenWords.OfFlying([new TextFile("src/Core/Wording/FlightWords.Planted.cs", "// clear enough\nvar a = \"The air is clear.\";\nvar b = \"Vuelo seguro\";\nvar c = \"unclear\";\nvar d = \"Approved\";\n")]).ToList();
        Assert.Equal("2 says 'clear'|3 says 'seguro'|5 says 'Approved'", string.Join('|', found.Select(f => f.Split(':')[1].Replace(" of flying", string.Empty, StringComparison.Ordinal))));
    }

    [Fact]
    public void Planted_leave_is_reported_in_words_and_not_in_comments()
    {
        var found = ForbiddenWords.SaidToPeople(
        [
            new TextFile("src/Cli/Planted.cs", "// never approved\nvar a = \"It is safe to fly.\";\nvar b = '\"'; // approved\nvar c = \"\"\"\n  Approved.\n  \"\"\";\nvar d = $\"{x} approved\";\n"),
            new TextFile("docs/guide/planted.md", "You may release the water.\n"),
        ]).ToList();
        Assert.Equal(
            "src/Cli/Planted.cs:2 says 'safe to fly' to people|src/Cli/Planted.cs:4 says 'approved' to people|src/Cli/Planted.cs:7 says 'approved' to people|docs/guide/planted.md:1 says 'may release' to people",
            string.Join('|', found));
    }
}
