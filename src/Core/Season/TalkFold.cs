using Watersown.Schedule;

namespace Watersown.Season;

/// <summary>Messages, pins, people and plans as the marks go by.</summary>
internal sealed class TalkFold(SeasonState ground)
{
    private readonly GroundTime time = new(ground.Now);
    private readonly SortedDictionary<string, List<Mark>> messages = new(StringComparer.Ordinal);
    private readonly List<Pin> pins = [.. ground.Pins];
    private readonly List<Person> people = [.. ground.People];
    private readonly SortedDictionary<int, PlanIssued> plans = [];

    public ImmutableArray<PlanIssued> Plans => [.. plans.Values];

    public ImmutableArray<MessageBook> Messages =>
        [.. messages.Select(m => new MessageBook(m.Key, (Told)m.Value[^1].Fact, m.Value[^1].Happened, m.Value[^1].By) { Story = [.. m.Value] })];

    public void Apply(Mark mark)
    {
        switch (mark.Fact)
        {
            case Told told:
                if (!messages.TryGetValue(told.Message, out var words)) messages[told.Message] = words = [];
                words.Add(mark);
                break;
            case StepPinned pin:
                Set(pin, mark);
                break;
            case StepUnpinned unpin when time.IsOlderThan(mark):
                pins.RemoveAll(p => Is(p, unpin.Field, unpin.Task));
                break;
            case PersonNamed named:
                Name(named, mark);
                break;
            case PlanIssued plan:
                plans[plan.Number] = plan;
                break;
            default:
                break;
        }
    }

    public SeasonState Close(SeasonState state) => state with
    {
        Pins = [.. pins.Select(p => p with { Told = p.Told ?? ToldOf(p) })],
        People = [.. people],
        PlanNumber = plans.Count == 0 ? state.PlanNumber : Math.Max(state.PlanNumber, plans.Keys.Max() + 1),
    };

    /// <summary>Who was last told of the step as it is pinned.</summary>
    private string? ToldOf(Pin pin) => messages.Values.SelectMany(m => m)
        .Where(m => m.Fact is Told { State: not ToldState.NotReached } told && told.Steps.Any(s => Is(pin, s.Field, s.Task) && s.Start == pin.Start))
        .Order(MarkOrder.Happened).Select(m => ((Told)m.Fact).Person).LastOrDefault();

    private void Set(StepPinned pin, Mark mark)
    {
        var there = pins.FindIndex(p => Is(p, pin.Field, pin.Task));
        if (there >= 0 && !time.IsOlderThan(mark)) return;
        var code = ground.Fields.FirstOrDefault(f => string.Equals(f.Code, pin.Field, StringComparison.OrdinalIgnoreCase))?.Code;
        if (code is null) return; // a plan cannot hold a step of a field it does not have
        var set = new Pin(code, TaskWords.Of(pin.Task), pin.Start.ToOffset(ground.Offset));
        if (there >= 0) pins[there] = set;
        else pins.Add(set);
    }

    private void Name(PersonNamed named, Mark mark)
    {
        var person = new Person(named.Name, named.Role) { Phone = named.Phone, Speaks = named.Speaks };
        var there = people.FindIndex(p => string.Equals(p.Name, named.Name, StringComparison.OrdinalIgnoreCase));
        if (there < 0) people.Add(person);
        else if (time.IsOlderThan(mark)) people[there] = person;
    }

    private static bool Is(Pin pin, string field, PlanTaskKind task) =>
        string.Equals(pin.Field, field, StringComparison.OrdinalIgnoreCase) && string.Equals(pin.Task, TaskWords.Of(task), StringComparison.Ordinal);
}
