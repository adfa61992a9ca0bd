using Evengrist.Bins;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using NodaTime;

namespace Evengrist.Web.Sights.Bins;

/// <summary>Stock and protein of a wheat bin through time.</summary>
/// <param name="Points">Even in time, oldest first; empty where nothing was ever moved.</param>
/// <param name="Soundings">What tapes found, by time.</param>
/// <param name="Events">What began to bar it and when it was proven empty, by time.</param>
public sealed record BinHistory(IReadOnlyList<HistoryPoint> Points, IReadOnlyList<(Instant At, double Tonnes)> Soundings, IReadOnlyList<Happening> Events)
{
    private const int Steps = 240;

    /// <summary>Looks back from a moment.</summary>
    /// <remarks>Protein is that of all that lies there, as if it were stirred: the mean of what came in, by dry matter, which a draw leaves as it is. Grain not read counts for nothing.</remarks>
    public static BinHistory Of(MillView view, Place bin, Instant at)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(bin);
        var book = view.Book;
        Movement[] moved = [.. book.MovementsOf(bin.Id).Select(i => book.Movements[i]).Where(m => m.At <= at && m.Mass > Mass.Zero).OrderBy(m => m.At)];
        if (moved.Length == 0)
        {
            return new BinHistory([], [], []);
        }

        var (first, means) = (moved[0].At, Means(view, bin.Id, moved, at));
        var points = new List<HistoryPoint>();
        for (int i = 0, m = -1; i <= Steps; i++)
        {
            var moment = first + Duration.FromTicks((long)((at - first).BclCompatibleTicks * (i / (double)Steps)));
            while (m + 1 < means.Count && means[m + 1].At <= moment)
            {
                m++;
            }

            points.Add(new HistoryPoint(moment, (double)book.StockOf(bin.Id, moment).Tonnes, m < 0 ? null : means[m].ProteinAt12));
        }

        return new BinHistory(
            points, [.. book.ReadingsOn(bin.Id).Where(r => r.What == Property.SoundedStock && r.At <= at && r.At >= first).Select(r => (r.At, (double)r.Value))],
            [.. book.HappeningsOn(bin.Id).Where(h => h.At <= at && h.At >= first && h.Kind is HappeningKind.Held or HappeningKind.UnderGas or HappeningKind.PersonInside or HappeningKind.Shut or HappeningKind.ProvenEmpty)]);
    }

    private static List<(Instant At, double? ProteinAt12)> Means(MillView view, PlaceId bin, Movement[] moved, Instant at)
    {
        var book = view.Book;
        var reckoning = view.Reckoning(Outflow.FirstInFirstOut);
        var makeup = new MakeupModel(book, reckoning.Parcels);
        var means = new List<(Instant, double?)>();
        double all = 0, dry = 0, protein = 0;
        foreach (var movement in moved)
        {
            double grams = movement.Mass.Grams;
            if (movement.To == bin)
            {
                all += grams;
                if (reckoning.LoadOf(book.IndexOf(movement.Id)) is { } parcel && BlendProtein.Of(makeup.Of(new Layer(parcel, grams)), load => LoadTest.Of(book, load, at)) is { } read)
                {
                    (dry, protein) = (dry + (grams * read.ShareRead), protein + (grams * read.ShareRead * read.PercentDry));
                }
            }
            else
            {
                var stays = all <= 0 ? 0 : Math.Max(0, 1 - (grams / all));
                (all, dry, protein) = (all * stays, dry * stays, protein * stays);
            }

            // Less than a fifth read says nothing of the whole.
            means.Add((movement.At, all > 0 && dry > 0.2 * all ? 0.88 * protein / dry : null));
        }

        return means;
    }
}

/// <summary>A bin at one moment.</summary>
/// <param name="At">The moment.</param>
/// <param name="Tonnes">What the ledger held, t.</param>
/// <param name="ProteinAt12">Protein of it, per cent at 12 % moisture; null where too little was read.</param>
public sealed record HistoryPoint(Instant At, double Tonnes, double? ProteinAt12);
