using System.Text;
using Evengrist.Intake;
using Evengrist.Intake.Sampling;
using Evengrist.Ledger;
using Evengrist.Plant.Epcis;
using Evengrist.Plant.Epcis.Writing;
using Evengrist.Quantities;
using Evengrist.Tests;
using Evengrist.Tracing;
using NodaTime;

namespace Evengrist.Edge.Tests.Plant.Epcis;

/// <summary>What the small mill of the samples writes, read back and held against other people's schema, our own rules and the tracer.</summary>
public sealed class MillDocumentTests
{
    private static readonly Instant Begin = Instant.FromUtc(2025, 6, 1, 0, 0), End = Instant.FromUtc(2025, 7, 1, 0, 0);
    private static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["Europe/Paris"];

    private static readonly MillKeys Keys = MillKeys.TryRead(MillKeys.Example, out var keys, out _) ? keys with
    {
        Products = new Dictionary<string, string> { ["hard winter"] = "09521234000013", ["soft winter"] = "09521234000013" }, Units = new Dictionary<string, string>(), Parties = new Dictionary<string, string>(),
    } : throw new InvalidOperationException();

    [OpenDataFact]
    public void Write_SpanOrTrace_IsValidByTheSchemaOfOtherPeopleAndByOurs()
    {
        var book = SmallMill.Book();
        foreach (var keys in new[] { MillKeys.None, Keys })
        {
            foreach (var text in new[] { Written(book, keys), Traced(book, "25-0001", keys), Traced(book, Pallet(book).Code, keys) })
            {
                Assert.Empty(BundledSchema.Faults(text));
                var read = EpcisFiles.Read(text);
                Assert.Empty(read.Faults);
                Assert.Empty(read.Value.Asked);
                Assert.True(read.Value.Events.Count > 5);
            }
        }
    }

    [Fact]
    public void Write_SameLedger_GivesTheSameBytes() => Assert.Equal(Written(SmallMill.Book(), Keys), Written(SmallMill.Book(), Keys));

    [Fact]
    public void Write_Events_CarryTheirHashAsNameEachOnce()
    {
        var events = Read(Written(SmallMill.Book(), Keys));
        Assert.Equal(events.Select(e => e.Hash), events.Select(e => e.Id));
        Assert.Equal(events.Count, events.Select(e => e.Hash).Distinct().Count());
        Assert.Equal(events.OrderBy(e => e.At).Select(e => e.At), events.Select(e => e.At));
    }

    [Fact]
    public void Write_Transformations_KeepEveryGram()
    {
        var made = Read(Written(SmallMill.Book(), MillKeys.None)).Where(e => e.Type == "TransformationEvent").ToList();
        Assert.NotEmpty(made);
        Assert.All(made, e => Assert.Equal(Sum(e, "outputQuantityList"), Sum(e, "inputQuantityList") + (e.Json.TryGetProperty("mill:waterKilograms", out var water) ? water.GetDecimal() : 0)));
        Assert.All(made, e => Assert.Contains("hypothesis", e.Json.GetProperty("mill:reckoned").GetString(), StringComparison.Ordinal));
    }

    [Fact]
    public void Write_TraceOfAPallet_SaysWhatTheTracerSays()
    {
        // The tracer walks the parcels; here only what stands in the document is walked.
        var book = SmallMill.Book();
        var pallet = Pallet(book);
        var events = Read(Traced(book, pallet.Code, MillKeys.None));
        var made = events.Where(e => e.Type == "TransformationEvent").ToDictionary(e => Quantities(e, "outputQuantityList").Single().Lot, e => Quantities(e, "inputQuantityList"));
        var received = events.Where(e => e.Step == "receiving").Select(e => Quantities(e, "quantityList").Single().Lot).ToHashSet();
        var lot = events.Single(e => e.Type == "AggregationEvent" && Quantities(e, "childQuantityList").Single().Lot.EndsWith(":" + Uri.EscapeDataString(pallet.Code), StringComparison.Ordinal));
        var shares = new Dictionary<string, double>();
        void Walk(string name, double share)
        {
            if (!made.TryGetValue(name, out var from))
            {
                shares[name] = shares.GetValueOrDefault(name) + share;
                return;
            }

            var whole = (double)from.Sum(f => f.Kilograms);
            foreach (var (input, kilograms) in from)
            {
                Walk(input, share * (double)kilograms / whole);
            }
        }

        Walk(Quantities(lot, "childQuantityList").Single().Lot, 1);
        var roots = Tracer.Over(book).Roots(new TraceQuestion(pallet.Code), [new Belief(Outflow.FirstInFirstOut, 1)]).Roots.Where(r => r.Truck is not null && r.Share.Expected > 0.001).ToList();
        Assert.NotEmpty(roots);
        foreach (var root in roots)
        {
            var name = shares.Keys.Single(k => k.EndsWith(":" + root.Truck!.Code, StringComparison.Ordinal));
            Assert.Contains(name, received);
            Assert.Equal(root.GrainShare.Expected, shares[name], 0.002);
        }
    }

