using NodaTime;

namespace Evengrist.Packing.Dispatch;

/// <summary>What stands against a load's leaving: the trailer, its seals, every package looked at again. Model: docs/model/dispatch.md.</summary>
public static class DepartureModel
{
    /// <summary>Everything that is said of a load that is about to leave.</summary>
    /// <param name="load">The load.</param>
    /// <param name="packages">Its packages as they are known now, in its order.</param>
    /// <param name="seals">The seals as read at the gate.</param>
    /// <param name="rules">The mill's rules.</param>
    /// <param name="card">The consignee's card; null where none is kept.</param>
    /// <param name="filled">It, set against the orders it names.</param>
    /// <param name="today">The day.</param>
    public static IReadOnlyList<LoadFinding> Of(DispatchLoad load, IReadOnlyList<RampPackage> packages, IReadOnlyList<string> seals, DispatchRules rules, ConsigneeCard? card, LoadAgainstOrders filled, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(packages);
        ArgumentNullException.ThrowIfNull(seals);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(filled);
        return
        [
            .. load.Packages.Count == 0 ? [LoadFinding.Stop("Nothing stands on it.")] : Array.Empty<LoadFinding>(),
            .. TrailerModel.Of(load, rules), .. Seals(load, seals, rules),
            .. packages.SelectMany(p => ScanModel.Again(p, rules, card, today)).Where(f => f.Weight != FindingWeight.Ask), // what was asked of each was answered when it was scanned
            .. NamedOrderModel.Of(load, filled, rules), .. Short(load, packages), .. Papers(load, card, today),
        ];
    }

    private static IEnumerable<LoadFinding> Seals(DispatchLoad load, IReadOnlyList<string> seals, DispatchRules rules)
    {
        string[] put = [.. load.Sealed?.Numbers ?? []], read = [.. seals.Select(s => s.Trim()).Where(s => s.Length > 0)];
        if (put.Length == 0)
        {
            if (rules.NeedsSeals)
            {
                yield return LoadFinding.Stop("No seal was put on. Put it on and enter its number.");
            }

            yield break;
        }

        string[] gone = [.. put.Except(read, StringComparer.OrdinalIgnoreCase)], other = [.. read.Except(put, StringComparer.OrdinalIgnoreCase)];
        if (read.Length == 0)
        {
            yield return LoadFinding.Stop($"Read the seals at the gate: {string.Join(", ", put)} {(put.Length == 1 ? "was" : "were")} put on.");
        }
        else if (gone.Length > 0 || other.Length > 0)
        {
            yield return LoadFinding.Ask($"The seals do not fit: put on {string.Join(", ", put)} by {load.Sealed!.By} on {load.Sealed.At}, read {string.Join(", ", read)}. Look into the trailer, and say why it goes all the same.");
        }
    }

    private static IEnumerable<LoadFinding> Short(DispatchLoad load, IReadOnlyList<RampPackage> packages)
    {
        foreach (var planned in load.Planned.GroupBy(p => p.Flour, StringComparer.OrdinalIgnoreCase))
        {
            var there = packages.Count(p => p.GoesAs.Equals(planned.Key, StringComparison.OrdinalIgnoreCase));
            if (there < planned.Sum(p => p.Pallets))
            {
                yield return LoadFinding.Ask($"{there} of {planned.Sum(p => p.Pallets)} {planned.Key} stand on it. Say why it leaves short.");
            }
        }
    }

    private static IEnumerable<LoadFinding> Papers(DispatchLoad load, ConsigneeCard? card, LocalDate today)
    {
        if (card is null)
        {
            yield return LoadFinding.Caution($"No card of {load.Consignee} is kept: nobody knows whom to ring for a recall.");
        }
        else if (card.NotReady(today) is { Count: > 0 } missing)
        {
            yield return LoadFinding.Caution($"{card.Name} is not ready for a recall: {string.Join(", ", missing)}.");
        }

        if (load.Carrier.Length == 0 || load.Trailer.Length == 0)
        {
            yield return LoadFinding.Caution($"The release record will lack {(load.Carrier.Length == 0 ? "who hauls it" : "the trailer")}.");
        }
    }
}
