using Watersown.Reckon;

namespace Watersown.HouseRules;

public sealed class WrittenDocumentsTests
{
    [Fact]
    public void The_list_of_problems_is_in_step() => InStep("docs/problems.md", WrittenDocuments.Problems(ProblemWords.In(SourceTree.Product)));

    [Fact]
    public void The_bibliography_is_in_step() => InStep("docs/sources.md", WrittenDocuments.Bibliography(Sources.All));

    [Fact]
    public void The_formulas_are_in_step() => InStep("docs/formulas.md", WrittenDocuments.Formulas(Reckonings.All, SourceTree.Product));

    [Fact]
    public void Every_problem_code_is_documented()
    {
        var text = WrittenDocuments.Problems(ProblemWords.In(SourceTree.Product));
        Assert.All(ProblemWords.In(SourceTree.Product), p => Assert.Contains("| " + p.Kind.Code + " |", text, StringComparison.Ordinal));
    }

    [Fact]
    public void Planted_new_code_puts_a_document_out_of_step()
    {
        var before = WrittenDocuments.Problems(ProblemWords.In(SourceTree.Product));
        var after = WrittenDocuments.Problems(ProblemWords.In([.. SourceTree.Product, typeof(WrittenDocumentsTests).Assembly]));
        Assert.Equal("| PLANT-001 | refuse | {value} is above {limit}. Give less. | {value} es demasiado. Dé menos. |", FirstNew(before, after));
    }

    private static void InStep(string path, string now)
    {
        var file = Path.Combine(SourceTree.Root, path);
        if (Environment.GetEnvironmentVariable("UPDATE_DOCS") == "1") File.WriteAllText(file, now);
        var kept = File.Exists(file) ? File.ReadAllText(file) : string.Empty;
        Assert.True(kept == now, path + " is behind the code. Run script/test with UPDATE_DOCS=1 and keep what it writes. First line that differs:\n" + FirstNew(kept, now));
    }

    private static string FirstNew(string before, string after)
    {
        var there = before.Split('\n').ToHashSet(StringComparer.Ordinal);
        return after.Split('\n').FirstOrDefault(l => !there.Contains(l) && !l.StartsWith('#')) ?? "(a line is gone)";
    }
}
