using Watersown.Land;
using Watersown.Schedule;
using Watersown.Water.Learning;
using Watersown.Wording;

namespace Watersown.Season.Learning;

/// <summary>The lines behind what a field has learned: what was held true, what was seen, and what follows.</summary>
internal static class LearningWorking
{
    private static readonly Citation Method = Sources.SeberWild1989.At("Gauss-Newton; ends from the curvature at the best figures");

    public static Working Of(SeasonState state, FieldLearning told, FloodCase asked)
    {
        var fitted = told.Newest;
        var working = Working.Empty
            .Given("Vf", "the farm's fill", told.Farm.Fill.Feet, "ft", SoilSaid(state, told.Field))
            .Given("V0", "fill held true before this flood", asked.Before.Fill.Feet, "ft", asked.Before == told.Farm ? "the farm's" : "floods before", told.Learned is { Floods: > 1 } ? told.Start : null)
            .Given("P0", "seepage held true before", asked.Before.Seepage.InchesPerDay, "in/day", asked.Before == told.Farm ? "the farm's" : "floods before")
            .Given("E", "lost to the air", asked.Evaporation.InchesPerDay, "in/day", "farm")
            .Given("Q", "water told to come at the start", asked.Network.Inlets.Sum(i => i.Flow.IsEmpty ? 0 : i.Flow[0].Flow.CubicFeetPerSecond), "cfs", "source " + told.Field.Sources[0] + ", less what holding other land takes", told.Start);
        for (var i = 0; i < told.Marks.Length; i++)
        {
            var (mark, verdict) = (told.Marks[i].Mark, told.Marks[i].Verdict);
            working = working.Given("s" + Say.Number(i + 1), Said(told.Field, verdict.Sighting) + Against(verdict), Value(verdict.Sighting, mark, state.Offset), Unit(verdict.Sighting), mark.By, mark.Happened);
        }

        working = working
            .Step("V", "fill as farm and marks have it together", fitted.Fill.Middle.Feet, "ft", "least Σ w (seen − worked out)² / spread² + Σ (ln figure − ln before)² / spread²", Method)
            .Step("V−", "hardly less, in nine cases of ten", fitted.Fill.Low.Feet, "ft", "V exp(−1.645 spread of ln V)", Method)
            .Step("V+", "hardly more", fitted.Fill.High.Feet, "ft", "V exp(1.645 spread of ln V)", Method)
            .Step("P", "seepage", fitted.Seepage.Middle.InchesPerDay, "in/day", "as V; ends " + Say.Number(fitted.Seepage.Low.InchesPerDay, 2) + " and " + Say.Number(fitted.Seepage.High.InchesPerDay, 2), Method)
            .Step("g", "water that comes over what was told", fitted.Inflow.Middle, string.Empty, "as V; ends " + Say.Number(fitted.Inflow.Low, 2) + " and " + Say.Number(fitted.Inflow.High, 2), Method)
            .Step("w", "weight of a mark r spreads off", "1 up to one spread", string.Empty, "(4 + 1) / (4 + r²) beyond", Sources.LangeLittleTaylor1989);
        return told.Full is { } full ? working.Then(Finish(full)) : working;
    }

    private static Working Finish(MomentRange full) => Working.Empty
        .Step("T", "all of it full", When.Moment(full.Middle), string.Empty, "check by check V dA/dt = g S − (E + P) A, from first water", Sources.WaterBalance)
        .Step("T−", "hardly sooner, in nine cases of ten", When.Moment(full.Low), string.Empty, "T at the likeliest figures that lead so far, and 3 % of its time", Method)
        .Step("T+", "hardly later", full.High is { } high ? When.Moment(high) : Datum.None, string.Empty, full.High is null ? "never: the water that may come hardly holds the ground" : "as T−", Method);

    private static string SoilSaid(SeasonState state, Field field) => state.Farm.SoilOf(field) is { } soil ? "soil " + soil.Code : "soil not told: a usual clay";

    private static string Said(Field field, FloodSighting seen)
    {
        var check = seen.Check is { } place && !field.Basins.IsEmpty ? "check " + Say.Number(field.Basins.OrderBy(b => b.Number).ElementAt(place).Number) : "the field";
        return seen.Kind switch
        {
            SightingKind.Wet => check + " wet",
            SightingKind.StillDry => check + " still dry",
            SightingKind.Full => check + " full",
            SightingKind.Depth => "at the stick, " + check,
            SightingKind.Drop => "fell with no water coming, " + check + ", in " + When.Span(seen.Over),
            SightingKind.Flow => "read at the source",
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static string Against(SightingVerdict verdict) => verdict.Sighting.Kind == SightingKind.Flow
        ? string.Empty
        : "; " + Say.Signed(verdict.Off, 1) + " spreads off" + (verdict.Disagrees ? ", does not agree with the rest and counts " + Say.Number(verdict.Weight.Percent) + " %" : string.Empty);

    private static Datum Value(FloodSighting seen, Mark mark, TimeSpan offset) => seen.Kind switch
    {
        SightingKind.Depth or SightingKind.Drop => seen.Depth.Inches,
        SightingKind.Flow => ((FlowSeen)mark.Fact).Flow.CubicFeetPerSecond,
        _ => When.Moment(mark.Happened.ToOffset(offset)),
    };

    private static string Unit(FloodSighting seen) => seen.Kind switch
    {
        SightingKind.Depth or SightingKind.Drop => "in",
        SightingKind.Flow => "cfs",
        _ => string.Empty,
    };
}
