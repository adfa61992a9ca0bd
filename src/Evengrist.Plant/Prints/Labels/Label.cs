using Evengrist.Plant.Gs1;

namespace Evengrist.Plant.Prints.Labels;

/// <summary>A label ready to print.</summary>
public sealed class Label
{
    private readonly Drawing drawing;
    private readonly string title;

    internal Label(Drawing drawing, string title, ElementString? elements, IReadOnlyList<string> remarks) => (this.drawing, this.title, Elements, Remarks) = (drawing, title, elements, remarks);

    /// <summary>All that its symbols of GS1 say together; null where it has none.</summary>
    public ElementString? Elements { get; }

    /// <summary>What whoever prints it should know.</summary>
    public IReadOnlyList<string> Remarks { get; }

    /// <summary>As SVG.</summary>
    public string Svg() => DrawingSvg.Write(drawing, title);

    /// <summary>As PDF.</summary>
    public byte[] Pdf() => DrawingPdf.Write([drawing], title);

    /// <summary>Several as one PDF, one to a page.</summary>
    /// <param name="labels">The labels, at least one.</param>
    public static byte[] Pdf(IReadOnlyList<Label> labels)
    {
        ArgumentNullException.ThrowIfNull(labels);
        return DrawingPdf.Write(labels.Select(l => l.drawing), FormattableString.Invariant($"{labels.Count} labels"));
    }
}
