using System.Text;
using Evengrist.Ledger;
using Evengrist.Plant.Epcis;
using Evengrist.Plant.Epcis.Sending;
using Evengrist.Plant.Epcis.Writing;
using Evengrist.Quantities;
using Evengrist.Tests;
using NodaTime;

namespace Evengrist.Edge.Tests.Plant.Epcis;

/// <summary>What somebody was told, a late fact, and what is declared wrong to him: each once, with what stands in for it. The small mill of the samples; what ought to be declared is found by writing both ledgers out whole.</summary>
public sealed class SentTests
{
    private static readonly Instant Begin = Instant.FromUtc(2025, 6, 1, 0, 0), End = Instant.FromUtc(2025, 7, 1, 0, 0);
    private static readonly Mass Misread = Mass.FromTonnes(5);
    private static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["Europe/Paris"];

    [OpenDataFact]
    public void Send_LateFact_DeclaresExactlyWhatChangedOnceWithWhatStandsInForIt()
    {
        var book = SmallMill.Book();
        var before = All(book, []);
        List<SentEvents> sent = [];
        var (first, text) = Send(book, [], sent);
        Assert.Equal((before.Count, before.Count, 0), (first.Events, first.Told, first.Declared));
        Assert.Empty(EpcisFiles.Read(text).Faults);

        // Nothing has changed: nothing is new, nothing is wrong.
        var (again, _) = Send(book, [], sent);
        Assert.Equal((before.Count, 0, 0), (again.Events, again.Told, again.Declared));

        var corrections = PutRight(book, Misread);
        var after = All(book, corrections);
        HashSet<string> gone = [.. before.Keys.Except(after.Keys)], news = [.. after.Keys.Except(before.Keys)];
        Assert.True(gone.Count > 5, $"{gone.Count}");
        var (late, said) = Send(book, corrections, sent);
        Assert.Equal((gone.Count, news.Count), (late.Declared, late.Told));
        Assert.Empty(BundledSchema.Faults(said));
        var read = EpcisFiles.Read(said);
        Assert.Empty(read.Faults);
        var wrong = read.Value.Events.Where(e => e.DeclaresError).ToList();
        Assert.Equal(gone.Order(StringComparer.Ordinal), wrong.Select(e => e.Hash).Order(StringComparer.Ordinal));
        Assert.All(wrong, e => Assert.Equal(e.Hash, e.Id));

        // Five tonnes less of the first truck, of which twelve were drawn: every lot is still there, with other shares, and says so.
        Assert.All(wrong, e => Assert.NotEmpty(e.CorrectedBy));
        Assert.All(wrong.SelectMany(e => e.CorrectedBy), id => Assert.Contains(id, news));
        Assert.All(wrong, e => Assert.All(e.CorrectedBy, id => Assert.Equal(e.Type, after[id].Type)));
        foreach (var made in wrong.Where(e => e.Type == "TransformationEvent"))
        {
            Assert.Contains(made.CorrectedBy, id => Output(after[id]) == Output(made));
        }

        var (third, quiet) = Send(book, corrections, sent);
        Assert.Equal((0, 0), (third.Told, third.Declared));
        Assert.DoesNotContain("errorDeclaration", quiet, StringComparison.Ordinal);
    }

    [Fact]
    public void Send_PutRightAndBack_TellsTheFirstAgainUnderAnIdentifierOfItsOwn()
    {
        var book = SmallMill.Book();
        List<SentEvents> sent = [];
        Send(book, [], sent);
        var first = All(book, []);
        List<Fact> corrections = [.. PutRight(book, Misread)];
        Send(book, corrections, sent);
        corrections.AddRange(PutRight(book, -Misread));
        var back = All(book, corrections);
        Assert.Equal(first.Keys.Order(StringComparer.Ordinal), back.Keys.Order(StringComparer.Ordinal)); // the ledger says again what it said at first
        var (head, text) = Send(book, corrections, sent);
        Assert.True(head.Declared > 5);
        var events = EpcisFiles.Read(text).Value.Events;
        var again = events.Where(e => e.Json.TryGetProperty("mill:toldAgain", out _)).ToList();
        Assert.Equal(head.Told, again.Count);
        Assert.Equal(1, again[0].Json.GetProperty("mill:toldAgain").GetInt32());
        Assert.DoesNotContain(again, e => first.ContainsKey(e.Hash)); // by its first identifier it would stay wrong
        Assert.All(events.Where(e => e.DeclaresError).SelectMany(e => e.CorrectedBy), id => Assert.Contains(again, e => e.Hash == id));
        Assert.Equal((0, 0), Send(book, corrections, sent).Head is var quiet ? (quiet.Told, quiet.Declared) : default);
    }

    [Fact]
    public void Send_WayOfALot_DeclaresOnlyWhatItTold()
    {
        var book = SmallMill.Book();
        List<SentEvents> sent = [];
        var pallet = book.OfKind(PlaceKind.Pallet).First(p => book.MovementsOf(p.Id).Any());
        var (first, text) = Send(book, [], sent, pallet);
        var told = EpcisFiles.Read(text).Value.Events.Select(e => e.Hash).ToHashSet();
        Assert.Equal(told.Count, first.Told);
        var corrections = PutRight(book, Misread);
        var after = All(book, corrections);
        var document = To(book, corrections, sent);
        Assert.Equal(told.Where(t => !after.ContainsKey(t)).Order(StringComparer.Ordinal), document.Wrong().Select(w => w.Event.Hash).Order(StringComparer.Ordinal));
        Assert.NotEmpty(document.Wrong());

        // What stands in for it is told, though the span asked about does not hold it.
        using var stream = new MemoryStream();
        var (head, _) = document.Write(stream, End, End + Duration.FromHours(1));
        var events = EpcisFiles.Read(Encoding.UTF8.GetString(stream.ToArray())).Value.Events;
        Assert.Equal(document.Wrong().SelectMany(w => w.CorrectedBy).Order(StringComparer.Ordinal), events.Where(e => !e.DeclaresError).Select(e => e.Hash).Order(StringComparer.Ordinal));
        Assert.Equal(events.Count, head.Events);
    }

