namespace Watersown.Pocket.Keeping;

/// <summary>How a mark on this device stands with the host.</summary>
public enum SendState
{
    /// <summary>Kept here; the host does not have it yet, as far as is known.</summary>
    Unsent,

    /// <summary>The host has it.</summary>
    Sent,

    /// <summary>The host would not take it; kept here with the reason.</summary>
    Refused,

    /// <summary>Refused, seen, and let go by a person. Still not erased.</summary>
    LetGo,
}

/// <summary>A mark as the device keeps it.</summary>
/// <param name="Id">Name of the mark.</param>
/// <param name="Text">The mark as it goes over the wire.</param>
/// <param name="State">How it stands with the host.</param>
public sealed record KeptMark(string Id, string Text, SendState State)
{
    /// <summary>Why the host refused it, as it said it.</summary>
    public string? Why { get; init; }
}

/// <summary>Marks that were kept since a turn.</summary>
/// <param name="Marks">Each as it stands now.</param>
/// <param name="Turn">How often the device has kept marks so far: what comes later has a higher turn.</param>
public sealed record MarksSince(ImmutableArray<KeptMark> Marks, long Turn);

/// <summary>A picture waiting on the device.</summary>
/// <param name="Id">Name it is kept under.</param>
/// <param name="State">How it stands with the host.</param>
/// <param name="Bytes">How large it is.</param>
public sealed record KeptPhoto(string Id, SendState State, int Bytes);

/// <summary>
/// What a device keeps for the desk: papers by name, marks, pictures. Every change is on disk when the promise is kept, where
/// the device has a disk to give.
/// </summary>
public interface IDevice
{
    /// <summary>What is kept outlives the page.</summary>
    bool Keeps { get; }

    /// <summary>Another page of the same desk, or the browser, says something.</summary>
    event Action<string>? Heard;

    Task<string?> PaperAsync(string name);

    /// <summary>Keeps several papers at once or none; one without text is taken away.</summary>
    Task KeepPapersAsync(params ImmutableArray<(string Name, string? Text)> papers);

    /// <summary>Marks that were kept, or settled, since a turn; all of them for a turn below 0.</summary>
    Task<MarksSince> MarksAsync(long since);

    /// <summary>Keeps all of them or none.</summary>
    Task KeepMarksAsync(ImmutableArray<KeptMark> marks);

    Task<ImmutableArray<KeptPhoto>> PhotosAsync();

    Task<byte[]?> PhotoAsync(string id);

    Task SettlePhotoAsync(string id, SendState state);

    /// <summary>Takes hold of a work that only one page may do at a time; false where another has it.</summary>
    Task<bool> HoldAsync(string work);

    Task ReleaseAsync(string work);

    /// <summary>Says something to the other pages of the same desk.</summary>
    Task TellTabsAsync(string word);
}
