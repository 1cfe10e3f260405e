using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>Every sheet of the hand-laid morning in both languages, for the tests of both back ends.</summary>
internal static class PrintedPages
{
    private static readonly DateOnly Friday = new(2026, 5, 8);

    public static SeasonPlan Plan { get; } = PlannedMorning.Plan();

    public static ImmutableArray<SheetPage> All { get; } =
    [
        .. new[] { Language.English, Language.Spanish }.SelectMany(l => SheetSet.Of(Plan, new SheetChoice { Language = l }).Value.Pages),
    ];

    public static FittedSheet Fitted(string key) => Fitter.Fit(All.Single(p => p.Key == key));

    public static SheetPage Water(int noSpill)
    {
        var state = Plan.State;
        var held = Plan with { State = state with { Fields = [.. state.Fields.Select((f, i) => f with { NoSpill = i < noSpill })] } };
        return WaterPage.Of(held, WaterSheets.Of(held, Friday, null), Language.English);
    }

    /// <summary>What a fitted sheet says, with its heading, each page in turn.</summary>
    public static IEnumerable<Block> Blocks(FittedSheet sheet) => sheet.Pages.SelectMany(p => p).SelectMany(Open);

    private static IEnumerable<Block> Open(Block block) => block is Block.Side side ? side.Left.Concat(side.Right).SelectMany(Open) : [block];
}
