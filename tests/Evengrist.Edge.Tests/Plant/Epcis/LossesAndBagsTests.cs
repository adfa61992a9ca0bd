using System.Text;
using Evengrist.Intake;
using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Packing.Products;
using Evengrist.Plant.Epcis;
using Evengrist.Plant.Epcis.Writing;
using Evengrist.Quantities;
using Evengrist.Tests;
using NodaTime;

namespace Evengrist.Edge.Tests.Plant.Epcis;

/// <summary>What is lost, counted, unpacked, and what bags lie on a pallet. Words: the definitions of CBV 2.0 (machine-readable vocabulary of the standard): stock_taking counts objects, other is a step that none of the values names, unpacking takes out of a larger container.</summary>
public sealed class LossesAndBagsTests
{
    private const string Gtin = "09521234001010";
    private static readonly Instant Begin = Instant.FromUtc(2025, 6, 1, 0, 0), End = Instant.FromUtc(2025, 7, 1, 0, 0);
    private static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["Europe/Paris"];

    [OpenDataFact]
    public void Write_LossesAndCounts_AreToldToTheGramAndNothingIsUsedThatDidNotCome()
    {
        var book = SmallMill.Book();
        book.Append(book.ToFacts(
            [
                new OpenPlace("s", "SHORT-2", PlaceKind.Shortage), new OpenPlace("g", "GAIN-2", PlaceKind.Gain, "", "hard winter"),
                new Move("m", "S3", "SHORT-2", Mass.FromKilograms(40), End - Duration.FromHours(3)), new Move("n", "GAIN-2", "S1", Mass.FromKilograms(15), End - Duration.FromHours(2)),
                new Happen("d", "25-0001", End - Duration.FromHours(1), HappeningKind.Decided, Happening.TextOf("Set aside.", new LoadDecision(LoadDecisionKind.SetAside).ToJson())),
            ], "Ada", "count", End));
        var text = Written(book, []);
        Assert.Empty(BundledSchema.Faults(text));
        var all = EpcisFiles.Read(text);
        Assert.Empty(all.Faults);
        var events = all.Value.Events;

        // Every loss of the ledger, with the water in it, to the gram.
        var lost = events.Where(e => e.Step == "other").ToList();
        Assert.NotEmpty(lost);
        Assert.Equal(book.Movements.Where(m => book[m.To].Kind == PlaceKind.Loss).Sum(m => m.Mass.Kilograms), lost.Sum(e => Sum(e, "quantityList") + Number(e, "mill:waterKilograms")));
        Assert.All(lost, e => Assert.Equal(("DELETE", "unknown"), (Text(e, "action"), e.Disposition)));
        Assert.Equal([("ADD", 12000m), ("DELETE", 40m), ("ADD", 15m)], events.Where(e => e.Step == "stock_taking").Select(e => (Text(e, "action"), Sum(e, "quantityList"))));
        Assert.Contains(events, e => e is { Step: "holding", Disposition: "non_sellable_other" } && e.Things.Single().EndsWith(":25-0001", StringComparison.Ordinal));

        // By what stands in the document alone: no lot gives more than came of it.
        var left = new Dictionary<string, decimal>();
        foreach (var (told, list, sign) in events.SelectMany(e => Flows(e).Select(f => (e, f.List, f.Sign))))
        {
            foreach (var (lot, kilograms) in Quantities(told, list))
            {
                left[lot] = left.GetValueOrDefault(lot) + (sign * kilograms);
            }
        }

        Assert.All(left, l => Assert.True(l.Value >= -0.01m, $"{l.Key}: {l.Value}"));
    }

