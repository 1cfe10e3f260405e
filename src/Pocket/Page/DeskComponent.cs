using Microsoft.AspNetCore.Components;
using Watersown.Wording;

namespace Watersown.Pocket.Page;

/// <summary>A part of a page that shows the desk and draws itself anew when the desk changes.</summary>
public abstract class DeskComponent : ComponentBase, IDisposable
{
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

    protected virtual void Dispose(bool disposing)
    {
        if (disposing) Desk.Changed -= Redraw;
    }

    private void Redraw() => _ = InvokeAsync(StateHasChanged);
}
