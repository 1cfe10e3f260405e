namespace Watersown.HouseRules;

public sealed class ProblemWordsTests
{
    private static readonly ImmutableArray<DeclaredProblem> Ours = [.. ProblemWords.In(SourceTree.Product)];

    private static readonly ImmutableArray<DeclaredProblem> Planted = [.. ProblemWords.In([typeof(ProblemWordsTests).Assembly])];

    private static readonly ImmutableArray<TextFile> Tests =
        [.. SourceTree.Under("tests").Where(f => f.Path.EndsWith(".cs", StringComparison.Ordinal) && !f.Path.StartsWith("tests/House.Tests/", StringComparison.Ordinal))];

    [Fact]
    public void The_problems_of_every_project_are_found()
    {
        Assert.Contains(Ours, p => p.Place == "GrowthProblems.HighBelowLow");
        Assert.Contains(Ours, p => p.Place == "RequestProblems.NotJson");
    }

    [Fact]
    public void Every_code_is_used_once() => Breach.None(ProblemWords.SharedCodes(Ours));

    [Fact]
    public void A_planted_second_use_of_a_code_is_reported() => Breach.Found("PLANT-001 is the code of PlantedProblems.First and PlantedProblems.Second", ProblemWords.SharedCodes(Planted));

    [Fact]
    public void Every_code_is_area_and_number() => Breach.None(ProblemWords.OddCodes(Ours));

    [Fact]
    public void A_planted_odd_code_is_reported() => Breach.Found("PlantedProblems.Odd has the code 'plant 3'", ProblemWords.OddCodes(Planted));

    [Fact]
    public void Both_languages_tell_the_same_facts() => Breach.None(ProblemWords.Sentences(Ours));

    [Fact]
    public void Planted_unlike_and_unfinished_sentences_are_reported()
    {
        var found = ProblemWords.Sentences(Planted).ToList();
        Breach.Found("PlantedProblems.First names {limit} {value} in English and {value} in Spanish", found);
        Breach.Found("PlantedProblems.Second is not said in both languages", found);
        Breach.Found("PlantedProblems.Odd does not end like a sentence", found);
    }

    [Fact]
    public void Every_problem_is_provoked_by_a_test() => Breach.None(ProblemWords.Unprovoked(Ours, Tests));

    [Fact]
    public void A_planted_problem_without_a_test_is_reported() => Breach.Found("PlantedProblems.First (PLANT-001) is provoked by no test", ProblemWords.Unprovoked(Planted, Tests));
}
