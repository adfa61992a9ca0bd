using System.Globalization;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>A pallet that stands in the warehouse.</summary>
internal sealed class StandingPallet(string code, Flour flour, Instant at)
{
    public string Code => code;

    public Flour Flour => flour;

    public Instant At => at;

    /// <summary>Until when it may not leave; null where it may.</summary>
    public Instant? NotBefore { get; set; }
}

/// <summary>A packing line: flour flows in from a bin, and a pallet of one tonne comes off whenever a tonne has gone in.</summary>
internal sealed class PackingLine(string code, string packs, PalletNumbers numbers)
{
    public const long PalletGrams = 1_000_000;
    private long left;

    /// <summary>Packs up to so many grams during a stretch; whole pallets only where the run ends with it. Returns what flowed in.</summary>
    /// <param name="scan">The wrapper's count is taken at whole multiples of this; zero for each pallet by itself.</param>
    public long Pack(Desk mill, Desk hall, string bin, Flour flour, long grams, Instant from, Instant until, bool last, Duration scan, List<StandingPallet> store)
    {
        grams = last ? ((left + grams) / PalletGrams * PalletGrams) - left : grams;
        if (grams <= 0)
        {
            return 0;
        }

        mill.Move(bin, code, grams, from, until);
        Wrap(hall, flour, grams, from, until, scan, store);
        return grams;
    }

    /// <summary>Takes off the pallets that so many grams flowing in evenly make.</summary>
    public void Wrap(Desk hall, Flour flour, long grams, Instant from, Instant until, Duration scan, List<StandingPallet> store)
    {
        var before = left;
        for (var flowed = PalletGrams - before; flowed <= grams; flowed += PalletGrams)
        {
            var done = from + Duration.FromSeconds(1 + Math.Ceiling((until - from).TotalSeconds * flowed / grams));
            if (scan > Duration.Zero)
            {
                var steps = (done - Duration.FromSeconds(1) - from).TotalSeconds / scan.TotalSeconds;
                done = from + Duration.FromSeconds(Math.Ceiling(Math.Max(steps, 1e-9)) * scan.TotalSeconds);
            }

            done = done > until ? until : done;
            var pallet = new StandingPallet(numbers.Next(flour, done), flour, done);
            hall.Open(pallet.Code, PlaceKind.Pallet, packs, flour.ToString());
            hall.Move(code, pallet.Code, PalletGrams, done);
            store.Add(pallet);
        }

        left = (before + grams) % PalletGrams;
    }
}

/// <summary>Codes of pallets: flour, day, and a number that starts at 1 with each flour and day.</summary>
internal sealed class PalletNumbers
{
    private readonly Dictionary<(Flour, LocalDate), int> last = [];

    public string Next(Flour flour, Instant at)
    {
        var day = MillCalendar.Wall(at).Date;
        var number = last[(flour, day)] = last.GetValueOrDefault((flour, day)) + 1;
        return string.Create(CultureInfo.InvariantCulture, $"P-{flour}-{day.Year % 100:00}{day.Month:00}{day.Day:00}-{number:0000}");
    }
}
