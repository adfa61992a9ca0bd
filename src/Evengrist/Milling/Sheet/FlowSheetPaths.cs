namespace Evengrist.Milling.Sheet;

/// <summary>Ways through a flow sheet: whether wheat reaches every passage and stock of every passage can leave.</summary>
internal static class FlowSheetPaths
{
    public static IEnumerable<string> Faults(FlowSheet sheet)
    {
        var onward = sheet.Ways.ToLookup(w => w.From.Code, w => w.Spout.To, StringComparer.Ordinal);
        var back = sheet.Ways.ToLookup(w => w.Spout.To, w => w.From.Code, StringComparer.Ordinal);
        var fed = Reach([sheet.FirstBreak], onward);
        var leaving = Reach(sheet.Products.Select(p => p.Code), back);
        var trapped = sheet.Passages.Where(p => !leaving.Contains(p.Code)).Select(p => p.Code).ToArray();
        return
        [
            .. sheet.Passages.Where(p => !fed.Contains(p.Code)).Select(p => $"{p.Code}: no stock reaches it. Lead an outlet there or take it out."),
            .. sheet.Products.Where(p => !fed.Contains(p.Code)).Select(p => $"{p.Code}: no stock reaches it. Lead an outlet there or take it out."),
            .. trapped.Length > 0 ? [$"{string.Join(", ", trapped)}: stock goes round and never reaches a product. Lead one of their outlets out of the loop."] : Array.Empty<string>(),
        ];
    }

    private static HashSet<string> Reach(IEnumerable<string> from, ILookup<string, string> ways)
    {
        var reached = new HashSet<string>(from, StringComparer.Ordinal);
        var open = new Queue<string>(reached);
        while (open.TryDequeue(out var code))
        {
            foreach (var next in ways[code].Where(reached.Add))
            {
                open.Enqueue(next);
            }
        }

        return reached;
    }
}
