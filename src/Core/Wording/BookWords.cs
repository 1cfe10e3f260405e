namespace Watersown.Wording;

/// <summary>Words of keeping the farm's book: copies, taking the whole farm away, bringing it in.</summary>
public sealed partial record BookWords
{
    public required string Title { get; init; }

    public required string LastCopy { get; init; }

    public required string LastChecked { get; init; }

    public required string NoneYet { get; init; }

    public required string Off { get; init; }

    public required string Unknown { get; init; }

    public required string Kept { get; init; }

    public required string KeptSaid { get; init; }

    public required string Failed { get; init; }

    public required string CopyNow { get; init; }

    public required string Copying { get; init; }

    public required string Whole { get; init; }

    public required string WholeLead { get; init; }

    public required string Take { get; init; }

    public required string Bring { get; init; }

    public required string BringLead { get; init; }

    public required string BringNow { get; init; }

    public required string Bringing { get; init; }

    public required string Brought { get; init; }

    public required string NoAnswer { get; init; }
}
