namespace Watersown.Wording;

/// <summary>Words of drawing an edge and of bringing edges in from a file.</summary>
public sealed partial record EdgeWords
{
    public required string Title { get; init; }

    public required string Lead { get; init; }

    public required string Corners { get; init; }

    public required string CornersNone { get; init; }

    public required string Place { get; init; }

    public required string Remove { get; init; }

    public required string RemoveWord { get; init; }

    public required string Earlier { get; init; }

    public required string EarlierWord { get; init; }

    public required string AddTyped { get; init; }

    public required string TypedLabel { get; init; }

    public required string AddHere { get; init; }

    public required string HereWait { get; init; }

    public required string HereNone { get; init; }

    public required string HereRough { get; init; }

    public required string AddMiddle { get; init; }

    public required string UndoStep { get; init; }

    public required string Clear { get; init; }

    public required string Inside { get; init; }

    public required string Against { get; init; }

    public required string Keep { get; init; }

    public required string KeepAnyway { get; init; }

    public required string Kept { get; init; }

    public required string More { get; init; }

    public required string Back { get; init; }

    public required string Start { get; init; }

    public required string Redraw { get; init; }

    public required string Edge { get; init; }

    public required string Drawn { get; init; }

    public required string Undrawn { get; init; }

    public required string ManyParts { get; init; }

    public required string FileTitle { get; init; }

    public required string FileLead { get; init; }

    public required string FileLabel { get; init; }

    public required string FileReading { get; init; }

    public required string FileTooLarge { get; init; }

    public required string FileNoHost { get; init; }

    public required string FileSignIn { get; init; }

    public required string FileFound { get; init; }

    public required string FileNone { get; init; }

    public required string FileCalled { get; init; }

    public required string FileField { get; init; }

    public required string FileInside { get; init; }

    public required string FileGross { get; init; }

    public required string FileOff { get; init; }

    public required string FileLeave { get; init; }

    public required string FileFor { get; init; }

    public required string FileNameless { get; init; }

    public required string FileKeep { get; init; }

    public required string FileKeepNone { get; init; }

    public required string FileTwice { get; init; }

    public required string FileKept { get; init; }

    public required string FileUndoAll { get; init; }

    public required string FileUndone { get; init; }

    public required string FileReplaces { get; init; }

    public required string FileLink { get; init; }

    public required string FileHas { get; init; }
}
