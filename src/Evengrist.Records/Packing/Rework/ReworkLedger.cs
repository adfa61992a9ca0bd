using Evengrist.Ledger;
using Evengrist.Packing.Products;
using Evengrist.Packing.Rework;
using Evengrist.Quantities;
using Evengrist.Tracing;
using NodaTime;

namespace Evengrist.Records.Packing.Rework;

/// <summary>Totes of the ledger as they stand, with what they were made of: allergens of any part mark the whole tote, and what is enriched is reckoned from the premix in it.</summary>
public static class ReworkLedger
{
    /// <summary>Every tote that anything had come into by a moment, those with something in them first, the oldest first.</summary>
    public static IReadOnlyList<SeenTote> Of(Mill mill, Instant at)
    {
        return See(mill, at, book => book.OfKind(PlaceKind.ReworkTote));
    }

    /// <summary>One tote; null where the ledger has none of the code with anything in its past.</summary>
    public static SeenTote? Find(Mill mill, string code, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return See(mill, at, book => book.Find(code?.Trim() ?? "") is { Kind: PlaceKind.ReworkTote } place ? [place] : []) is [var tote] ? tote : null;
    }

    /// <summary>Every tote with something in it, with its age, counted from when the first of it came in; what it was made of is not traced.</summary>
    public static IReadOnlyList<(Place Tote, double Days, double Kilograms)> Ages(Mill mill, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Ask(view => view.Book.OfKind(PlaceKind.ReworkTote)
            .Select(p => (Tote: p, Stock: view.Book.StockOf(p.Id, at), Since: view.Book.MovementsOf(p.Id).Select(i => view.Book.Movements[i]).Where(m => m.To == p.Id && m.At <= at && m.Mass > Mass.Zero).Select(m => (Instant?)m.At).FirstOrDefault()))
            .Where(t => t.Stock > Mass.Zero && t.Since is not null).Select(t => (t.Tote, (at - t.Since!.Value).TotalDays, (double)t.Stock.Kilograms)).OrderByDescending(t => t.TotalDays).ToArray());
    }

    /// <summary>A run of a flour as the records know it: its label's allergens, whether it is enriched, and its flow over the last day in which it was made; null flow where it was not.</summary>
    public static ReworkRun Run(Mill mill, string flour, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        Product[] products = [.. Products.Newest(mill).Select(p => p.Product).Where(p => p.Flour.Equals(flour, StringComparison.OrdinalIgnoreCase))];
        var from = at - Duration.FromHours(24);
        var (tonnes, hours) = mill.Ask(view =>
        {
            Movement[] made = [.. view.Book.OfKind(PlaceKind.FlourBin).Where(b => b.Material.Equals(flour, StringComparison.OrdinalIgnoreCase)).SelectMany(b => view.Book.MovementsOf(b.Id).Select(i => view.Book.Movements[i])
                .Where(m => m.To == b.Id && m.IsFlow && m.Until > from && m.At < at && view.Book[m.From].Kind == PlaceKind.MillUnit))];
            return (made.Sum(m => m.TonnesWithin(from, at)), made.Sum(m => (Instant.Min(m.Until, at) - Instant.Max(m.At, from)).TotalHours));
        });
        return new(flour.Trim().ToUpperInvariant()) { Allergens = [.. products.SelectMany(p => p.AllergensBeyondWheat).Distinct(StringComparer.OrdinalIgnoreCase)], IsEnriched = products.Any(p => p.Enriched), TonnesPerHour = hours > 0 && tonnes > 0 ? tonnes / hours : null };
    }

    internal static Dictionary<string, ToteRecord> Records(Mill mill) =>
        mill.Papers(ToteRecord.Kind).NewestOfEach().Read<ToteRecord>(ToteRecord.TryRead).Where(r => !r.Value.IsStruck).ToDictionary(r => r.Paper.Code, r => r.Value, StringComparer.OrdinalIgnoreCase);

    private static SeenTote[] See(Mill mill, Instant at, Func<Book, IEnumerable<Place>> which)
    {
        var (rules, records) = (KeepReworkRules.Newest(mill).Rules, Records(mill));
        Product[] products = [.. Products.Newest(mill).Select(p => p.Product)];
        return mill.Ask(view => which(view.Book).Select(place => See(view, place, records, rules, products, at)).OfType<SeenTote>().OrderBy(t => t.Tote.Grams > 0 ? 0 : 1).ThenBy(t => t.Since).ToArray());
    }

    private static SeenTote? See(MillView view, Place place, Dictionary<string, ToteRecord> records, ReworkRules rules, Product[] products, Instant at)
    {
        var book = view.Book;
        Movement[] all = [.. book.MovementsOf(place.Id).Select(i => book.Movements[i]).Where(m => m.At <= at && m.Mass > Mass.Zero)];
        Movement[] into = [.. all.Where(m => m.To == place.Id)];
        if (into.Length == 0)
        {
            return null;
        }

        var record = records.GetValueOrDefault(place.Code) is { } said && said.At <= at ? said : null;
        string[] flours = [.. into.Select(m => book[m.From].Material).Where(f => f.Length > 0).Append(place.Material).Where(f => f.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase)];
        var roots = view.Tracer().Roots(new TraceQuestion(place.Code) { AsOf = at });
        var additives = roots.Roots.Where(r => r.Origin.Kind == PlaceKind.AdditiveLot && r.Share.Most > 0).ToArray();
        bool Is(Root root, string additive) => root.Origin.Material.Equals(additive, StringComparison.OrdinalIgnoreCase);
        double Enriched(int hypothesis) => Math.Min(1, rules.Premixes.Sum(p => additives.Where(r => Is(r, p.Additive)).Sum(r => r.Share.Each[hypothesis]) * 1e6 / p.GramsPerTonne));
        double[] each = [.. Enumerable.Range(0, roots.Nothing is null ? roots.Beliefs.Count : 0).Select(Enriched)];
        string[] allergens =
        [
            .. into.SelectMany(m => Product.On(products, book[m.From])?.AllergensBeyondWheat ?? []).Concat(rules.Carriers.Where(c => additives.Any(r => Is(r, c.Additive))).SelectMany(c => c.Allergens)).Concat(record?.Allergens ?? []).Distinct(StringComparer.OrdinalIgnoreCase),
        ];
        var tote = new ReworkTote(place.Code, place.Material.Length > 0 ? place.Material : flours.FirstOrDefault() ?? "", book.StockOf(place.Id, at).Grams, (at - into[0].At).TotalDays)
        {
            AlsoOf = [.. flours.Where(f => !f.Equals(place.Material, StringComparison.OrdinalIgnoreCase)).Skip(place.Material.Length > 0 ? 0 : 1)], Allergens = allergens, LeastEnriched = each.Length > 0 ? each.Min() : 0, MostEnriched = each.Length > 0 ? each.Max() : 0,
            Reason = record?.Reason ?? "", Hold = book.HoldOn(place.Id, at)?.Words ?? "",
        };
        return new(tote, into[0].At, record, into, [.. all.Where(m => m.From == place.Id)]);
    }
}
