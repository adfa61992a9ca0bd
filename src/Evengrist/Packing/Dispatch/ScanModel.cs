using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Packing.Dispatch;

/// <summary>What stands against a package on a load: stops, questions, cautions. Model: docs/model/dispatch.md.</summary>
public static class ScanModel
{
    /// <summary>Everything that is said of a package that is scanned onto a load.</summary>
    /// <param name="load">The load.</param>
    /// <param name="package">The package as it is known now.</param>
    /// <param name="others">The packages that stand on the load already.</param>
    /// <param name="rules">The mill's rules.</param>
    /// <param name="card">The consignee's card; null where none is kept.</param>
    /// <param name="filled">The load with the package on it, set against the orders it names.</param>
    /// <param name="today">The day.</param>
    public static IReadOnlyList<LoadFinding> Of(DispatchLoad load, RampPackage package, IReadOnlyList<RampPackage> others, DispatchRules rules, ConsigneeCard? card, LoadAgainstOrders filled, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(package);
        ArgumentNullException.ThrowIfNull(others);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(filled);
        if (load.Packages.FirstOrDefault(p => p.Code.Equals(package.Code, StringComparison.OrdinalIgnoreCase)) is { } there)
        {
            return [LoadFinding.Stop($"{there.Code} is on this load already, scanned by {there.By} on {there.At}. Scan the next one.")];
        }

        return WhatItIs(package) is { } none ? [none] : [.. Standing(package, rules, leaves: false), .. Keeping(package, card, today), .. Planned(load, package, others), .. NamedOrderModel.Of(package, filled.Named), .. NamedOrderModel.With(filled, rules), .. Beside(package, others)];
    }

    /// <summary>What stands against a package that is on a load already, now that the load is about to leave.</summary>
    /// <param name="package">The package as it is known now.</param>
    /// <param name="rules">The mill's rules.</param>
    /// <param name="card">The consignee's card; null where none is kept.</param>
    /// <param name="today">The day.</param>
    public static IReadOnlyList<LoadFinding> Again(RampPackage package, DispatchRules rules, ConsigneeCard? card, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(package);
        ArgumentNullException.ThrowIfNull(rules);
        return WhatItIs(package) is { } none ? [none] : [.. Standing(package, rules, leaves: true), .. Keeping(package, card, today)];
    }

    private static LoadFinding? WhatItIs(RampPackage package) => package switch
    {
        { Kind: PlaceKind.None } => LoadFinding.Stop($"There is no package {package.Code}. Look for a typing error, or set it aside: what the ledger does not know does not leave."),
        { Kind: not (PlaceKind.Pallet or PlaceKind.BulkLoad) } => LoadFinding.Stop($"{package.Code} is a {package.Kind.Words()}, no pallet and no bulk load."),
        { GoneTo.Length: > 0 } => LoadFinding.Stop($"{package.Code} went to {package.GoneTo} on {package.GoneAt}. If it stands here, it came back: take it in as a return first."),
        { PackedAt: null } => LoadFinding.Stop($"Nothing was ever packed on {package.Code}."),
        { Grams: <= 0 } => LoadFinding.Stop($"{package.Code} is empty: what lay on it was moved on in the mill."),
        _ => null,
    };

