using Watersown.Schedule;
using Watersown.Season;
using Watersown.Season.Filling;
using Watersown.Water.Flood;

namespace Watersown.Bench;

/// <summary>The same works for this machine and for its browser: floods as a phone reckons them, and a general solver beside.</summary>
internal static class Works
{
    private const int Futures = 64;
    private static readonly FloodOptions quiet = new() { Telling = TimeSpan.Zero };

    /// <summary>Each work with its name, and into how many parts its time is divided.</summary>
    public static ImmutableArray<(string Name, int Parts, Action Work)> Of(SeasonState state)
    {
        var (drowned, dry, sheets, futures) = (Cases.Drowned(), Cases.Dry(), Cases.Sheets(), Cases.Futures(Futures));
        var (measured, usual) = (MayFields.Of(state, asMeasured: true), MayFields.Of(state, asMeasured: false));
        var book = SeasonFold.Fold(state, Logbook.Empty, state.Now);
        var field = state.Farm.Fields.First(f => state.Season(f.Code).Stage == FieldStage.Flooding);
        return
        [
            ("20 checks drowned, 96 h: MathNet RK4, 60 s", 1, () => GeneralStep.Depths(drowned, 96, 60)),
            ("20 checks drowned, 96 h: Flooding.Run", 1, () => Flooding.Run(drowned, Cases.Span, quiet)),
            ($"20 checks drowned, 96 h: FloodBatch, {Futures} futures, a field", Futures, () => FloodBatch.Run(drowned, futures, Cases.Span)),
            ("20 checks dry, 96 h: MathNet RK4, 60 s", 1, () => GeneralStep.Depths(dry, 96, 60)),
            ("20 checks dry, 96 h: Flooding.Run", 1, () => Flooding.Run(dry, Cases.Span, quiet)),
            ($"20 checks dry, 96 h: FloodBatch, {Futures} futures, a field", Futures, () => FloodBatch.Run(dry, futures, Cases.Span)),
            ("20 checks dry, thin sheets over wide boards, 96 h: MathNet RK4, 20 s", 1, () => GeneralStep.Depths(sheets, 96, 20)),
            ("20 checks dry, thin sheets over wide boards, 96 h: Flooding.Run", 1, () => Flooding.Run(sheets, Cases.Span, quiet)),
            ($"{measured.Length} fields over May, boards as measured: Flooding.Run", 1, () => Each(measured)),
            ($"{measured.Length} fields over May, boards as measured: FloodBatch", 1, () => FloodBatch.Run(measured, MayFields.Span)),
            ($"{usual.Length} fields over May, boards that nobody has told of: Flooding.Run", 1, () => Each(usual)),
            ($"what the page of a filling field asks, {field.Code}: FillScenes.Of", 1, () => FillScenes.Of(book, null, field)),
        ];
    }

    private static void Each(ImmutableArray<FloodNetwork> networks)
    {
        foreach (var network in networks) Flooding.Run(network, MayFields.Span, quiet);
    }
}
