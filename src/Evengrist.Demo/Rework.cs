using System.Globalization;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>Pallets that are not sold as they are: emptied into a tote, and the tote fed back into the same flour some days later.</summary>
internal sealed class Rework(Desk ramp)
{
    private static readonly Duration Waits = Duration.FromDays(6);
    private readonly List<(string Tote, Flour Flour, long Grams, Instant From)> waiting = [];
    private readonly List<(IReadOnlyList<StandingPallet> Pallets, Instant At)> released = [];

    /// <summary>Pallets that go into a tote at a moment, after their release for it.</summary>
    public void Take(IReadOnlyList<StandingPallet> pallets, Instant at) => released.Add((pallets, at));

    /// <summary>Empties what has been released by the end of a day.</summary>
    public void Day(LocalDate day)
    {
        foreach (var (pallets, at) in released.Where(r => MillCalendar.Wall(r.At).Date == day))
        {
            var tote = string.Create(CultureInfo.InvariantCulture, $"R-{day.Year % 100:00}{day.Month:00}{day.Day:00}-{waiting.Count + 1}");
            ramp.Open(tote, PlaceKind.ReworkTote, "rework", pallets[0].Flour.ToString());
            foreach (var pallet in pallets)
            {
                ramp.Move(pallet.Code, tote, PackingLine.PalletGrams, at);
            }

            waiting.Add((tote, pallets[0].Flour, pallets.Count * PackingLine.PalletGrams, at + Waits));
        }

        released.RemoveAll(r => MillCalendar.Wall(r.At).Date == day);
    }

    /// <summary>Feeds back what waits for a flour; the grams.</summary>
    public long Feed(Desk mill, Flour flour, string bin, Instant at)
    {
        var ready = waiting.Where(w => w.Flour == flour && w.From <= at).ToList();
        foreach (var (tote, _, grams, _) in ready)
        {
            mill.Move(tote, bin, grams, at);
        }

        waiting.RemoveAll(ready.Contains);
        return ready.Sum(r => r.Grams);
    }
}
