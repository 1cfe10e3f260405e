using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Season.Crop;

/// <summary>One thing to look for in a field.</summary>
/// <param name="Window">The danger and its days.</param>
/// <param name="Due">The day to look.</param>
public sealed record PestDue(PestWindow Window, DateOnly Due)
{
    /// <summary>The newest look.</summary>
    public (Mark Mark, PestLooked Look)? Last { get; init; }
}

/// <summary>One stop of a round of looking.</summary>
/// <param name="Field">The field.</param>
/// <param name="Dues">What to look for there by the end of the day.</param>
public sealed record ScoutStop(Field Field, ImmutableArray<PestDue> Dues);

/// <summary>What is to be looked for on a day, field by field. It shrinks as dangers pass and as somebody looks.</summary>
public static class PestDues
{
    /// <summary>Everything due in a field by a day.</summary>
    public static ImmutableArray<PestDue> Of(SeasonBook book, Field field, DateOnly day)
    {
        var looks = book.Field(field.Code).Looks;
        var dues = ImmutableArray.CreateBuilder<PestDue>();
        foreach (var window in PestRules.Of(book, field).Where(w => w.From <= day && w.Until >= day))
        {
            (Mark Mark, PestLooked Look)? last = looks.Where(l => l.Look.Pest == window.Pest).Select(l => ((Mark, PestLooked)?)(l.Mark, l.Look)).LastOrDefault();
            var due = last is { } looked && FarmTime.Day(book.State, looked.Mark.Happened).AddDays(window.Every) is var next && next > window.From ? next : window.From;
            if (due <= day) dues.Add(new PestDue(window, due) { Last = last });
        }

        return [.. dues.OrderBy(d => d.Window.Pest)];
    }

    /// <summary>The round of a day: fields with something due, in an order that is short to drive.</summary>
    public static ImmutableArray<ScoutStop> Round(SeasonBook book, DateOnly day)
    {
        ImmutableArray<ScoutStop> stops = [.. book.State.Farm.Fields.Select(f => new ScoutStop(f, Of(book, f, day))).Where(s => !s.Dues.IsEmpty)];
        var order = ScoutRoute.Of(book.State.Farm, [.. stops.Select(s => s.Field)]);
        return [.. order.Select(f => stops.First(s => s.Field == f))];
    }
}