    [Fact]
    public void Write_TruckPutRight_IsDeclaredWrongWithWhatStandsInForIt()
    {
        var book = SmallMill.Book();
        var index = book.MovementsOf(book.Named("25-0001").Id).First(i => book[book.Movements[i].To].Kind == PlaceKind.Pit);
        var before = Read(Written(book, Keys)).Single(e => e.Step == "receiving" && e.At == book.Movements[index].At);

        // All that was moved of the truck weighed a tonne less.
        var chain = book.Movements.Index().Where(m => m.Item.At <= book.Movements[index].At && m.Item.Mass == book.Movements[index].Mass && book.Counts(m.Index)).Select(m => m.Item).ToList();
        var corrections = book.ToFacts([.. chain.Select(m => new Move($"right {m.Id.Value}", book[m.From].Code, book[m.To].Code, m.Mass - Mass.FromTonnes(1), m.At, m.Until) { Corrects = m.Id, Note = "misread" })], "Ada", "ledger", End);
        book.Append(corrections);

        var events = Read(Written(book, Keys, corrections));
        var wrong = Assert.Single(events, e => e.DeclaresError);
        Assert.Equal(before.Hash, wrong.Hash);
        var right = Assert.Single(events, e => e.Hash == wrong.CorrectedBy.Single());
        Assert.Equal(Sum(before, "quantityList") - 1000, Sum(right, "quantityList"));
        Assert.Contains("incorrect_data", wrong.Json.GetRawText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_RecallHold_IsToldAsRecalledUntilItIsReleased()
    {
        var book = SmallMill.Book();
        var (pallet, at) = (Pallet(book).Code, End - Duration.FromHours(3));
        book.Append(book.ToFacts([new Happen("plain", pallet, at, HappeningKind.Held, "Smell."), new Happen("free", pallet, at + Duration.FromMinutes(5), HappeningKind.Released, "Nothing found."),
            new Happen("recall", pallet, at + Duration.FromMinutes(10), HappeningKind.Held, "Recall R-2025-001: glass found."), new Happen("done", pallet, at + Duration.FromMinutes(20), HappeningKind.Released, "Looked through.")], "Ada", "recall", End));
        var text = Written(book, Keys);
        Assert.Empty(EpcisFiles.Read(text).Faults);
        var told = Read(text).Where(e => e.At >= at && e.Step is "holding" or "inspecting").ToList();
        Assert.Equal(["non_sellable_other", "sellable_not_accessible", "recalled", "sellable_not_accessible"], told.Select(e => e.Disposition));
        Assert.Equal([null, null, "set", "unset"], told.Select(e => e.Json.TryGetProperty("persistentDisposition", out var lasting) ? lasting.EnumerateObject().Single().Name : null));
        Assert.Equal("R-2025-001", told[2].Json.GetProperty("mill:recall").GetString());
    }

    [Fact]
    public void Write_SampleRefusalAndWaste_AreToldByTheirLots()
    {
        var book = SmallMill.Book();
        var (bin, at) = (book.Places.First(p => p.Kind is PlaceKind.FlourBin or PlaceKind.Bin && book.StockOf(p.Id) > Mass.FromTonnes(1)), End - Duration.FromHours(3));
        var swept = Mass.FromKilograms(250);
        var sample = new SampleTaken("us-flat-bottom", 7, 2000, "RS-17", "A", "2026-01-05");
        book.Append(book.ToFacts(
            [
                new OpenPlace("t", "25-0999", PlaceKind.Truck, "", "hard winter"), new OpenPlace("w", "WASTE-1", PlaceKind.Waste),
                new Happen("s", "25-0001", at, HappeningKind.Sampled, Happening.TextOf("Sampled.", sample.Text[(sample.Text.IndexOf('\n', StringComparison.Ordinal) + 1)..])),
                new Happen("d", "25-0999", at + Duration.FromMinutes(5), HappeningKind.Decided, Happening.TextOf("Turned away.", new LoadDecision(LoadDecisionKind.TurnAway).ToJson())),
                new Move("m", bin.Code, "WASTE-1", swept, at + Duration.FromMinutes(10)),
            ], "Ada", "house", End));
        var text = Written(book, MillKeys.None);
        Assert.Empty(EpcisFiles.Read(text).Faults);
        var told = Read(text).Where(e => e.At >= at).ToList();
        Assert.Equal([("inspecting", "in_progress"), ("shipping", "returned"), ("destroying", "disposed")], told.Select(e => (e.Step, e.Disposition)));
        Assert.EndsWith(":25-0999", told[1].Json.GetProperty("quantityList")[0].GetProperty("epcClass").GetString(), StringComparison.Ordinal);
        Assert.False(told[1].Json.GetProperty("quantityList")[0].TryGetProperty("quantity", out _)); // never weighed: no mass is invented
        Assert.Equal(swept.Kilograms, Sum(told[2], "quantityList"));
        Assert.Equal("DELETE", told[2].Json.GetProperty("action").GetString());
    }

    [Fact]
    public void Write_WithoutKeys_InventsNone()
    {
        var book = SmallMill.Book();
        Assert.DoesNotContain("id.gs1.org", Written(book, MillKeys.None), StringComparison.Ordinal);
        Assert.Contains("https://id.gs1.org/01/09521234000013/10/25-0001", Written(book, Keys), StringComparison.Ordinal);
        Assert.Contains("https://id.gs1.org/414/9521234000013/254/PIT", Written(book, Keys), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_TraceOfABin_IsRefused() => Assert.Null(Document(SmallMill.Book(), Keys).Write(Stream.Null, SmallMill.Book().Named("S1")));

    [Theory]
    [InlineData("""{"site":"9521234000014"}""", "site")]
    [InlineData("""{"products":{"WB":"9521234001010"}}""", "products.WB")]
    [InlineData("""{"units":{"P":"123"}}""", "units.P")]
    [InlineData("""{"address":"mill"}""", "address")]
    [InlineData("""{"gln":"9521234000013"}""", "gln")]
    public void Keys_Wrong_AreRefused(string json, string where)
    {
        Assert.False(MillKeys.TryRead(json, out _, out var faults));
        Assert.Contains(where, Assert.Single(faults), StringComparison.Ordinal);
    }

    private static Place Pallet(Book book) => book.OfKind(PlaceKind.Pallet).First(p => book.MovementsOf(p.Id).Any());

    private static MillDocument Document(Book book, MillKeys keys, params IReadOnlyList<Fact> corrections)
    {
        var reckoning = new Reckoning(book, Outflow.FirstInFirstOut);
        reckoning.CatchUp();
        return new MillDocument(book, reckoning, "Small Mill", Zone, keys, corrections);
    }

    private static string Written(Book book, MillKeys keys, params IReadOnlyList<Fact> corrections)
    {
        using var stream = new MemoryStream();
        Document(book, keys, corrections).Write(stream, Begin, End);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static string Traced(Book book, string code, MillKeys keys)
    {
        using var stream = new MemoryStream();
        Assert.NotNull(Document(book, keys).Write(stream, book.Named(code)));
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static IReadOnlyList<EpcisEvent> Read(string text) => EpcisFiles.Read(text).Value.Events;

    private static decimal Sum(EpcisEvent told, string list) => Quantities(told, list).Sum(q => q.Kilograms);

    private static IReadOnlyList<(string Lot, decimal Kilograms)> Quantities(EpcisEvent told, string list) =>
        [.. told.Json.GetProperty(list).EnumerateArray().Select(q => (q.GetProperty("epcClass").GetString()!, q.GetProperty("quantity").GetDecimal()))];
}
