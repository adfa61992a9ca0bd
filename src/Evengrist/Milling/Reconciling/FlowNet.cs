using Evengrist.Numerics.Reconciling;

namespace Evengrist.Milling.Reconciling;

/// <summary>Streams and where they meet: a survey and the weighers round it, to be reconciled. Model: docs/model/reconciliation.md.</summary>
/// <param name="Flows">The streams.</param>
/// <param name="Nodes">Where they meet.</param>
public sealed record FlowNet(IReadOnlyList<NetFlow> Flows, IReadOnlyList<NetNode> Nodes)
{
    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        var names = Flows.Select(f => f.Name).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. Flows.Count == 0 || Nodes.Count == 0 ? ["Give streams, and at least one place where they meet."] : Array.Empty<string>(),
            .. Flows.Where(f => string.IsNullOrWhiteSpace(f.Name)).Select(_ => "A stream has no name: give it the mill's own."),
            .. Flows.GroupBy(f => f.Name, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => $"{g.Key} stands there {g.Count()} times: give each stream once."),
            .. Flows.Where(f => f.Amount is not null != f.Uncertainty is not null || f.Amount is not (null or >= 0 and <= 1e9) || f.Uncertainty is not (null or >= 0 and <= 1e9)).Select(f => $"{f.Name}: an amount is 0 or more, with an uncertainty of 0 or more; or leave both out."),
            .. Flows.SelectMany(f => f.Shares.Select(s => (f.Name, What: s.Key, s.Value))).Where(s => s.Value is null || s.Value.Percent is not null != s.Value.Uncertainty is not null || s.Value.Percent is not (null or >= 0 and <= 100) || s.Value.Uncertainty is not (null or >= 0 and <= 100))
                .Select(s => $"{s.Name}, {s.What}: a share lies from 0 to 100 %, with an uncertainty; or leave both out."),
            .. Nodes.Where(n => n.In.Count == 0 || n.Out.Count == 0).Select(n => $"{n.Name}: a place needs streams into it and out of it."),
            .. Nodes.SelectMany(n => n.In.Concat(n.Out).Where(f => !names.Contains(f)).Distinct().Select(f => $"{n.Name}: there is no stream {f}.")),
            .. Nodes.SelectMany(n => n.In.Concat(n.Out).GroupBy(f => f, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => $"{n.Name}: {g.Key} stands there {g.Count()} times.")),
        ];
    }

    /// <summary>Reconciles, and names what does not fit.</summary>
    /// <param name="level">Chance of a false alarm of each test, above 0 and below 1.</param>
    public GrossErrorOutcome Reconcile(double level = 0.05)
    {
        if (Faults() is { Count: > 0 } faults)
        {
            return new GrossErrorNotSought(new ReconcileRefused(faults));
        }

        // Amounts alone first: where they are found they are a good place to begin looking for shares.
        var amounts = new ReconcileSpec([.. Flows.Select(f => new Unknown(f.Name, f.Amount ?? Usual(Flows.Select(o => o.Amount)), f.Uncertainty))], [.. Nodes.Select(n => Balance(n, null, []))]);
        var known = ReconcileModel.Of(amounts) as Balanced;
        string[] components = [.. Flows.SelectMany(f => f.Shares.Keys).Distinct(StringComparer.Ordinal)];
        List<Unknown> unknowns = [.. amounts.Unknowns.Select((u, i) => u.IsMeasured ? u : u with { Value = known?.Values[i].Value ?? u.Value })];
        var places = new Dictionary<(string, string), int>();
        foreach (var (flow, what, share) in Flows.SelectMany(f => f.Shares.Select(s => (f.Name, s.Key, s.Value))))
        {
            places[(flow, what)] = unknowns.Count;
            unknowns.Add(new Unknown($"{what} of {flow}", (share.Percent ?? Usual(Flows.Select(f => f.Shares.TryGetValue(what, out var s) ? s.Percent : null))) / 100, share.Uncertainty / 100));
        }

        return GrossErrorModel.Of(new ReconcileSpec(unknowns, [.. amounts.Constraints, .. components.SelectMany(c => Nodes.Where(n => n.In.Concat(n.Out).All(f => places.ContainsKey((f, c)))).Select(n => Balance(n, c, places)))]), level, (_, value) => value >= 0);
    }

    private static double Usual(IEnumerable<double?> some) => some.OfType<double>().DefaultIfEmpty(1).Average();

    private Constraint Balance(NetNode node, string? component, Dictionary<(string, string), int> places)
    {
        Term Of(double sign, string flow) => new(sign, Enumerable.Range(0, Flows.Count).First(i => Flows[i].Name == flow), component is null ? null : places[(flow, component)]);
        return new Constraint($"{component ?? "mass"} at {node.Name}", [.. node.In.Select(f => Of(1, f)), .. node.Out.Select(f => Of(-1, f))]);
    }
}
