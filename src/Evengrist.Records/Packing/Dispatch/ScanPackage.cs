using Evengrist.Packing.Dispatch;

namespace Evengrist.Records.Packing.Dispatch;

/// <summary>Scans a package onto a load, with everything that is known of it at that moment.</summary>
/// <param name="Number">The load.</param>
/// <param name="Code">Code of the pallet or bulk load.</param>
public sealed record ScanPackage(string Number, string Code)
{
    /// <summary>Scans it; what stops it or is asked otherwise.</summary>
    public LoadAnswer In(Mill mill, Act who)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(who);
        if (string.IsNullOrWhiteSpace(Code))
        {
            return new(null, [new(FindingWeight.Stop, "Scan the pallet's label, or type its code.")]);
        }

        var rules = KeepDispatchRules.Newest(mill).Rules;
        return DispatchShelf.Change(mill, Number, who.By, load =>
        {
            var seen = RampPackages.Of(mill, [Code, .. load.Packages.Select(p => p.Code)], who.At, load.Number);
            var findings = ScanModel.Of(load, seen[0], [.. seen.Skip(1)], rules, Consignees.Find(mill, load.Consignee), NamedOrders.Of(mill, load), who.At.InZone(mill.Settings.Zone).Date);
            return LoadActs.Scan(load, seen[0], findings, who);
        });
    }
}
