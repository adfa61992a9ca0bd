using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Web.Sights.Bins;
using NodaTime;

namespace Evengrist.Web.Sights;

/// <summary>All bins of one kind, drawn to one scale.</summary>
/// <param name="Title">What they are, in words.</param>
/// <param name="IsFlour">Whether flour lies in them.</param>
/// <param name="Bins">By code.</param>
/// <param name="Scale">Square pixels of one tonne.</param>
/// <param name="KeyTonnes">Tonnes that the little square beside the title stands for.</param>
public sealed record BoardGroup(string Title, bool IsFlour, IReadOnlyList<BinSight> Bins, double Scale, int KeyTonnes);

/// <summary>The bin board at one moment under one hypothesis.</summary>
/// <param name="Groups">Wheat bins, temper bins, flour bins; those that exist.</param>
/// <param name="Legend">Patterns of the districts seen.</param>
public sealed record BoardSight(IReadOnlyList<BoardGroup> Groups, Legend Legend)
{
    private const double TallestArea = 14_000;
    private static readonly int[] Keys = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000];
    private static readonly (PlaceKind Kind, string Title)[] Kinds = [(PlaceKind.Bin, "Wheat bins"), (PlaceKind.TemperBin, "Temper bins"), (PlaceKind.FlourBin, "Flour bins")];

    /// <summary>Looks at every bin.</summary>
    public static BoardSight Of(MillView view, Instant at, Outflow outflow, BinShelf? shelf = null)
    {
        ArgumentNullException.ThrowIfNull(view);
        var sighting = new BinSighting(view, at) { Shelf = shelf };
        var groups = Kinds
            .Select(k => (k.Title, Flour: k.Kind == PlaceKind.FlourBin, Bins: view.Book.OfKind(k.Kind).OrderBy(p => p.Code, StringComparer.OrdinalIgnoreCase)
                .Select(p => k.Kind == PlaceKind.Bin ? sighting.Look(p, outflow) : sighting.Glance(p)).ToArray()))
            .Where(g => g.Bins.Length > 0).Select(g => Group(g.Title, g.Flour, g.Bins)).ToArray();
        return new BoardSight(groups, new Legend(groups.SelectMany(g => g.Bins).SelectMany(b => b.Bands).Select(b => b.Origin)));
    }

    private static BoardGroup Group(string title, bool flour, BinSight[] bins)
    {
        var largest = bins.Max(b => (double)(b.Place.Capacity ?? b.Stock).Tonnes);
        var scale = largest > 0 ? TallestArea / largest : 1;
        return new BoardGroup(title, flour, bins, scale, Keys.LastOrDefault(k => k * scale <= 900, Keys[0]));
    }
}
