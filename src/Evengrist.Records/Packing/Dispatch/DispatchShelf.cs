using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;

namespace Evengrist.Records.Packing.Dispatch;

/// <summary>The loads of a mill: papers by number, each act a version, nothing lost and nobody's act overwritten.</summary>
public static class DispatchShelf
{
    private const int Attempts = 8;

    /// <summary>Every load in its newest version, by day and number.</summary>
    public static IReadOnlyList<DispatchLoad> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(DispatchLoad.Kind).NewestOfEach().Read<DispatchLoad>(DispatchLoad.TryRead).Select(p => p.Value).OrderBy(l => l.Day).ThenBy(l => l.Number, StringComparer.Ordinal)];
    }

    /// <summary>One load; null where none is kept. Case does not matter.</summary>
    public static DispatchLoad? Find(Mill mill, string? number)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return Code(number) is { Length: > 0 } code && mill.Papers(DispatchLoad.Kind).Newest(code) is { } paper && DispatchLoad.TryRead(paper.Json, out var load, out _) ? load : null;
    }

    /// <summary>The open load that a package was scanned onto; null where it stands on none.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="package">Code of the package; case does not matter.</param>
    public static DispatchLoad? OpenLoadOf(Mill mill, string package) => All(mill).FirstOrDefault(l => l.IsOpen && l.Packages.Any(p => p.Code.Equals(package, StringComparison.OrdinalIgnoreCase)));

    /// <summary>Plans a load.</summary>
    /// <returns>The load; null with every fault where it cannot be.</returns>
    public static (DispatchLoad? Load, IReadOnlyList<string> Faults) Plan(Mill mill, DispatchLoad load, string? by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(load);
        var planned = Known(mill, load with { Number = Code(load.Number) }, by, out var faults);
        if (faults.Count > 0)
        {
            return (null, faults);
        }

        try
        {
            mill.Papers(DispatchLoad.Kind).Keep(planned.Number, 1, planned.ToJson(), by!.Trim());
            return (planned, []);
        }
        catch (LedgerRefusal taken) when (taken.Rule == LedgerRule.KeyTaken)
        {
            return (null, [$"There is a load {planned.Number} already. Open that one, or give another number."]);
        }
    }

    /// <summary>Changes what is planned of a load that has not left: consignee, carrier, trailer, driver, orders, flours.</summary>
    public static (DispatchLoad? Load, IReadOnlyList<string> Faults) Replan(Mill mill, DispatchLoad plan, string? by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(plan);
        var known = Known(mill, plan with { Number = Code(plan.Number) }, by, out var faults);
        if (faults.Count > 0)
        {
            return (null, faults);
        }

        var answer = Change(mill, known.Number, by, load => !load.IsOpen ? new(null, [new(FindingWeight.Stop, "It is over: what was planned of it stays as it was.")])
            : load.IsTanker != known.IsTanker && load.Packages.Count > 0 ? new(null, [new(FindingWeight.Stop, "Take off what stands on it first: a tanker is no trailer.")])
            : new(load with { Day = known.Day, Consignee = known.Consignee, Carrier = known.Carrier, Trailer = known.Trailer, Driver = known.Driver, IsTanker = known.IsTanker, Orders = known.Orders, Planned = known.Planned }, []));
        return (answer.Load, [.. answer.Findings.Select(f => f.Words)]);
    }

    /// <summary>Does an act on the newest version of a load and keeps what comes of it; where another was quicker it is done anew on theirs.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="number">The load.</param>
    /// <param name="by">Who acts.</param>
    /// <param name="act">The act.</param>
    public static LoadAnswer Change(Mill mill, string? number, string? by, Func<DispatchLoad, LoadAnswer> act)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(act);
        var shelf = mill.Papers(DispatchLoad.Kind);
        for (var i = 0; i < Attempts; i++)
        {
            if (shelf.Newest(Code(number)) is not { } paper || !DispatchLoad.TryRead(paper.Json, out var load, out _))
            {
                return new(null, [new(FindingWeight.Stop, $"There is no load {number}. Plan it first.")]);
            }

            var answer = act(load);
            if (answer.Load is not { } then)
            {
                return answer;
            }

            try
            {
                shelf.Keep(paper.Code, paper.Version + 1, then.ToJson(), by!.Trim());
                return answer;
            }
            catch (LedgerRefusal taken) when (taken.Rule == LedgerRule.KeyTaken)
            {
                // Another scanned meanwhile: what they did counts first.
            }
        }

        return new(null, [new(FindingWeight.Stop, "Others act on this load at the same time. Try once more.")]);
    }

    private static string Code(string? number) => (number ?? "").Trim().ToUpperInvariant();

    private static DispatchLoad Known(Mill mill, DispatchLoad load, string? by, out IReadOnlyList<string> faults)
    {
        var place = mill.Ask(view => string.IsNullOrWhiteSpace(load.Consignee) ? null : view.Book.Find(load.Consignee));
        faults =
        [
            .. string.IsNullOrWhiteSpace(by) ? ["Say who you are first: every record carries a name."] : Array.Empty<string>(), .. load.Faults(),
            .. load.Consignee.Trim().Length > 0 && place is not { Kind: PlaceKind.Customer } ? [$"There is no customer {load.Consignee} in the ledger: open its place first."] : Array.Empty<string>(),
        ];
        return place is null ? load : load with { Consignee = place.Code };
    }
}
