using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Watersown.Pocket.Schedule;

/// <summary>Words in a drawing. Markup takes an element called text for its own, so it is made here.</summary>
public sealed class SvgText : ComponentBase
{
    [Parameter, EditorRequired] public double X { get; set; }

    [Parameter, EditorRequired] public double Y { get; set; }

    [Parameter, EditorRequired] public string Says { get; set; } = string.Empty;

    /// <summary>Name of its look in the style sheet.</summary>
    [Parameter] public string? Look { get; set; }

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        builder.OpenElement(0, "text");
        builder.AddAttribute(1, "x", X.ToString("0.##", CultureInfo.InvariantCulture));
        builder.AddAttribute(2, "y", Y.ToString("0.##", CultureInfo.InvariantCulture));
        builder.AddAttribute(3, "class", Look);
        builder.AddContent(4, Says);
        builder.CloseElement();
    }
}
