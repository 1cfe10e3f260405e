namespace Watersown.Season;

/// <summary>What is broken and what is mended, as the marks go by.</summary>
internal sealed class FaultFold
{
    private readonly List<OpenFault> open = [];

    /// <summary>The newest first.</summary>
    public ImmutableArray<OpenFault> Open => [.. open.OrderByDescending(f => f.Mark, MarkOrder.Happened)];

    public void Find(Mark mark, FaultFound fault) => open.Add(new OpenFault(mark, fault));

    /// <summary>Takes a fault off the list and gives it back; none where it is not there.</summary>
    public FaultFound? Mend(MarkId id)
    {
        var at = open.FindIndex(f => f.Mark.Id == id);
        if (at < 0) return null;
        var fault = open[at].Fault;
        open.RemoveAt(at);
        return fault;
    }
}
