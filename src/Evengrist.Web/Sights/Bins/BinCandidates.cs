using Evengrist.Bins;
using Evengrist.Bins.BestBin;
using Evengrist.Intake.Carrying;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using NodaTime;

namespace Evengrist.Web.Sights.Bins;

/// <summary>The wheat bins as they stood at a moment, as a load might go into them.</summary>
internal sealed class BinCandidates
{
    private readonly Book book;
    private readonly BinShelf shelf;
    private readonly TruckLoad load;
    private readonly Instant at;
    private readonly Reckoning reckoning;
    private readonly Snapshot snapshot;
    private readonly MakeupModel makeup;
    private readonly LoadReadings read;

    public BinCandidates(MillView view, BinShelf shelf, TruckLoad load, Instant at)
    {
        (book, this.shelf, this.load, this.at) = (view.Book, shelf, load, at);
        read = new LoadReadings(book, at);
        reckoning = view.Reckoning(Outflow.FirstInFirstOut);
        (snapshot, makeup) = (reckoning.At(at), new MakeupModel(book, reckoning.Parcels));
    }

    public IReadOnlyList<BinCandidate> All()
    {
        var legs = LegsFromPits();
        return [.. book.OfKind(PlaceKind.Bin).OrderBy(b => b.Code, StringComparer.OrdinalIgnoreCase).Select(b => Of(b, [.. legs.Where(l => book.Connections.Contains((l, b.Id)))]))];
    }

    private BinCandidate Of(Place bin, PlaceId[] ways)
    {
        var layers = snapshot.ContentOf(bin.Id).Where(l => l.Grams > 0).ToArray();
        var made = layers.Length == 0 ? null : makeup.Of(layers);
        var band = shelf.BandOf(bin.Code);
        var (protein, quality) = made is null ? (null, null) : (BlendProtein.Of(made, read.Test), BinQuality.Of(made, read.Quality, band));
        var stop = book.BarsOn(bin.Id, at).AgainstIn(bin.Kind);
        return new BinCandidate(bin.Code, bin.Material, Math.Max(0, (double)book.StockOf(bin.Id, at).Tonnes))
        {
            CapacityTonnes = (double?)bin.Capacity?.Tonnes,
            ProteinPercentAt12 = protein?.PercentDry * 0.88,
            DryShare = 1 - ((quality?.MoisturePercent ?? 12) / 100),
            FallingNumber = (double?)quality?.FallingNumber?.Seconds,
            Band = band,
            Purity = quality?.Purity,
            Barred = stop is null ? null : $"{Word(stop.Kind)}: {stop.Words}",
            IsReachable = ways.Length > 0,
            CarryOver = ways.Length == 0 ? null : Carried(ways),
        };
    }

    private static string Word(HappeningKind kind) => kind switch
    {
        HappeningKind.PersonInside => "person inside", HappeningKind.UnderGas => "under gas", HappeningKind.Held => "on hold", HappeningKind.Shut => "shut", _ => "barred",
    };

    // Legs that grain reaches from some pit, over other legs.
    private HashSet<PlaceId> LegsFromPits()
    {
        var reached = new HashSet<PlaceId>(book.OfKind(PlaceKind.Pit).Select(p => p.Id));
        for (var before = 0; before < reached.Count;)
        {
            before = reached.Count;
            reached.UnionWith(book.Connections.Where(c => reached.Contains(c.From) && book[c.To].Kind is PlaceKind.Leg).Select(c => c.To));
        }

        return reached;
    }

    // The route is not chosen yet: of those that lead there, the one with the least of another class in it.
    private (string, double)? Carried(PlaceId[] ways)
    {
        var last = ways.Select(LastClass).ToArray();
        return last.Any(c => c is null || c == load.Class) ? null : (last[0]!, (double)CarryOverModel.Of(Mass.FromTonnes((decimal)load.Tonnes), shelf.CarryOver).Carried.Value);
    }

    private string? LastClass(PlaceId way)
    {
        var gone = book.MovementsOf(way).Where(i => book.Movements[i].From == way && book.Movements[i].At < at && book.Movements[i].Mass > Mass.Zero).ToArray();
        return gone.Length > 0 && gone.MaxBy(i => book.Movements[i].At) is var last && reckoning.LoadOf(last) is { } parcel
            && makeup.Of(new Layer(parcel, book.Movements[last].Mass.Grams)).Loads is [var truck, ..] ? book[truck.Place].Material : null;
    }
}
