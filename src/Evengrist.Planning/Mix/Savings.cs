using System.Globalization;
using Evengrist.Mix;
using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Mix;

/// <summary>What relaxing each binding demand by a step would save: the whole question is solved again with that one moved.</summary>
internal sealed class Savings(MixSpec spec, MixSearchOptions options, CancellationToken stop)
{
    // Several are asked at once while a person waits.
    private static readonly TimeSpan Longest = TimeSpan.FromMilliseconds(60);
    private const double Worth = 1e-6;

    /// <summary>The most saved first; what saves nothing is left out.</summary>
    public IReadOnlyList<Saving> Of(Found best, IReadOnlyList<(MixBin Bin, double Share)> free, IReadOnlyList<(MixBin Bin, double Share)> parts)
    {
        var savings = new List<Saving>();
        foreach (var end in Binding(free, parts))
        {
            var step = BlendRules.Of(end.Limit.What)!.RelaxStep;
            var moved = end.At(end.Value + (end.IsLeast ? -step : step));
            var asked = spec with { Limits = [.. spec.Limits.Select(l => l.What == end.Limit.What && l.On == end.Limit.On ? moved.Limit : l)] };
            Add(savings, best, asked, end.Words, string.Create(CultureInfo.InvariantCulture, $"{moved.Value:0.####} {BlendRules.Of(end.Limit.What)!.Unit}"), end);
        }

        if (spec.Gates.MostGates is { } most && parts.Count(p => p.Share > 0) >= most && most < spec.Bins.Count)
        {
            Add(savings, best, spec with { Gates = spec.Gates with { MostGates = most + 1 } }, string.Create(CultureInfo.InvariantCulture, $"at most {most} gates open"), string.Create(CultureInfo.InvariantCulture, $"{most + 1} gates"), null);
        }

        foreach (var bin in spec.Bins.Where(b => b.LockedShare is not null))
        {
            var asked = spec with { Bins = [.. spec.Bins.Select(b => b == bin ? b with { LockedShare = null } : b)] };
            Add(savings, best, asked, string.Create(CultureInfo.InvariantCulture, $"the gate of {bin.Code} locked at {100 * bin.LockedShare:0.##} %"), "not locked", null);
        }

        return [.. savings.OrderByDescending(s => s.PerTonne)];
    }

    // Ends with nothing to spare where gates move freely, and those within a step of it as the gates are set.
    private IEnumerable<LimitEnd> Binding(IReadOnlyList<(MixBin Bin, double Share)> free, IReadOnlyList<(MixBin Bin, double Share)> parts)
    {
        var tight = HeadroomModel.Of(spec, free).Where(h => h.IsTight).Select(h => h.Limit.End);
        var near = spec.StepShare is null ? [] : HeadroomModel.Of(spec, parts).Where(h => h.IsTight).Select(h => h.Limit.End);
        return tight.Concat(near).Distinct();
    }

    private void Add(List<Saving> savings, Found best, MixSpec asked, string what, string to, LimitEnd? end)
    {
        var quick = options with { Longest = options.Longest < Longest ? options.Longest : Longest };
        var found = new MixSearch(asked, quick).Best(gates: true, best.Shares, stop);
        if (found.IsThere && best.Cost - found.Cost > Worth)
        {
            savings.Add(new Saving(what, to, best.Cost - found.Cost, found.Exit is ExitReason.Optimal or ExitReason.GapReached, end));
        }
    }
}
