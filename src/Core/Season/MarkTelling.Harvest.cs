namespace Watersown.Season;

public sealed partial class MarkTelling
{
    private string? Harvest(MarkFact fact) => fact switch
    {
        HarvestMeansTold f => Joined(
            tell.Words.Harvest.MarkMeans,
            f.Combines is { } combines ? Fill(tell.Words.Harvest.CombinesAre, ("n", Count(combines))) : null,
            f.EachDay is { } each ? Fill(tell.Words.Harvest.EachIs, ("land", tell.Land(each))) : null,
            f.Sets is { } sets ? Fill(tell.Words.Harvest.SetsAre, ("n", Count(sets))) : null,
            f.SetWeight is { } set ? Fill(tell.Words.Harvest.SetIs, ("weight", tell.Weight(set))) : null,
            f.Expected is { } grain ? Fill(tell.Words.Harvest.ExpectedIs, ("grain", tell.Grain(grain))) : null,
            f.CutFrom is { } from ? Fill(tell.Words.Harvest.CutFromIs, ("moisture", Share(from))) : null,
            f.CutTo is { } to ? Fill(tell.Words.Harvest.CutToIs, ("moisture", Share(to))) : null),
        DryerRoomGiven f => Joined(Fill(tell.Words.Harvest.MarkRoom, ("n", Count(f.Sets)), ("from", tell.ShortDay(f.From)), ("until", tell.ShortDay(f.Until))), f.Dryer, f.Variety),
        MoistureSampled f => Fill(tell.Words.Harvest.MarkMoisture, ("moisture", Share(f.Moisture))),
        CropLodged f => f.Lies ? tell.Words.Harvest.MarkLies : tell.Words.Harvest.MarkStands,
        BoardsOut => tell.Words.Harvest.MarkBoardsOut,
        FieldCut { Land: { } land } => Fill(tell.Words.Harvest.MarkCutLand, ("land", tell.Land(land))),
        FieldCut => tell.Words.Harvest.MarkCut,
        GrainTicketed f => Joined(
            Fill(tell.Words.Harvest.MarkTicket, ("number", f.Number), ("weight", tell.Weight(f.Net)), ("moisture", Share(f.Moisture))),
            f.Variety, f.Dryer, f.Parts.Count > 1 ? string.Join(" + ", f.Parts.Select(p => p.Field + " " + Share(p.Share))) : null),
        CropShareTold f => Fill(tell.Words.Harvest.MarkShare, ("landlord", f.Landlord), ("share", Share(f.Share))),
        _ => null,
    };

    private static string Share(Fraction share) => Wording.Say.Figure(share.Percent) + " %";
}
