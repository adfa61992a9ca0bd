using System.Globalization;
using Evengrist.Tracing;

namespace Evengrist.Web.Sights.Traces;

/// <summary>The way of what was traced, drawn: boxes in columns, bands as wide as the kilograms.</summary>
/// <param name="Nodes">Boxes.</param>
/// <param name="Bands">Bands between them.</param>
/// <param name="Heads">What stands over each column, with its left edge.</param>
/// <param name="Width">Pixels.</param>
/// <param name="Height">Pixels.</param>
/// <param name="BackGrams">What flowed against the order of the columns (fed back); not drawn.</param>
public sealed record FlowPicture(IReadOnlyList<FlowNode> Nodes, IReadOnlyList<FlowBand> Bands, IReadOnlyList<(double X, string Words)> Heads, double Width, double Height, double BackGrams)
{
    /// <summary>Width of a box.</summary>
    public const double Box = 10;

    private const double Widest = 250, Narrowest = 150, Whole = 1180, Top = 34, Tallest = 250, LeastStep = 32, Gap = 8;

    /// <summary>Lays the flow out.</summary>
    public static FlowPicture Of(IReadOnlyList<Link> links)
    {
        var (flows, back) = FlowGraph.Gather(links);
        var columns = flows.Keys.SelectMany(k => new[] { k.From.Item1, k.To.Item1 }).Distinct().Order().ToList();
        var width = Math.Clamp(Whole / Math.Max(1, columns.Count), Narrowest, Widest);
        var nodes = Place(flows, columns, width);
        var heads = columns.Select((c, i) => (i * width, FlowGraph.Columns[c])).ToArray();
        var height = nodes.Values.Select(n => n.Y + Math.Max(n.Height, 26)).DefaultIfEmpty(Top).Max() + 10;
        return new FlowPicture([.. nodes.Values], [.. Drawn(flows, nodes)], heads, Math.Max(1, columns.Count) * width, height, back);
    }

    private static Dictionary<(int, string), FlowNode> Place(Dictionary<((int, string) From, (int, string) To), double> flows, List<int> columns, double width)
    {
        var into = flows.GroupBy(f => f.Key.To).ToDictionary(g => g.Key, g => g.Sum(f => f.Value));
        var outOf = flows.GroupBy(f => f.Key.From).ToDictionary(g => g.Key, g => g.Sum(f => f.Value));
        var sizes = into.Keys.Union(outOf.Keys).ToDictionary(k => k, k => Math.Max(into.GetValueOrDefault(k), outOf.GetValueOrDefault(k)));
        var scale = sizes.Count == 0 ? 0 : Tallest / sizes.GroupBy(s => s.Key.Item1).Max(g => g.Sum(s => s.Value));
        var nodes = new Dictionary<(int, string), FlowNode>();
        foreach (var column in sizes.GroupBy(s => s.Key.Item1))
        {
            var y = Top;
            foreach (var (key, grams) in column.OrderByDescending(s => s.Value).ThenBy(s => s.Key.Item2, StringComparer.Ordinal))
            {
                var height = Math.Max(1.5, grams * scale);
                nodes.Add(key, new FlowNode(column.Key, key.Item2, grams) { X = columns.IndexOf(column.Key) * width, Y = y, Height = height });
                y += Math.Max(height + Gap, LeastStep);
            }
        }

        return nodes;
    }

    private static IEnumerable<FlowBand> Drawn(Dictionary<((int, string) From, (int, string) To), double> flows, Dictionary<(int, string), FlowNode> nodes)
    {
        var left = new Dictionary<(int, string), double>();
        var right = new Dictionary<(int, string), double>();
        foreach (var ((from, to), grams) in flows.OrderBy(f => nodes[f.Key.From].Column).ThenBy(f => nodes[f.Key.From].Y).ThenBy(f => nodes[f.Key.To].Column).ThenBy(f => nodes[f.Key.To].Y))
        {
            var (a, b) = (nodes[from], nodes[to]);
            var (start, end) = (right.GetValueOrDefault(from), left.GetValueOrDefault(to));
            var (wide, wideEnd) = (a.Height * grams / a.Grams, b.Height * grams / b.Grams);
            (right[from], left[to]) = (start + wide, end + wideEnd);
            yield return new FlowBand(a, b, grams, Outline(a.X + Box, a.Y + start, wide, b.X, b.Y + end, wideEnd));
        }
    }

    private static string Outline(double x1, double y1, double wide1, double x2, double y2, double wide2)
    {
        var middle = (x1 + x2) / 2;
        return string.Create(CultureInfo.InvariantCulture,
            $"M{x1:0.#} {y1:0.##}C{middle:0.#} {y1:0.##} {middle:0.#} {y2:0.##} {x2:0.#} {y2:0.##}V{y2 + Math.Max(wide2, 0.6):0.##}C{middle:0.#} {y2 + wide2:0.##} {middle:0.#} {y1 + wide1:0.##} {x1:0.#} {y1 + Math.Max(wide1, 0.6):0.##}Z");
    }
}
