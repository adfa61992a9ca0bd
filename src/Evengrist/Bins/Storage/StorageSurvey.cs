using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Bins.Storage;

/// <summary>Goes through the wheat bins at a moment and judges what lies in them.</summary>
/// <remarks>
/// Layers are those of the snapshot's hypothesis of outflow, put together where they lie on each other and came within two weeks, up to an eighth
/// of the bin [design]. Under first in first out a layer has sunk by what was drawn since a reading; under the other hypotheses it is taken to lie still.
/// One survey is for one thread and one snapshot. Model: docs/model/safe-storage.md.
/// </remarks>
/// <param name="snapshot">What lies where.</param>
/// <param name="makeup">What it is made up of.</param>
/// <param name="book">The book both follow.</param>
/// <param name="table">Equilibrium constants.</param>
public sealed class StorageSurvey(Snapshot snapshot, MakeupModel makeup, Book book, EmcTable table)
{
    private const int Slabs = 8;
    private const int ThinnestPart = 32;
    private static readonly Duration OneTime = Duration.FromDays(14), OneRound = Duration.FromHours(12);
    private readonly Dictionary<PlaceId, LoadState> loads = [];

    /// <summary>Heights in a bin where its shape is known; null where it is not.</summary>
    public Func<Place, BinLevels?> Shape { get; init; } = _ => null;

    /// <summary>Every wheat bin in which anything lies, the ones to look at first in front.</summary>
    public IReadOnlyList<BinRisk> All()
    {
        Place[] bins = [.. book.OfKind(PlaceKind.Bin).Where(b => book.StockOf(b.Id, snapshot.At).Grams > 0)];
        return BinRisk.Ranked(bins.Select(Of));
    }

    /// <summary>One bin.</summary>
    public BinRisk Of(Place bin)
    {
        ArgumentNullException.ThrowIfNull(bin);
        return BinRisk.Of(Stored(bin), table.OfClass(bin.Material), snapshot.At);
    }

    private double? Season => field ??= CableModel.Season(book.OfKind(PlaceKind.Bin).SelectMany(b => CableModel.Of(CableReading.Of(book, b.Id, snapshot.At), null)));

    private StoredBin Stored(Place bin)
    {
        var cables = CableReading.Of(book, bin.Id, snapshot.At);
        var levels = Shape(bin) ?? BinLevels.Straight(bin, cables);
        return new StoredBin(bin, [.. LayersOf(bin, cables, levels)], CableModel.Of(cables, Season))
        {
            CarbonDioxide = CarbonDioxideTrend.Of(book, bin.Id, snapshot.At),
            LastAerated = book.HappeningsOn(bin.Id).LastOrDefault(h => h.Kind == HappeningKind.Aerated && h.At <= snapshot.At),
            Insects = InsectCheck.Of(book, bin.Id, snapshot.At),
            LevelsBy = levels?.Words ?? "no cable and no shape are known: no heights",
        };
    }

    private IEnumerable<StoredLayer> LayersOf(Place bin, IReadOnlyList<CableReading> cables, BinLevels? levels)
    {
        var drawnNow = book.ThroughputOf(bin.Id, snapshot.At).Out.Grams;
        (Instant At, double Sunk, CableReading[] Points)[] rounds = levels is null ? [] :
        [
            .. Rounds(cables).Select(r => (r[0].At, snapshot.Outflow == Outflow.FirstInFirstOut ? drawnNow - book.ThroughputOf(bin.Id, r[0].At).Out.Grams : 0.0, r)),
        ];
        var below = 0.0;
        foreach (var slab in Gathered(bin))
        {
            var (from, grams) = (below, slab.Sum(l => l.Grams));
            below += grams;
            yield return Layer(slab, grams) with
            {
                Metres = levels is null ? null : (levels.MetresOf(from / 1e6), levels.MetresOf(below / 1e6)),
                Read = [.. rounds.Select(r => new TemperatureAt(r.At, Nearest(r.Points, levels!.MetresOf((((from + below) / 2) + r.Sunk) / 1e6))))],
            };
        }
    }

    private StoredLayer Layer(List<Layer> slab, double grams)
    {
        var made = makeup.Of(slab);
        var read = made.Loads.Select(l => (l.Grams, State: StateOf(l.Place))).ToArray();
        var moist = read.Where(r => r.State.MoisturePercent is not null).ToArray();
        var warm = read.Where(r => r.State.Celsius is not null).ToArray();
        var since = snapshot.Parcels[slab[0].Parcel].From;
        var later = slab.Sum(l => l.Grams * (snapshot.Parcels[l.Parcel].From - since).TotalDays) / grams;
        return new StoredLayer(grams / 1e6, since + Duration.FromDays(later), Mean(moist, s => s.MoisturePercent!.Value), Mean(warm, s => s.Celsius!.Value), [])
        {
            ShareRead = Math.Min(1, moist.Sum(r => r.Grams) / grams),
            MoistestPercent = moist.Length == 0 ? null : moist.Max(r => r.State.MoisturePercent),
        };
    }

    // Layers that lie on each other and came at one time are judged together, up to an eighth of the bin.
    private IEnumerable<List<Layer>> Gathered(Place bin)
    {
        Layer[] layers = [.. snapshot.ContentOf(bin.Id).Where(l => l.Grams > 0)];
        var most = layers.Sum(l => l.Grams) / Slabs;
        var slab = new List<Layer>();
        var grams = 0.0;
        foreach (var layer in layers)
        {
            var apart = slab.Count > 0 && Duration.FromDays(Math.Abs((snapshot.Parcels[layer.Parcel].From - snapshot.Parcels[slab[^1].Parcel].From).TotalDays)) > OneTime;
            if (slab.Count > 0 && (grams + (layer.Grams / 2) > most || (apart && grams > most * Slabs / ThinnestPart)))
            {
                yield return slab;
                (slab, grams) = ([], 0);
            }

            slab.Add(layer);
            grams += layer.Grams;
        }

        if (slab.Count > 0)
        {
            yield return slab;
        }
    }

    private static IEnumerable<CableReading[]> Rounds(IReadOnlyList<CableReading> cables)
    {
        for (var i = 0; i < cables.Count;)
        {
            var round = cables.Skip(i).TakeWhile(c => c.At - cables[i].At < OneRound).ToArray();
            yield return round;
            i += round.Length;
        }
    }

    // Of points equally near the warmest counts.
    private static double Nearest(CableReading[] points, double metres) =>
        points.OrderBy(p => Math.Round(Math.Abs((double)p.Point.Metres - metres), 6)).ThenByDescending(p => p.Celsius).First().Celsius;

    private static double? Mean((double Grams, LoadState State)[] read, Func<LoadState, double> value) =>
        read.Length == 0 ? null : read.Sum(r => r.Grams * value(r.State)) / read.Sum(r => r.Grams);

    private LoadState StateOf(PlaceId load)
    {
        if (!loads.TryGetValue(load, out var state))
        {
            loads.Add(load, state = LoadState.Of(book, load, snapshot.At));
        }

        return state;
    }
}
