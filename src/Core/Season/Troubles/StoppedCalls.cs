using System.Globalization;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;

namespace Watersown.Season.Troubles;

/// <summary>Who must be woken for a stopped source, and who can sleep until when.</summary>
internal static class StoppedCalls
{
    /// <summary>A field that shows bare soil sooner than this wakes the irrigator (planner default).</summary>
    private static readonly TimeSpan wakeFor = TimeSpan.FromHours(12);

    /// <summary>The flight list is firm on the afternoon before (common practice, no source).</summary>
    private static readonly TimeOnly listFirm = new(16, 0);

    private static readonly ImmutableArray<string> RepairWords = ["pump", "well", "bomba", "pozo"];

    public static ImmutableArray<TroubleCall> Of(SeasonBook book, StoppedSource stopped)
    {
        var state = book.State;
        var calls = new List<TroubleCall> { Make(book, stopped, RoleOf(stopped.Source), null, []) };
        var seed = stopped.Fills.Where(f => f.CancelBy > state.Now).ToImmutableArray();
        if (!seed.IsEmpty) calls.Add(Make(book, stopped, TroubleRole.Warehouse, seed.Min(f => f.CancelBy), [.. seed.OrderBy(f => f.CancelBy).Select(f => f.Field.Code)]));
        var flights = stopped.Fills.Where(f => f.Sow > state.Now).OrderBy(f => f.Sow).ToImmutableArray();
        if (!flights.IsEmpty) calls.Add(Make(book, stopped, TroubleRole.Dispatcher, DayBefore(state, flights[0].Sow!.Value), [.. flights.Select(f => f.Field.Code)]));
        var soon = stopped.Fields.Where(f => f.BareAt - state.Now < wakeFor).Select(f => f.Field.Code).ToImmutableArray();
        if (!soon.IsEmpty) calls.Add(Make(book, stopped, TroubleRole.Irrigator, null, soon));
        else calls.Add(Make(book, stopped, TroubleRole.Irrigator, FirstLight(state), [.. stopped.Fills.Where(f => f.Season.Stage == FieldStage.Flooding).Select(f => f.Field.Code)]));
        return [.. calls.OrderBy(c => c.By ?? DateTimeOffset.MinValue).ThenBy(c => c.Role)];
    }

    private static TroubleCall Make(SeasonBook book, StoppedSource stopped, TroubleRole role, DateTimeOffset? by, ImmutableArray<string> fields)
    {
        var message = string.Create(CultureInfo.InvariantCulture, $"stopped {stopped.Source.Code} {stopped.Since.ToUniversalTime():yyyy-MM-dd'T'HH:mm'Z'} {role}");
        return new TroubleCall(role, by > book.State.Now ? by : null) { Message = message, Person = PersonFor(book.State, role), Fields = fields, Said = book.Message(message) };
    }

    private static TroubleRole RoleOf(WaterSource source) => source.Kind switch
    {
        WaterSourceKind.DistrictTurnout => TroubleRole.District,
        WaterSourceKind.LiftPump or WaterSourceKind.Well or WaterSourceKind.Tailwater => TroubleRole.Repair,
        WaterSourceKind.JoinedDitch => TroubleRole.Irrigator,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    internal static Person? PersonFor(SeasonState state, TroubleRole role) => role switch
    {
        TroubleRole.Repair => state.People.FirstOrDefault(p => RepairWords.Any(w => p.Role.Contains(w, StringComparison.OrdinalIgnoreCase))),
        TroubleRole.District => CrewRoles.Of(state, CrewRole.District).FirstOrDefault(),
        TroubleRole.Warehouse => CrewRoles.Of(state, CrewRole.Warehouse).FirstOrDefault(),
        TroubleRole.Dispatcher => CrewRoles.Of(state, CrewRole.Dispatcher).FirstOrDefault(),
        TroubleRole.Irrigator => CrewRoles.Of(state, CrewRole.Irrigator).FirstOrDefault(),
        TroubleRole.Tractor => state.People.FirstOrDefault(p => p.Role.Contains("driver", StringComparison.OrdinalIgnoreCase) || p.Role.Contains("tractor", StringComparison.OrdinalIgnoreCase)),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static DateTimeOffset DayBefore(SeasonState state, DateTimeOffset flight) => FarmTime.At(state, FarmTime.Day(state, flight).AddDays(-1), listFirm);

    private static DateTimeOffset FirstLight(SeasonState state)
    {
        var today = FarmTime.At(state, FarmTime.Day(state, state.Now), state.Crew.WorkFrom);
        return today > state.Now ? today : today.AddDays(1);
    }
}
