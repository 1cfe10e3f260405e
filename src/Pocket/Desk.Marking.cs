using System.Text;
using Watersown.Documents.Logbooks;
using Watersown.Pocket.Keeping;
using Watersown.Season;

namespace Watersown.Pocket;

/// <summary>A mark just kept, and what the person pressed.</summary>
/// <param name="Mark">The mark.</param>
/// <param name="Said">What was pressed, in the page's words.</param>
public sealed record JustKept(Mark Mark, string Said);

public sealed partial class Desk
{
    /// <summary>The last mark of this device that can still be taken back; none once its ten minutes are over.</summary>
    public JustKept? Undoable => lastKept is { } kept && Now - kept.Mark.Entered < SeasonLimits.UndoFor ? kept : null;

    private JustKept? lastKept;

    /// <summary>A mark was taken: pages may let it be felt.</summary>
    public event Action? Accepted;

    /// <summary>
    /// Puts down a mark. When this says that it is kept, it is on the device's disk; sending follows by itself. What the host
    /// would refuse by its form is refused here, at once, with the words for it.
    /// </summary>
    public async Task<Outcome<Mark>> MarkAsync(MarkFact fact, MarkOptions? options = null)
    {
        var mark = Made(fact, options ?? new MarkOptions());
        var text = Encoding.UTF8.GetString(MarkDocument.Write(mark).Span);
        var checkedMark = MarkReading.Read(Encoding.UTF8.GetBytes(text));
        if (checkedMark.IsRefused) return checkedMark;
        var keeping = new KeptMark(mark.Id.Text, text, SendState.Unsent);
        await device.KeepMarksAsync([keeping]);
        kept = kept.SetItem(keeping.Id, keeping);
        read[keeping.Id] = checkedMark.Value;
        // A mark taken back by "undo" is not offered once more; one taken back in the logbook is.
        lastKept = options is { PageUndoes: true } || (fact is Withdrawn && options?.Said is null) ? null : new JustKept(checkedMark.Value, options?.Said ?? string.Empty);
        Fold();
        Accepted?.Invoke();
        Tell();
        await device.TellTabsAsync("marks");
        _ = SendAsync();
        return checkedMark;
    }

    /// <summary>Takes a mark back. Both stay in the logbook.</summary>
    public Task<Outcome<Mark>> UndoAsync(MarkId mark) => MarkAsync(new Withdrawn(), new MarkOptions { Replaces = mark });

    /// <summary>Marks that are on this device only, as far as is known.</summary>
    public IReadOnlySet<MarkId> UnsentMarks
    {
        get
        {
            // Asked for by every page drawn, and the same until a mark is kept or settled.
            if (!ReferenceEquals(unsent.Of, kept)) unsent = (kept, kept.Values.Where(m => m.State == SendState.Unsent).Select(m => new MarkId(m.Id)).ToHashSet());
            return unsent.Marks;
        }
    }

    private (ImmutableDictionary<string, KeptMark>? Of, HashSet<MarkId> Marks) unsent = (null, []);

    /// <summary>A kept mark as read; nothing where this desk cannot read it.</summary>
    public Mark? AsRead(KeptMark mark) => read.GetValueOrDefault(mark.Id);

    /// <summary>This person puts down marks here.</summary>
    public bool MayMark => Role is not "reader";

    /// <summary>This person may correct a mark or take it back: crew only their own, as the host has it.</summary>
    public bool MayChange(Mark mark) => MayMark && mark.Fact is not PlanIssued && (Role is not "crew" || mark.By == Me);

    private Mark Made(MarkFact fact, MarkOptions options)
    {
        var now = Whole(Now);
        return new Mark
        {
            Id = MarkNames.New(),
            Happened = options.Happened is { } happened ? Whole(happened) : now,
            Entered = now,
            By = string.IsNullOrWhiteSpace(options.By) ? Me : options.By.Trim(),
            Device = DeviceName,
            Sure = options.Sure,
            Replaces = options.Replaces,
            Note = string.IsNullOrWhiteSpace(options.Note) ? null : options.Note.Trim(),
            Fact = fact,
        };
    }

    private static DateTimeOffset Whole(DateTimeOffset moment) => moment.AddTicks(-(moment.Ticks % TimeSpan.TicksPerSecond));
}
