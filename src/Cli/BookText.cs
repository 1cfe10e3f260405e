using Watersown.Records.Database;
using Watersown.Wording;

namespace Watersown.Cli;

/// <summary>What is in a book, in a line.</summary>
internal static class BookText
{
    public static string Holds(BookCounts counts) =>
        $"{Say.Number(counts.Marks)} marks, {Say.Number(counts.Farms)} versions of the farm, {Say.Number(counts.Plans)} plans, {Say.Number(counts.Photos)} photos, {Say.Number(counts.Accounts)} people.";
}
