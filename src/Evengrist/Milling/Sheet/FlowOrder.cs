namespace Evengrist.Milling.Sheet;

/// <summary>Passages put into blocks that feed each other in a circle, the blocks in the order of the flow (strongly connected components, Tarjan 1972).</summary>
internal static class FlowOrder
{
    /// <summary>The blocks in which stock goes round, by the first of their passages on the sheet.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Loops(FlowSheet sheet)
    {
        var listed = sheet.Passages.Select(p => p.Code).ToList();
        return
        [
            .. Of(sheet).Where(b => b.Length > 1 || b[0].Outlets.Any(o => o.Any(s => s.To == b[0].Code)))
                .Select(b => b.Select(p => p.Code).ToArray()).OrderBy(b => listed.IndexOf(b[0])),
        ];
    }

    /// <summary>Every block, its passages in the order of the sheet.</summary>
    public static IReadOnlyList<Passage[]> Of(FlowSheet sheet)
    {
        var listed = sheet.Passages.Select((p, i) => (p, i)).ToDictionary(x => x.p.Code, x => x.i, StringComparer.Ordinal);
        var next = sheet.Passages.Select(p => p.Outlets.SelectMany(o => o).Select(s => listed.GetValueOrDefault(s.To, -1)).Where(i => i >= 0).Distinct().ToArray()).ToArray();
        var (seen, low, on, stack, blocks, time) = (new int[next.Length], new int[next.Length], new bool[next.Length], new Stack<int>(), new List<Passage[]>(), 0);

        void Visit(int passage)
        {
            seen[passage] = low[passage] = ++time;
            stack.Push(passage);
            on[passage] = true;
            foreach (var to in next[passage])
            {
                if (seen[to] == 0)
                {
                    Visit(to);
                    low[passage] = Math.Min(low[passage], low[to]);
                }
                else if (on[to])
                {
                    low[passage] = Math.Min(low[passage], seen[to]);
                }
            }

            if (low[passage] != seen[passage])
            {
                return;
            }

            List<int> block = [];
            do
            {
                block.Add(stack.Pop());
                on[block[^1]] = false;
            }
            while (block[^1] != passage);
            blocks.Add([.. block.Order().Select(i => sheet.Passages[i])]);
        }

        for (var i = 0; i < next.Length; i++)
        {
            if (seen[i] == 0)
            {
                Visit(i);
            }
        }

        blocks.Reverse();
        return blocks;
    }
}