    [OpenDataFact]
    public void Write_Pallet_TellsItsBagsByTheLotPrintedOnThem()
    {
        var book = SmallMill.Book();
        var pallet = book.Named("P-0001");
        var product = new Product("BF-25", "Bread flour", pallet.Material, PackKind.Bag, 25_000) { PackedAs = pallet.Name, PackGtin = Gtin };
        var lots = new FlourLots(ReleaseRules.Start, Zone, new LocalTime(6, 0));
        var lot = lots.CodeOf(book, pallet);
        Assert.NotEmpty(lot);
        var text = Written(book, [product], lots);
        Assert.Empty(BundledSchema.Faults(text));
        var all = EpcisFiles.Read(text);
        Assert.Empty(all.Faults);
        var stacked = all.Value.Events.Single(e => e.Type == "AggregationEvent" && e.Things[0].EndsWith(":P-0001", StringComparison.Ordinal));
        var bags = Assert.Single(stacked.Json.GetProperty("childQuantityList").EnumerateArray());
        Assert.Equal($"https://id.gs1.org/01/{Gtin}/10/{lot}", bags.GetProperty("epcClass").GetString());
        Assert.Equal(40, bags.GetProperty("quantity").GetInt32()); // 1000 kg of 25 kg
        Assert.False(bags.TryGetProperty("uom", out _)); // a count has no unit
        Assert.Equal(1000, Number(stacked, "mill:kilograms"));
        var made = all.Value.Events.Single(e => e.Type == "TransformationEvent" && Text(e, "transformationID").EndsWith(":P-0001", StringComparison.Ordinal));
        Assert.Equal(bags.GetRawText(), made.Json.GetProperty("outputQuantityList")[0].GetRawText());
        Assert.Equal(1000, Sum(made, "inputQuantityList"));

        // Without a trade item number the bags go by the mill's own name; a pallet of no whole bags goes by kilograms.
        Assert.Contains($":bags:BF-25-{Uri.EscapeDataString(lot)}\"", Written(book, [product with { PackGtin = "" }], lots), StringComparison.Ordinal);
        var odd = EpcisFiles.Read(Written(book, [product with { PackGrams = 30_000 }], lots)).Value.Events.First(e => e.Type == "AggregationEvent");
        Assert.Equal("KGM", odd.Json.GetProperty("childQuantityList")[0].GetProperty("uom").GetString());
    }

    [OpenDataFact]
    public void Write_PalletsOpenedIntoATote_AreUnpackedAndTheToteIsFilledOnce()
    {
        var book = SmallMill.Book();
        var at = End - Duration.FromHours(3);
        var pallet = book.Named("P-0002");
        book.Append(book.ToFacts([new OpenPlace("t", "T-1", PlaceKind.ReworkTote, "", pallet.Material), new Move("a", "P-0002", "T-1", Mass.FromKilograms(400), at), new Move("b", "P-0003", "T-1", Mass.FromKilograms(400), at)], "Ada", "rework", End));
        var product = new Product("BF-25", "Bread flour", pallet.Material, PackKind.Bag, 25_000) { PackedAs = pallet.Name, PackGtin = Gtin };
        var text = Written(book, [product], new FlourLots(ReleaseRules.Start, Zone, new LocalTime(6, 0)));
        Assert.Empty(BundledSchema.Faults(text));
        var events = EpcisFiles.Read(text).Value.Events;
        Assert.Equal(events.Count, events.Select(e => e.Hash).Distinct().Count());
        var opened = events.Where(e => e.Step == "unpacking").ToList();
        Assert.Equal([("DELETE", 16), ("DELETE", 16)], opened.Select(e => (Text(e, "action"), e.Json.GetProperty("childQuantityList")[0].GetProperty("quantity").GetInt32())));
        Assert.Equal(["P-0002", "P-0003"], opened.Select(e => e.Things[0].Split(':')[^1]).Order(StringComparer.Ordinal));
        var filled = Assert.Single(events, e => e is { Type: "AggregationEvent" } && e.Things[0].EndsWith(":T-1", StringComparison.Ordinal));
        Assert.Equal(800, Sum(filled, "childQuantityList"));
    }

    private static IEnumerable<(string List, int Sign)> Flows(EpcisEvent told) => told.Type switch
    {
        "TransformationEvent" => [("inputQuantityList", -1), ("outputQuantityList", 1)],
        "ObjectEvent" when Text(told, "action") is "ADD" or "DELETE" => [("quantityList", Text(told, "action") == "ADD" ? 1 : -1)],
        _ => [],
    };

    private static string Written(Book book, IReadOnlyList<Product> products, FlourLots? lots = null)
    {
        var reckoning = new Reckoning(book, Outflow.FirstInFirstOut);
        reckoning.CatchUp();
        using var stream = new MemoryStream();
        new MillDocument(book, reckoning, "Small Mill", Zone, MillKeys.None, []) { Products = products, FlourLots = lots }.Write(stream, Begin, End);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static string Text(EpcisEvent told, string name) => told.Json.GetProperty(name).GetString()!;

    private static decimal Number(EpcisEvent told, string name) => told.Json.TryGetProperty(name, out var number) ? number.GetDecimal() : 0;

    private static decimal Sum(EpcisEvent told, string list) => Quantities(told, list).Sum(q => q.Kilograms);

    private static IEnumerable<(string Lot, decimal Kilograms)> Quantities(EpcisEvent told, string list) =>
        told.Json.TryGetProperty(list, out var all) ? all.EnumerateArray().Select(q => (q.GetProperty("epcClass").GetString()!, q.GetProperty("quantity").GetDecimal())) : [];
}
