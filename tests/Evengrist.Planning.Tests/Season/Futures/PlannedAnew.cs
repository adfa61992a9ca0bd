using Evengrist.Planning.Season;
using Evengrist.Season;
using Evengrist.Season.Futures;

namespace Evengrist.Planning.Tests.Season.Futures;

/// <summary>Decides a period of a future by planning the rest of the year anew from what is believed: what the rule of the futures stands in for.</summary>
internal sealed class PlannedAnew(FutureFrame frame)
{
    private const string Later = " later", Kept = " kept";
    private readonly SeasonSpec season = frame.Season;

    /// <summary>What is bought and drawn in the period by the linear plan of the rest of the year; nothing where there is none.</summary>
    public FutureDecision Decide(FutureStand now)
    {
        var outcome = SeasonPlanner.Linear(Rest(now));
        if (outcome is not SeasonPlanned { Plan: var plan })
        {
            throw new InvalidOperationException($"Period {now.Period} has no plan: {(outcome is SeasonBadInput bad ? string.Join(" ", bad.Faults) : outcome)}.");
        }

        var offers = season.Offers.Select((o, i) => (o.Wheat.Code, i)).ToDictionary(o => o.Code, o => o.i);
        var wheats = frame.Wheats.Select((w, k) => (w.Code, k)).ToDictionary(w => w.Code, w => w.k);
        var flours = season.Flours.Select((f, i) => (f.Code, i)).ToDictionary(f => f.Code, f => f.i);
        return new FutureDecision(
            [.. plan.Purchases.Where(p => p.Period == 0 && offers.ContainsKey(p.Offer)).Select(p => (offers[p.Offer], p.Tonnes))],
            [.. plan.Uses.Where(u => u.Period == 0).Select(u => (wheats[u.Wheat.Replace(Kept, "", StringComparison.Ordinal)], flours[u.Flour], u.Tonnes))]);
    }

    private SeasonSpec Rest(FutureStand now)
    {
        var t = now.Period;
        SeasonPeriod[] periods = [.. season.Periods.Skip(t)];
        var wheats = new List<SeasonWheat>();
        for (var k = 0; k < frame.Wheats.Count; k++)
        {
            var (wheat, lies) = (frame.Wheats[k], now.Lying[k]);
            if (lies.Tonnes > 0.01)
            {
                // What was bought lies there as a wheat of its own, so that an offer has no opening.
                wheats.Add(wheat with
                {
                    Code = k < season.Wheats.Count ? wheat.Code : wheat.Code + Kept, OpeningTonnes = Math.Round(lies.Tonnes, 2), MoisturePercent = lies.MoisturePercent, Quality = Believed(wheat, lies.Believed), Layers = [], Deliveries = [],
                });
            }

            if (wheat.Deliveries.Any(d => d.Period > t))
            {
                wheats.Add(wheat with { Code = wheat.Code + Later, OpeningTonnes = 0, Layers = [], Deliveries = [.. wheat.Deliveries.Where(d => d.Period > t).Select(d => d with { Period = d.Period - t })] });
            }
        }

        return season with
        {
            Periods = periods,
            Units = [.. season.Units.Select(u => u with { Hours = [.. u.Hours.Skip(t)] })],
            Wheats = wheats,
            // The store of flour is the same cushion under both: what is to be made good of it is wanted now, and later nothing of it is.
            Flours = [.. season.Flours.Select((f, i) => f with { Demand = [Math.Round(now.Wanted[i], 3), .. f.Demand.Skip(t + 1)], OpeningTonnes = 0, StockLeast = 0, StockMost = Math.Max(0, f.StockMost - f.StockLeast) })],
            Offers = [.. season.Offers.SelectMany((o, i) => Offers(o, i, now, periods.Length))],
        };
    }

    // This period's offer is what has been shown of it; later ones are what is expected.
    private IEnumerable<SeasonOffer> Offers(SeasonOffer offer, int i, FutureStand now, int periods)
    {
        var left = offer.TotalTonnes - now.BoughtTonnes[i];
        if (now.Offered[i] is { } shown)
        {
            yield return offer with { Wheat = offer.Wheat with { Quality = Believed(offer.Wheat, shown) }, First = 0, Last = 0, TotalTonnes = left };
        }

        if (offer.Last > now.Period && periods > 1)
        {
            yield return offer with { Wheat = offer.Wheat with { Code = offer.Wheat.Code + Later }, First = Math.Max(1, offer.First - now.Period), Last = offer.Last - now.Period, TotalTonnes = left };
        }
    }

    private SeasonQuality Believed(SeasonWheat wheat, IReadOnlyList<double> believed)
    {
        var quality = wheat.Quality;
        for (var p = 0; p < believed.Count; p++)
        {
            if (quality.TryGet(frame.Properties[p], out var value) && !double.IsNaN(believed[p]))
            {
                quality = quality.With(frame.Properties[p], value with { Value = Math.Round(SeasonScale.FromScale(frame.Properties[p], believed[p], value.Basis), 4) });
            }
        }

        return quality;
    }
}
