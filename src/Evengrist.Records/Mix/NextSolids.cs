using Evengrist.Bins;
using Evengrist.Ledger;
using Evengrist.Records.Season;
using NodaTime;

namespace Evengrist.Records.Mix;

/// <summary>Ash, gluten and toxins of the wheat that leaves each bin next, from the readings on the trucks: the same first layer that a plan of the year takes.</summary>
public static class NextSolids
{
    /// <summary>Reads them, by code of the bin.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<BlendSolids>> Of(MillView view, Instant at)
    {
        ArgumentNullException.ThrowIfNull(view);
        var reckoning = view.Reckoning(Outflow.FirstInFirstOut);
        var (snapshot, makeup) = (reckoning.At(at), new MakeupModel(view.Book, reckoning.Parcels));
        return view.Book.OfKind(PlaceKind.Bin).Select(b => (b.Code, Layers: snapshot.ContentOf(b.Id).Where(l => l.Grams > 0).ToArray())).Where(b => b.Layers.Length > 0)
            .ToDictionary(b => b.Code, b => BlendSolids.Of(makeup.Of(SeasonStocks.Parts(b.Layers).First()), load => view.Book.ReadingsOn(load).Where(r => r.At <= at)), StringComparer.OrdinalIgnoreCase);
    }
}
