using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Evengrist.Web.Pages.Tracing;

/// <summary>Words in a drawing; the markup language keeps the element's own name for itself.</summary>
public sealed class SvgText : ComponentBase
{
    /// <summary>Style class.</summary>
    [Parameter, EditorRequired] public string Class { get; set; } = "";

    /// <summary>Left edge.</summary>
    [Parameter, EditorRequired] public double X { get; set; }

    /// <summary>Foot of the letters.</summary>
    [Parameter, EditorRequired] public double Y { get; set; }

    /// <summary>The words.</summary>
    [Parameter, EditorRequired] public string Words { get; set; } = "";

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        builder.OpenElement(0, "text");
        builder.AddAttribute(1, "class", Class);
        builder.AddAttribute(2, "x", Sights.Traces.TraceWords.N(X));
        builder.AddAttribute(3, "y", Sights.Traces.TraceWords.N(Y));
        builder.AddContent(4, Words);
        builder.CloseElement();
    }
}