    private static IEnumerable<LoadFinding> Standing(RampPackage package, DispatchRules rules, bool leaves)
    {
        if (package.Hold.Length > 0)
        {
            yield return LoadFinding.Stop($"{package.Code} is on HOLD since {package.HeldSince}{(package.HeldBy.Length > 0 ? $", by {package.HeldBy}" : "")}: {package.Hold}. It stays here until a named person releases it.");
        }

        if (package.OnLoad.Length > 0)
        {
            yield return LoadFinding.Stop($"{package.Code} stands on load {package.OnLoad}, scanned by {package.OnLoadBy} on {package.OnLoadSince}. Take it off there first.");
        }

        if (package.LeavesLater is { } later)
        {
            yield return new(leaves ? FindingWeight.Stop : FindingWeight.Caution, $"The ledger has {package.Code} leaving on {later}: it cannot leave before that as well. Put that movement right first, if it is wrong.");
        }

        switch (package.Stand)
        {
            case LotStand.Held or LotStand.Rework when package.Hold.Length == 0:
                yield return LoadFinding.Stop($"Its lot {package.Lot} was decided to be {(package.Stand == LotStand.Held ? "held" : "reworked")}: a named person decides of it anew first.");
                break;
            case LotStand.Undecided:
                var words = $"Nobody has released its lot {package.Lot}. {(rules.RefusesUndecided ? "It stays here until a named person does." : "Say why it goes all the same, and on whose word.")}";
                yield return rules.RefusesUndecided ? LoadFinding.Stop(words) : LoadFinding.Ask(words);
                break;
        }
    }

    private static IEnumerable<LoadFinding> Keeping(RampPackage package, ConsigneeCard? card, LocalDate today)
    {
        if (package.BestBefore is not { } day)
        {
            yield break;
        }

        var left = Period.DaysBetween(today, day);
        if (left < 0)
        {
            yield return LoadFinding.Stop(FormattableString.Invariant($"{package.Code} kept until {day:R}: {-left} days past. It is not sold as this flour."));
        }
        else if (card is { LeastDaysLeft: > 0 } && left < card.LeastDaysLeft)
        {
            yield return LoadFinding.Ask(FormattableString.Invariant($"{package.Code} keeps until {day:R}, {left} days; {card.Name} wants {card.LeastDaysLeft}. Say why it goes all the same."));
        }
    }

    private static IEnumerable<LoadFinding> Planned(DispatchLoad load, RampPackage package, IReadOnlyList<RampPackage> others)
    {
        if (load.IsTanker != (package.Kind == PlaceKind.BulkLoad))
        {
            yield return LoadFinding.Stop(load.IsTanker ? $"{package.Code} is a pallet, and load {load.Number} is a tanker." : $"{package.Code} is loose in a tanker, and load {load.Number} is a trailer of pallets.");
        }

        if (load.Planned.Count == 0)
        {
            yield break;
        }

        var planned = load.Planned.Where(p => p.Flour.Equals(package.GoesAs, StringComparison.OrdinalIgnoreCase)).Sum(p => p.Pallets);
        if (planned == 0)
        {
            yield return LoadFinding.Ask($"{package.Code} is {package.GoesAs}; planned are {string.Join(", ", load.Planned.Select(p => $"{p.Pallets} × {p.Flour}"))}. The wrong flour? Say why it goes all the same.");
        }
        else if (others.Count(o => o.GoesAs.Equals(package.GoesAs, StringComparison.OrdinalIgnoreCase)) + 1 is var count && count > planned)
        {
            yield return LoadFinding.Ask($"That is {count} of {package.GoesAs}, and {planned} are planned. Say why one more goes.");
        }
    }

    private static IEnumerable<LoadFinding> Beside(RampPackage package, IReadOnlyList<RampPackage> others)
    {
        string[] without = [.. others.Where(o => package.Allergens.Except(o.Allergens, StringComparer.OrdinalIgnoreCase).Any()).Select(o => o.GoesAs).Distinct(StringComparer.OrdinalIgnoreCase)];
        if (without.Length > 0)
        {
            yield return LoadFinding.Caution($"It has {string.Join(", ", package.Allergens)}; {string.Join(", ", without)} beside it has not. Mind torn bags: a person keeps them apart by the site's plan.");
        }

        string[] around = [.. others.SelectMany(o => o.Allergens).Except(package.Allergens, StringComparer.OrdinalIgnoreCase).Distinct(StringComparer.OrdinalIgnoreCase)];
        if (around.Length > 0)
        {
            yield return LoadFinding.Caution($"Beside it stands flour with {string.Join(", ", around)}, which it has not. Mind torn bags: a person keeps them apart by the site's plan.");
        }
    }
}
