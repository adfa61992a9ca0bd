using Evengrist.Ledger;
using Evengrist.Milling.Balance;
using Evengrist.Records;
using Evengrist.Records.Milling;
using NodaTime;

namespace Evengrist.Web.Sights.Balance;

/// <summary>The balance of a mill over a day or a month, reckoned from its ledger and readings and from what was typed.</summary>
/// <param name="Ask">What was typed.</param>
/// <param name="Sections">Names of the sections that can be chosen.</param>
/// <param name="From">Beginning of the span.</param>
/// <param name="Until">Its end: that of the last milling day, or the moment looked at.</param>
/// <param name="Read">What the ledger and the readings say; null where there is no section or something cannot be read.</param>
/// <param name="Outcome">The balance, or why there is none; null with it.</param>
public sealed record MillBalanceSight(MillBalanceAsk Ask, IReadOnlyList<string> Sections, Instant From, Instant Until, MilledSpan? Read, BalanceOutcome? Outcome)
{
    /// <summary>Name of all sections as one.</summary>
    public const string All = "all";

    /// <summary>Looks.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="typed">What was typed, by field.</param>
    /// <param name="at">The moment looked at.</param>
    public static MillBalanceSight Of(Mill mill, Func<string, string?> typed, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var ask = MillBalanceAsk.Of(typed, mill.Settings, at);
        var (from, end) = ask.Span(mill.Settings);
        var until = Instant.Max(from, Instant.Min(end, at));
        var chosen = ask.Fields.Text("section", All);
        var (sections, read) = mill.Ask(view =>
        {
            var there = MillSection.Of(view.Book);
            var section = chosen == All && there.Count > 0 ? MillSection.Together(there) : there.FirstOrDefault(s => s.Name.Equals(chosen, StringComparison.OrdinalIgnoreCase));
            return (there.Select(s => s.Name).ToArray(), section is null || ask.Fields.Faults.Count > 0 ? null : MilledSpan.Of(view, section, from, until));
        });
        if (sections.Length > 0 && chosen != All && !sections.Contains(chosen, StringComparer.OrdinalIgnoreCase))
        {
            ask.Fields.Fault($"Section: choose {All} or one of {string.Join(", ", sections)}; read “{chosen}”.");
        }

        // Every field is read, so that a form with a fault in it shows again what was typed.
        var spec = Spec(ask, read);
        return new MillBalanceSight(ask, sections, from, until, read, spec is null || ask.Fields.Faults.Count > 0 ? null : BalanceModel.Of(spec));
    }

    private static BalanceSpec? Spec(MillBalanceAsk ask, MilledSpan? read)
    {
        var fields = ask.Fields;
        var (wheat, first, feed) = (ask.Typed("wheat", "Moisture of the wheat"), ask.Typed("first", "Moisture at first break"), ask.Typed("feed", "Moisture of the by-products", MillBalanceAsk.AssumedMoisture, MillBalanceAsk.AssumedMoistureError));
        var (flour, evaporation) = (ask.Typed("flour", "Moisture of the flour"), ask.Typed("air", "Evaporation, %"));
        var (weighed, energy, by) = (fields.Number("weighed", "Wheat weighed before first break, t"), fields.Number("kwh", "Electricity, kWh"), fields.Text("by", ""));
        if (read is null)
        {
            return null;
        }

        var (flows, errors) = (read.Flows, ask.Errors);
        var named = by.Split([',', ' ', ';'], StringSplitOptions.RemoveEmptyEntries);
        foreach (var unknown in named.Where(n => !flows.Products.Any(p => p.To.Code.Equals(n, StringComparison.OrdinalIgnoreCase))))
        {
            fields.Fault($"By-products: nothing went to “{unknown}” in this span.");
        }

        WeighedKind Kind(Place to) => named.Length == 0 ? WeighedKinds.Of(to) : named.Contains(to.Code, StringComparer.OrdinalIgnoreCase) ? WeighedKind.ByProduct : WeighedKind.Flour;
        var flourTonnes = flows.Products.Where(p => Kind(p.To) == WeighedKind.Flour).Sum(p => p.Tonnes);
        WeighedProduct Product(Place to, double tonnes)
        {
            var kind = Kind(to);
            // What was fed in left as flour; it is taken off all flours alike.
            var own = kind == WeighedKind.Flour && flourTonnes > 0 ? tonnes * Math.Max(0, 1 - (flows.FedIn / flourTonnes)) : tonnes;
            return new WeighedProduct(to.Code, kind, Weighed.Of(own, errors.PercentOf(kind)))
            {
                Moisture = read.InBins.TryGetValue(to.Id, out var there) ? there.Mean : kind == WeighedKind.Flour ? flour ?? read.OnTheRolls?.Mean : feed,
            };
        }

        return new BalanceSpec(Weighed.Of(flows.Wheat.Sum(w => w.Tonnes), errors.WheatPercent), [.. flows.Products.Select(p => Product(p.To, p.Tonnes))])
        {
            Screenings = Weighed.Of(flows.Screenings, errors.ScreeningsPercent), Water = Weighed.Of(flows.Water, errors.WaterPercent), TemperRise = new Weighed(flows.Rise, errors.TemperRiseTonnes),
            FirstBreak = weighed is { } w ? Weighed.Of(w, errors.FirstBreakPercent) : null, KilowattHours = energy, Evaporation = evaporation, FirstBreakMoisture = first ?? read.AtFirstBreak?.Mean,
            WheatMoisture = wheat ?? (read.Wheat is { MoisturePercent: { } percent } drawn ? new MeanMoisture(percent, drawn.MoistureUncertainty ?? errors.MoisturePoints) : null),
        };
    }
}
