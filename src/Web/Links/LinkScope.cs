using Watersown.Flight;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Season;
using Watersown.Seed;
using Watersown.Water;
using Watersown.Wording;

namespace Watersown.Web.Links;

/// <summary>All that one link may show and hear about: its own person's sheet of its own day, and nothing else of the farm.</summary>
internal sealed class LinkScope
{
    public required LinkSheet Sheet { get; init; }

    public required Person Person { get; init; }

    /// <summary>The newest plan.</summary>
    public required SeasonPlan Plan { get; init; }

    /// <summary>The plan by which the link was made.</summary>
    public required SeasonPlan Issued { get; init; }

    public required SeasonBook Book { get; init; }

    public required DateTimeOffset Now { get; init; }

    /// <summary>Name of the link among the devices that marks come from.</summary>
    public required string Device { get; init; }

    public Language Language => Person.Speaks;

    public Telling Tell => field ??= new(Plan.State, Language);

    public CrewRole Role => CrewRoles.Of(Person);

    /// <summary>The sheets by the newest plan.</summary>
    public ImmutableArray<SheetPage> Pages => field.IsDefault ? field = PagesOf(Plan) : field;

    /// <summary>The sheets by the plan of the link, for when the newest has none.</summary>
    public ImmutableArray<SheetPage> IssuedPages => field.IsDefault ? field = Issued.Number == Plan.Number ? [] : PagesOf(Issued) : field;

    /// <summary>The day's flights that this person has to do with, those of the link's own plan too: one may be under way.</summary>
    public ImmutableArray<FlightSheet> Flights => !field.IsDefault ? field : field = Sheet.Kind is not LinkKind.Flight ? []
        : [.. FlightsOf(Plan).Concat(FlightsOf(Issued)).DistinctBy(f => (f.Field.Code, f.Part.Number)).OrderBy(f => f.From).ThenBy(f => f.Field.Code, StringComparer.Ordinal)];

    /// <summary>The seed on the warehouse's sheet.</summary>
    public ImmutableArray<SeedJob> Seed => !field.IsDefault ? field : field = Sheet.Kind is not LinkKind.Seed ? []
        : [.. SeedSheets.Of(Plan, Sheet.Day).Jobs.Concat(SeedSheets.Of(Issued, Sheet.Day).Jobs).DistinctBy(j => j.Batch ?? string.Join('+', j.Fields), StringComparer.Ordinal)];

    /// <summary>The fields on the irrigator's route.</summary>
    public ImmutableArray<Field> Water => !field.IsDefault ? field : field = Sheet.Kind is not LinkKind.Water ? [] : FieldsOf(WaterSheet);

    /// <summary>The route itself.</summary>
    public WaterSheet WaterSheet => field ??= WaterSheets.Of(Plan, Sheet.Day, Person.Name);

    /// <summary>There is something on the sheet that can be answered with a tap.</summary>
    public bool CanAnswer => Sheet.Kind == LinkKind.Day || !Flights.IsEmpty || !Seed.IsEmpty || !Water.IsEmpty;

    /// <summary>What this person told from a link, the newest first.</summary>
    public IEnumerable<StoryLine> Said => Book.Story
        .Where(l => l.Standing != Standing.Withdraws && string.Equals(l.Mark.Device, Device, StringComparison.Ordinal) && Now - l.Mark.Entered < TimeSpan.FromHours(36))
        .OrderByDescending(l => l.Mark.Entered);

    /// <summary>Loads of a field that are gone already, by number.</summary>
    public ImmutableHashSet<int> LoadsGone(string field) => [.. Book.Story
        .Where(l => l.Standing == Standing.Stands && l.Mark.Fact is LoadGone gone && string.Equals(gone.Field, field, StringComparison.OrdinalIgnoreCase) && Tell.Day(l.Mark.Happened) == Sheet.Day)
        .Select(l => ((LoadGone)l.Mark.Fact).Number).OfType<int>()];

    private static ImmutableArray<Field> FieldsOf(WaterSheet sheet) => [.. sheet.Routes.SelectMany(r => r.Stops).Concat(sheet.Loose).Select(s => s.Field).DistinctBy(f => f.Code, StringComparer.Ordinal)];

    private ImmutableArray<SheetPage> PagesOf(SeasonPlan plan)
    {
        var set = SheetSet.Of(plan, new SheetChoice { Day = Sheet.Day, Person = Person.Name, Language = Language });
        return set.HasValue ? [.. set.Value.Pages.Where(p => p.Key.StartsWith(LinkSheet.Name(Sheet.Kind) + "-", StringComparison.Ordinal))] : [];
    }

    private ImmutableArray<FlightSheet> FlightsOf(SeasonPlan plan) => FlightSheets.Of(plan, f => Tell.Day(f.Start) == Sheet.Day);
}
