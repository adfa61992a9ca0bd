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

        return DispatchShelf.Change(mill, Number, who.By, load =>
        {
            var (package, findings) = SeenLoad.Scanned(mill, load, Code, who.At);
            return LoadActs.Scan(load, package, findings, who);
        });
    }
}
