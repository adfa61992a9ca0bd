using Evengrist.Packing.Lines;
using Evengrist.Packing.Orders;
using Evengrist.Packing.Products;
using Evengrist.Packing.Runs;
using NodaTime;

namespace Evengrist.Packing.Boards;

/// <summary>Makes an order of runs to be found out of what the records say. Model: docs/model/run-order.md.</summary>
public static class RunPosing
{
    private const int CrewDays = 15, MostHours = 14 * 24;

    /// <summary>The runs: one for each order with anything left to pack, whose product has an approved label and a line that makes it.</summary>
    public static PosedRuns Of(RunQuestion asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        var products = asked.Products.ToDictionary(p => p.Code, StringComparer.OrdinalIgnoreCase);
        List<LeftOut> leftOut = [];
        List<(OrderStanding Order, PackingRun Run)> runs = [];
        foreach (var order in asked.Orders.Where(o => !o.Order.IsCancelled && o.State is not (OrderState.Packed or OrderState.Shipped)).OrderBy(o => o.Order.Taken).ThenBy(o => o.Order.Number, StringComparer.Ordinal))
        {
            if (WhyNot(asked, order) is { } why)
            {
                leftOut.Add(new(order.Order.Number, why));
            }
            else
            {
                runs.Add((order, Run(asked, order)));
            }
        }

        // A plan takes so many: those due first.
        foreach (var (order, _) in runs.OrderBy(r => r.Order.Order.Due).Skip(RunOrderSpec.MostRuns).ToArray())
        {
            leftOut.Add(new(order.Order.Number, $"A plan has at most {RunOrderSpec.MostRuns} runs, and others are due before it."));
            runs.RemoveAll(r => r.Order == order);
        }

        var named = ProductChanges.Named(runs.Select(r => r.Run.Flour).Concat(asked.Lines.Select(l => l.LastProduct).OfType<string>()), products);
        var spec = new RunOrderSpec([.. runs.Select(r => r.Run)], [.. asked.Book.Lines.Select(l => Line(asked, l))], ProductChanges.Of(asked.Book, named))
        {
            Allergens = named.Where(n => products.ContainsKey(n.Code)).ToDictionary(n => n.Code, n => products[n.Code].AllergensBeyondWheat),
            MayCleanDown = asked.Book.MayCleanDown, Costs = asked.Book.Costs, Crew = [.. Crew(asked)],
            Bins = [.. asked.Bins.Where(b => runs.Any(r => r.Run.Bin == b.Code)).Select(b => Bin(asked, b))],
        };
        return new(asked.Start, spec, [.. runs.Select(r => r.Order)], leftOut);
    }

    private static string? WhyNot(RunQuestion asked, OrderStanding order) =>
        order.Product is not { } product ? $"There is no product {order.Order.Product}."
        : product.Label is null ? $"{product.Code} has no approved label: a named person approves one among the products."
        : asked.Book.Lines.All(l => l.Of(product.Code) is null) ? $"No line makes {product.Code}: say among the lines which one does, and how fast."
        : asked.Book.Lines.All(l => l.Of(product.Code) is null || BinOf(asked, l, product) is null) ? $"No bin with {product.Flour} is connected to a line that makes {product.Code}."
        : order.Order.Due > asked.Start + Duration.FromMinutes(RunOrderSpec.MostMinutes) ? $"It is due more than {RunOrderSpec.MostMinutes / 60 / 24} days after the start."
        : order.Remaining.Tonnes > 10_000 ? "More than 10,000 t are left of it: part the order." : null;

    private static PackingRun Run(RunQuestion asked, OrderStanding order)
    {
        var product = order.Product!;
        var tonnes = (double)order.Remaining.Tonnes;
        var lines = asked.Book.Lines.Where(l => l.Of(product.Code) is not null && BinOf(asked, l, product) is not null).ToArray();
        var bin = BinOf(asked, lines[0], product)!;
        var places = lines.Where(l => BinOf(asked, l, product) == bin).Select(l => new RunPlace(l.Code, Math.Max(1, (int)Math.Ceiling(60 * tonnes / l.Of(product.Code)!.TonnesPerHour)))).ToArray();
        return new(order.Order.Number, product.Code, tonnes, Math.Max(0, Minute(asked, order.Order.Due)), places) { Weight = order.Order.Priority, Bin = bin.Code, Locked = Lock(asked, order, places) };
    }

    // What is locked stays at its hour; what is under way on its line goes on there first.
    private static RunLock? Lock(RunQuestion asked, OrderStanding order, IReadOnlyList<RunPlace> places)
    {
        if (asked.Kept?.Runs.FirstOrDefault(r => r.Order == order.Order.Number) is not { } kept || places.All(p => p.Line != kept.Line))
        {
            return null;
        }

        var isUnderWay = kept.From < asked.Start && kept.Until > asked.Start && asked.Lines.Any(l => l.Code == kept.Line && l.LastProduct == kept.Product);
        return isUnderWay ? new(kept.Line, 0) : kept.IsLocked && kept.From >= asked.Start ? new(kept.Line, Minute(asked, kept.From)) : null;
    }

    private static BinNow? BinOf(RunQuestion asked, LineTerms line, Product product) => line.Of(product.Code)?.Bin is { } named
        ? asked.Bins.FirstOrDefault(b => b.Code.Equals(named, StringComparison.OrdinalIgnoreCase))
        : asked.Bins.FirstOrDefault(b => b.Flour.Equals(product.Flour, StringComparison.OrdinalIgnoreCase) && b.Lines.Contains(line.Code));

    private static PackingLine Line(RunQuestion asked, LineTerms line) => new(line.Code) { Crew = line.Crew, LastFlour = asked.Lines.FirstOrDefault(l => l.Code == line.Code)?.LastProduct };

    private static FlourBin Bin(RunQuestion asked, BinNow bin) => new(bin.Code, Math.Max(0, bin.Tonnes), Math.Max(bin.Capacity, bin.Tonnes), [.. asked.Campaigns.Campaigns.Where(c => c.Bin.Equals(bin.Code, StringComparison.OrdinalIgnoreCase))
        .Select(c => new Inflow(Math.Max(0, Minute(asked, c.From)), Math.Min(MostHours * 60, Minute(asked, c.Until)), c.TonnesPerHour)).Where(i => i.Until > i.From)]);

    private static IEnumerable<CrewShift> Crew(RunQuestion asked) => asked.Book.Shifts
        .SelectMany(s => s.On(asked.Start.InZone(asked.Zone).Date.PlusDays(-1), CrewDays, asked.Zone).Select(t => (From: Math.Max(0, Minute(asked, t.From)), Until: Minute(asked, t.Until), s.People)))
        .Where(s => s.Until > s.From).Select(s => new CrewShift(s.From, s.Until, s.People)).OrderBy(s => s.From);

    private static int Minute(RunQuestion asked, Instant at) => (int)Math.Floor((at - asked.Start).TotalMinutes);
}
