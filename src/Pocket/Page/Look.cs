using System.Globalization;
using System.Text;
using Watersown.Pocket.Keeping;
using Watersown.Schedule;

namespace Watersown.Pocket.Page;

/// <summary>Which paper the page lies on now, and what the next opening must know to choose before the desk is awake.</summary>
/// <param name="Theme"><c>day</c> or <c>night</c>.</param>
/// <param name="Kept">The same for the next opening: choice, language, and when it is light at the strip.</param>
public sealed record Look(string Theme, string Kept)
{
    // As many days as a phone may lie in a drawer and still open on the right paper.
    private const int Days = 5;

    public static Look Of(Desk desk)
    {
        var light = desk.Book is { } book ? Light(book.State) : [];
        var theme = desk.Settings.Theme switch
        {
            PaperTheme.Day => "day",
            PaperTheme.Night => "night",
            _ => BySun(light, desk.Now),
        };
        return new Look(theme, Written(desk, theme, light));
    }

    private static string BySun(List<(DateTimeOffset Dawn, DateTimeOffset Dusk)> light, DateTimeOffset now)
    {
        if (light.Count == 0) return now.Hour is < 6 or >= 20 ? "night" : "day";
        return light.Exists(l => now >= l.Dawn && now < l.Dusk) ? "day" : "night";
    }

    private static List<(DateTimeOffset Dawn, DateTimeOffset Dusk)> Light(SeasonState state)
    {
        var today = FarmTime.Day(state, state.Now);
        return [.. Enumerable.Range(0, Days).Select(i => FlyingWindows.Daylight(state, today.AddDays(i)))];
    }

    // Told to the next opening by this device's own clock, which is all it has before the desk is awake.
    private static string Written(Desk desk, string theme, List<(DateTimeOffset Dawn, DateTimeOffset Dusk)> light)
    {
        var text = new StringBuilder();
        var choice = desk.Settings.Theme == PaperTheme.BySun ? "sun" : theme;
        text.Append(CultureInfo.InvariantCulture, $"{{\"theme\":\"{choice}\",\"now\":\"{theme}\",\"language\":\"{desk.Words.Common.Tag}\",\"light\":[");
        text.AppendJoin(',', light.Select(l => string.Create(CultureInfo.InvariantCulture, $"[{desk.OnDevice(l.Dawn).ToUnixTimeMilliseconds()},{desk.OnDevice(l.Dusk).ToUnixTimeMilliseconds()}]")));
        return text.Append("]}").ToString();
    }
}
