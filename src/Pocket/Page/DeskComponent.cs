using Microsoft.AspNetCore.Components;
using Watersown.Wording;

namespace Watersown.Pocket.Page;

/// <summary>A part of a page that shows the desk and draws itself anew when the desk changes.</summary>
public abstract class DeskComponent : ComponentBase, IDisposable
{
    private int drawn = -1;

    [Inject]
    public required Desk Desk { get; init; }

    protected Words Words => Desk.Words;

    /// <summary>The desk's own words.</summary>
    protected DeskWords Says => Desk.Words.Desk;

    public void Dispose()
    {
        Dispose(disposing: true);
        GC.SuppressFinalize(this);
    }

    protected override void OnInitialized() => Desk.Changed += Redraw;

    // Asked before every drawing but the first.
    protected override bool ShouldRender()
    {
        drawn = Desk.Turn;
        return true;
    }

    protected virtual void Dispose(bool disposing)
    {
        if (disposing) Desk.Changed -= Redraw;
    }

    // The part around it hears of a change first and mostly draws it too; once is enough.
    private void Redraw() => _ = InvokeAsync(() =>
    {
        if (drawn != Desk.Turn) StateHasChanged();
    });
}