    [Fact]
    public void Send_HoldThatWasNone_DidNotOccur()
    {
        var book = SmallMill.Book();
        var pallet = book.OfKind(PlaceKind.Pallet).First(p => book.MovementsOf(p.Id).Any()).Code;
        var held = book.ToFacts([new Happen("h", pallet, End - Duration.FromHours(3), HappeningKind.Held, "Smell.")], "Ada", "house", End);
        book.Append(held);
        List<SentEvents> sent = [];
        Send(book, [], sent);
        Fact[] corrections = [.. book.ToFacts([new Happen("n", pallet, End - Duration.FromHours(3), HappeningKind.Note, "Typed by mistake.") { Corrects = held[0].Id, Note = "typed by mistake" }], "Ada", "house", End)];
        book.Append(corrections);
        var wrong = Assert.Single(To(book, corrections, sent).Wrong());
        Assert.Equal(("holding", 0), (wrong.Event.Step, wrong.CorrectedBy.Count));
        Assert.Contains("did_not_occur", Send(book, corrections, sent).Text, StringComparison.Ordinal);
        Assert.Empty(To(book, corrections, sent).Wrong());
    }

    [Fact]
    public void Send_KeptAndRead_TakesLittleRoom()
    {
        var book = SmallMill.Book();
        List<SentEvents> sent = [];
        var (head, text) = Send(book, [], sent);
        var kept = sent[0].ToJson();
        Assert.True(SentEvents.TryRead(kept, out var read, out _));
        Assert.Equal(sent[0], read);
        Assert.True(kept.Length < text.Length / 4, $"{kept.Length} of {text.Length}");
        Assert.True(SentDocument.TryRead(head.ToJson(), out var same, out var faults), string.Join(' ', faults));
        Assert.Equal(head, same);
        var earlier = Earlier.Read("C1", [head.ToJson()], _ => kept);
        Assert.Null(earlier.Against(Outflow.FirstInFirstOut));
        Assert.Contains("first in, first out", earlier.Against(Outflow.Stirred), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "Say to whom")]
    [InlineData("  ", "Say to whom")]
    [InlineData("a\nb", "on one line")]
    [InlineData("1234567890123456789012345678901234567890123456789012345678901", "at most 60")]
    [InlineData("C1", null)]
    public void Name_OfWhomItGoesTo_IsOneShortLine(string name, string? fault)
    {
        if (fault is null)
        {
            Assert.Null(Earlier.Fault(name));
        }
        else
        {
            Assert.Contains(fault, Earlier.Fault(name), StringComparison.Ordinal);
        }
    }

    // All that was moved of the first truck weighs less by so much.
    private static IReadOnlyList<Fact> PutRight(Book book, Mass less)
    {
        var index = book.MovementsOf(book.Named("25-0001").Id).First(i => book[book.Movements[i].To].Kind == PlaceKind.Pit && book.Counts(i));
        var chain = book.Movements.Index().Where(m => m.Item.At <= book.Movements[index].At && m.Item.Mass == book.Movements[index].Mass && book.Counts(m.Index)).Select(m => m.Item).ToList();
        var corrections = book.ToFacts([.. chain.Select(m => new Move($"right {m.Id.Value}", book[m.From].Code, book[m.To].Code, m.Mass - less, m.At, m.Until) { Corrects = m.Id, Note = "misread" })], "Ada", "ledger", End);
        book.Append(corrections);
        return corrections;
    }

    private static MillDocument Document(Book book, IReadOnlyList<Fact> corrections)
    {
        var reckoning = new Reckoning(book, Outflow.FirstInFirstOut);
        reckoning.CatchUp();
        return new MillDocument(book, reckoning, "Small Mill", Zone, MillKeys.None, corrections);
    }

    private static DocumentTo To(Book book, IReadOnlyList<Fact> corrections, IReadOnlyList<SentEvents> sent) => new(Document(book, corrections), "C1", sent, End + Duration.FromDays(1));

    private static (SentDocument Head, string Text) Send(Book book, IReadOnlyList<Fact> corrections, List<SentEvents> sent, Place? way = null)
    {
        using var stream = new MemoryStream();
        var document = To(book, corrections, [.. sent]);
        var (head, events) = way is null ? document.Write(stream, Begin, End) : document.Write(stream, way)!.Value;
        sent.Add(events);
        return (head, Encoding.UTF8.GetString(stream.ToArray()));
    }

    // What the ledger says by itself, whoever was told what: without what is declared wrong by its own corrections.
    private static Dictionary<string, EpcisEvent> All(Book book, IReadOnlyList<Fact> corrections)
    {
        using var stream = new MemoryStream();
        Document(book, corrections).Write(stream, Begin, End);
        return EpcisFiles.Read(Encoding.UTF8.GetString(stream.ToArray())).Value.Events.Where(e => !e.DeclaresError).ToDictionary(e => e.Hash);
    }

    private static string Output(EpcisEvent made) => made.Json.GetProperty("outputQuantityList")[0].GetProperty("epcClass").GetString()!;
}
