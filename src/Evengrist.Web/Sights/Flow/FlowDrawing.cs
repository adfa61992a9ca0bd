using System.Text.Json;
using Evengrist.Milling.Sheet;

namespace Evengrist.Web.Sights.Flow;

/// <summary>A flow sheet as the browser draws it: boxes of text with their outlets, and the ways between them.</summary>
/// <param name="Nodes">Passages and products.</param>
/// <param name="Edges">The ways.</param>
public sealed record FlowDrawing(IReadOnlyList<FlowNode> Nodes, IReadOnlyList<FlowEdge> Edges)
{
    private static readonly JsonSerializerOptions Plain = new(JsonSerializerDefaults.Web);

    /// <summary>The drawing of a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="href">Where a passage leads when it is chosen; null for nowhere.</param>
    /// <param name="lines">What else is to be said in the box of a passage or product, by code; each text a line.</param>
    /// <param name="weight">How much runs on a way, on any scale of one's own: lines are drawn as broad; null for all alike.</param>
    public static FlowDrawing Of(FlowSheet sheet, Func<Passage, string?>? href = null, Func<string, IReadOnlyList<string>>? lines = null, Func<(Passage From, int Outlet, Spout Spout), double?>? weight = null)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        IReadOnlyList<string> More(string code) => lines?.Invoke(code) ?? [];
        return new FlowDrawing(
            [
                .. sheet.Passages.Select(p => new FlowNode(
                    p.Code, p.Kind.ToString().ToLowerInvariant(), p.Kind.Words(), [.. Set(p), .. More(p.Code)], [.. p.Outlets.Select((_, i) => Mark(p.Outlet(i)))], href?.Invoke(p),
                    $"{p.Code}, {p.Kind.Words()}: {string.Join("; ", PassageLines.Of(p).Skip(1).Select(l => $"{l.Name} {l.Says}"))}")),
                .. sheet.Products.Select(p => new FlowNode(p.Code, "product", p.Kind.Words(), More(p.Code), [], null, $"{p.Code}, {p.Kind.Words()}")),
            ],
            [.. sheet.Ways.Select(w => new FlowEdge(w.From.Code, w.Outlet, w.Spout.To, weight?.Invoke(w), $"{w.From.Code}, {w.From.Outlet(w.Outlet)}, to {w.Spout.To}{(w.Spout.Share < 1 ? $", {FlowSheetWords.Number(100 * w.Spout.Share)} %" : "")}"))]);
    }

    /// <summary>The drawing as JSON that can stand in a page: no sign in it ends the element it stands in.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Plain);

    private static IEnumerable<string> Set(Passage passage) =>
    [
        .. passage.Rolls is { } rolls ? [$"gap {FlowSheetWords.Number(rolls.GapMicrometres)} µm{(passage.Detacher ? ", detacher" : "")}"] : Array.Empty<string>(),
        .. passage.AirMetresPerSecond is { } air ? [$"air {FlowSheetWords.Number(air)} m/s"] : Array.Empty<string>(),
    ];

    // A row of a box has room for few signs.
    private static string Mark(string outlet) => outlet.Replace("overs of ", "> ", StringComparison.Ordinal).Replace("throughs of ", "< ", StringComparison.Ordinal).Replace(" µm", "", StringComparison.Ordinal)
        .Replace("what the air lifts", "air", StringComparison.Ordinal).Replace("the rest", "rest", StringComparison.Ordinal);
}

/// <summary>A box of the drawing.</summary>
/// <param name="Id">The code.</param>
/// <param name="Shape">The shape it is drawn in: break, sizing, reduction, purifying, finishing, grading or product.</param>
/// <param name="Word">What it is, in a word.</param>
/// <param name="Lines">What is said of it, each a line.</param>
/// <param name="Outlets">Its outlets, each a row from which ways leave: "> 1120" for overs, "&lt; 132" for throughs, in µm.</param>
/// <param name="Href">Where it leads when it is chosen; null for nowhere.</param>
/// <param name="Title">The whole of it in words, for who does not see the drawing.</param>
public sealed record FlowNode(string Id, string Shape, string Word, IReadOnlyList<string> Lines, IReadOnlyList<string> Outlets, string? Href, string Title);

/// <summary>A way of the drawing.</summary>
/// <param name="From">Code of the box it leaves.</param>
/// <param name="Outlet">The outlet it leaves by.</param>
/// <param name="To">Code of the box it enters.</param>
/// <param name="Weight">How much runs on it; null where that is not known.</param>
/// <param name="Title">The way in words.</param>
public sealed record FlowEdge(string From, int Outlet, string To, double? Weight, string Title);
