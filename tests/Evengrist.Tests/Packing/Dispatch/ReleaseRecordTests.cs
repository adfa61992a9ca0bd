using Evengrist.Intake.Trade;
using Evengrist.Packing.Dispatch;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Packing.Dispatch;

/// <summary>The items are those of 21 CFR 1.345(a)(1) to (6), as read in copies of 2019 and of April 2026.</summary>
public sealed class ReleaseRecordTests
{
    private static readonly Instant At = Instant.FromUtc(2026, 1, 14, 13, 10);
    private static readonly Party Bakery = new() { Code = "C", Name = "Bakery", Address = "1 Oven Road", Phone = "555-0201" }, Hauler = new() { Code = "H", Name = "Hauler", Address = "2 Yard Lane", Phone = "555-0161" };
    private static readonly ReleasedLot Lot = new("White bread flour, 25 kg (WB)", "WB-260113-1", "24 pallets of 40 × 25 kg", Mass.FromTonnes(24m), ["P1"]);

    [Fact]
    public void Of_WithEverything_IsComplete_FaxAndMailNotDemanded()
    {
        var record = Of(Bakery, [Lot], Hauler);
        Assert.True(record.IsComplete, string.Join(", ", record.Missing));
        Assert.Equal(["(a)(1)", "(a)(2)", "(a)(3)", "(a)(4)", "(a)(5)", "(a)(6)"], record.Items.Select(i => i.Rule["21 CFR 1.345".Length..]).Distinct());
        Assert.Equal(Mass.FromTonnes(24m), record.Mass);
    }

    [Fact]
    public void Of_WithSomethingAway_NamesItByItsRule()
    {
        Assert.Equal(["name of the transporter (1.345(a)(6))", "address of the transporter (1.345(a)(6))", "telephone of the transporter (1.345(a)(6))"], Of(Bakery, [Lot], null).Missing);
        Assert.Equal(["telephone of the recipient (1.345(a)(1))"], Of(Bakery with { Phone = "" }, [Lot], Hauler).Missing);
        Assert.Equal(["type of food (1.345(a)(2))"], Of(Bakery, [Lot, Lot with { Food = "" }], Hauler).Missing); // one lot of two without it is enough
        Assert.Equal(["quantity (1.345(a)(5))"], Of(Bakery, [Lot with { Mass = Mass.Zero }], Hauler).Missing);
    }

    [Fact]
    public void NotReady_OfACard_AsksForAYear()
    {
        var card = new ConsigneeCard("C", "Bakery") { Address = "a", Contact = "b", Phone = "1", RecallPhone = "2", Confirmed = new(2025, 1, 14), ConfirmedBy = "Ada" };
        Assert.Empty(card.NotReady(new(2026, 1, 14)));
        Assert.Equal(["confirmed 366 days ago, more than a year"], card.NotReady(new(2026, 1, 15)));
        Assert.Equal(["nobody to ask for", "no telephone for a recall", "never confirmed"], (card with { Contact = "", RecallPhone = "", Confirmed = null }).NotReady(new(2025, 1, 15)));
        Assert.Contains((card with { ConfirmedBy = "" }).Faults(), f => f.Contains("who confirmed", StringComparison.Ordinal));
    }

    [Fact]
    public void Load_ThroughJsonAndBack_IsTheSame_AndBadOnesAreRefused()
    {
        var load = new DispatchLoad("D-1", new(2026, 1, 14), "C") { Planned = [new("WB", 24)], Packages = [new("P1", At, "Ada") { Said = ["x"] }], Answers = [new("clean", false, At, "Ada") { Note = "dirt" }], History = new("flour", At, "Ada") { Celsius = -4.5m }, Departed = new(At, "Ada") { Seals = ["4711"] } };
        Assert.True(DispatchLoad.TryRead(load.ToJson(), out var read, out var faults), string.Join(" ", faults));
        Assert.Equal(load.ToJson(), read.ToJson());
        Assert.True(read.AnswerIsBad());
        Assert.Equal(4, (load with { Number = "D 1", Consignee = " ", Trailer = "a\nb", Planned = [new("WB", 0)] }).Faults().Count);
    }

    private static ReleaseRecord Of(Party? to, IReadOnlyList<ReleasedLot> lots, Party? by) => ReleaseRecord.Of("D-1", At, new(2026, 1, 14), "C", to, lots, by, "trailer 7");
}
