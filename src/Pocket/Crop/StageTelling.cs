using Watersown.Growth;
using Watersown.Wording;

namespace Watersown.Pocket.Crop;

/// <summary>A stage's day as a page tells it: seen, or reckoned with its error.</summary>
internal static class StageTelling
{
    public static string Day(StageDate stage, Desk desk) => stage.Seen
        ? Template.Fill(desk.Words.Crop.SeenOn, ("day", desk.Telling.ShortDay(stage.Day)))
        : Template.Fill(desk.Words.Crop.About, ("day", desk.Telling.ShortDay(stage.Day)), ("n", Say.Number(stage.ErrorDays)));
}
