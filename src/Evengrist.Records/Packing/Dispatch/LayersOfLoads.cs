using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;
using Evengrist.Quantities;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Records.Packing.Dispatch;

/// <summary>What the loose loads of a tanker were made of, under each way a flour bin may empty.</summary>
public static class LayersOfLoads
{
    /// <summary>Each loose load that stands on it, with its mass and its layers under each hypothesis; none for a trailer of pallets.</summary>
    public static IReadOnlyList<(string Package, Mass Mass, IReadOnlyList<TankerLayers> Each)> Of(Mill mill, DispatchLoad load, Instant asOf)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(load);
        var settings = mill.Settings;
        var lots = new FlourLots(KeepReleaseRules.Newest(mill).Rules, settings.Zone, settings.DayStart);
        return [.. load.Packages.Select(p => mill.Ask(view => Of(view, p.Code, asOf, lots))).OfType<(string, Mass, IReadOnlyList<TankerLayers>)>()];
    }

    private static (string Package, Mass Mass, IReadOnlyList<TankerLayers> Each)? Of(MillView view, string code, Instant asOf, FlourLots lots)
    {
        if (view.Book.Find(code) is not { Kind: PlaceKind.BulkLoad } place)
        {
            return null;
        }

        TankerLayers[] each = [.. OutflowWords.All.Select(o => TankerLayers.Of(view.Book, view.Reckoning(o), place.Id, asOf, lots.PartBegin)).OfType<TankerLayers>()];
        return each.Length > 0 ? (code, view.Book.ThroughputOf(place.Id, asOf).In, each) : null;
    }
}
