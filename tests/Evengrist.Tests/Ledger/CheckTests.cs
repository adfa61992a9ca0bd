using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Ledger;

/// <summary>What a desk can get wrong: each is refused with the rule, and a sentence that says what to do.</summary>
public sealed class CheckTests
{
    private static readonly Instant Noon = PosedMill.Hour(0);

    public static TheoryData<string, LedgerRule, string> Bad => new()
    {
        { "negative", LedgerRule.Malformed, "above zero" },
        { "zero", LedgerRule.Malformed, "above zero" },
        { "absurd", LedgerRule.Malformed, "unit right" },
        { "truck of 500 t", LedgerRule.Malformed, "unit right" },
        { "future", LedgerRule.InTheFuture, "date, time and zone" },
        { "backwards", LedgerRule.Malformed, "ends before" },
        { "unknown", LedgerRule.UnknownPlace, "typing error" },
        { "not connected", LedgerRule.NotConnected, "Connect the two first" },
        { "into a field", LedgerRule.NotConnected, "Nothing can go" },
        { "overfull", LedgerRule.WouldOverfill, "Choose another place" },
        { "overdrawn", LedgerRule.WouldOverdraw, "below zero" },
        { "on hold", LedgerRule.OnHold, "named person" },
        { "code taken", LedgerRule.CodeTaken, "another code" },
        { "bare protein", LedgerRule.Malformed, "moisture basis" },
        { "moisture with basis", LedgerRule.Malformed, "leave" },
        { "falling number in %", LedgerRule.Malformed, "read in s" },
        { "protein 150 %", LedgerRule.Malformed, "cannot be" },
        { "correction of nothing", LedgerRule.BadCorrection, "cannot be corrected" },
        { "correction without reason", LedgerRule.BadCorrection, "give a note" },
        { "hold without reason", LedgerRule.Malformed, "in words" },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void Append_Bad_IsRefusedAndSaysWhatToDo(string what, LedgerRule rule, string says)
    {
        var mill = Mill();
        var stocks = mill.Book.Places.Select(p => mill.Book.StockOf(p.Id)).ToArray();
        var refusal = Assert.Throws<LedgerRefusal>(() => mill.Record(Draft(what, mill)));
        Assert.Equal(rule, refusal.Rule);
        Assert.Contains(says, refusal.Message, StringComparison.Ordinal);
        Assert.Equal(stocks, mill.Book.Places.Select(p => mill.Book.StockOf(p.Id)));
    }

    [Fact]
    public void Append_WithoutAName_IsRefused()
    {
        var mill = Mill();
        var facts = mill.Book.ToFacts([new Happen("x", "B1", Noon, HappeningKind.Note, "n")], " ", "desk", Instant.FromUtc(2026, 1, 1, 0, 0));
        Assert.Contains("give a name", Assert.Throws<LedgerRefusal>(() => mill.Book.Append(facts)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Correct_MistypedWeight_TheFirstNoLongerCounts()
    {
        var mill = Mill();
        var first = mill.Book.Movements[1];
        mill.Record(new Move("c0", "FARM", "T1", Mass.FromTonnes(26), first.At) { Corrects = mill.Book.Movements[0].Id, Note = "scale read 26" },
            new Move("c1", "T1", "B1", Mass.FromTonnes(26), first.At) { Corrects = first.Id, Note = "scale read 26" });
        Assert.Equal(Mass.FromTonnes(26), mill.Book.StockOf(mill.Id("B1")));
        Assert.False(mill.Book.Counts(1));
        Assert.Equal(LedgerRule.BadCorrection, Assert.Throws<LedgerRefusal>(() => mill.Record(
            new Move("c2", "T1", "B1", Mass.FromTonnes(25), first.At) { Corrects = first.Id, Note = "again" })).Rule);
    }

    [Fact]
    public void Correct_WouldLeaveLaterDrawsWithoutGrain_IsRefusedAndNamesTheShortage()
    {
        // The reversal of a receipt whose grain has gone on: the worked case of our notes.
        var mill = Mill();
        mill.Move("B1", "WASTE", 20, 3);
        var refusal = Assert.Throws<LedgerRefusal>(() => mill.Record(
            new Move("v", "T1", "B1", Mass.Zero, mill.Book.Movements[1].At) { Corrects = mill.Book.Movements[1].Id, Note = "never came" }));
        Assert.Equal((LedgerRule.WouldOverdraw, "B1", Mass.FromTonnes(20)), (refusal.Rule, refusal.Place, refusal.By));
    }

    [Fact]
    public void StockOf_FlowUnderWay_CountsByItsElapsedPart()
    {
        var mill = Mill();
        mill.Move("B1", "WASTE", 12, 2, 5);
        Assert.Equal(Mass.FromTonnes(24), mill.Book.StockOf(mill.Id("B1"), PosedMill.Hour(2)));
        Assert.Equal(Mass.FromTonnes(20), mill.Book.StockOf(mill.Id("B1"), PosedMill.Hour(3)));
        Assert.Equal(Mass.FromTonnes(12), mill.Book.StockOf(mill.Id("B1"), PosedMill.Hour(9)));
    }

    private static Draft Draft(string what, PosedMill mill) => what switch
    {
        "negative" => new Move("x", "B1", "WASTE", Mass.FromTonnes(-1), Noon),
        "zero" => new Move("x", "B1", "WASTE", Mass.Zero, Noon),
        "absurd" => new Move("x", "B1", "WASTE", Mass.FromTonnes(1_000_000), PosedMill.Hour(2)),
        "truck of 500 t" => new Move("x", "FARM", "T1", Mass.FromTonnes(500), Noon),
        "future" => new Move("x", "B1", "WASTE", Mass.FromTonnes(1), Instant.FromUtc(2031, 1, 1, 0, 0)),
        "backwards" => new Move("x", "B1", "WASTE", Mass.FromTonnes(1), PosedMill.Hour(3), PosedMill.Hour(2)),
        "unknown" => new Move("x", "B99", "WASTE", Mass.FromTonnes(1), Noon),
        "not connected" => new Move("x", "B1", "B2", Mass.FromTonnes(1), PosedMill.Hour(2)),
        "into a field" => new Move("x", "B1", "FARM", Mass.FromTonnes(1), PosedMill.Hour(2)),
        "overfull" => new Move("x", "OPEN", "B2", Mass.FromTonnes(101), Noon),
        "overdrawn" => new Move("x", "B1", "WASTE", Mass.FromTonnes(25), PosedMill.Hour(2)),
        "on hold" => new Move("x", "B3", "WASTE", Mass.FromTonnes(1), PosedMill.Hour(4)),
        "code taken" => new OpenPlace("x", "b1", PlaceKind.Bin),
        "bare protein" => new Measure("x", "T1", Noon, Property.Protein, 13.1m, "%", default, "NIR"),
        "moisture with basis" => new Measure("x", "T1", Noon, Property.Moisture, 13.1m, "%", Basis.At12, "NIR"),
        "falling number in %" => new Measure("x", "T1", Noon, Property.FallingNumber, 300m, "%", default, "falling number"),
        "protein 150 %" => new Measure("x", "T1", Noon, Property.Protein, 150m, "%", Basis.Dry, "NIR"),
        "correction of nothing" => new Move("x", "B1", "WASTE", Mass.FromTonnes(1), PosedMill.Hour(2)) { Corrects = new FactId(9999), Note = "n" },
        "correction without reason" => new Move("x", "T1", "B1", Mass.FromTonnes(1), PosedMill.Hour(1)) { Corrects = mill.Book.Movements[1].Id },
        "hold without reason" => new Happen("x", "B1", Noon, HappeningKind.Held),
        _ => throw new ArgumentOutOfRangeException(nameof(what), what, "No such case."),
    };

    private static PosedMill Mill()
    {
        var mill = new PosedMill().Open(PlaceKind.Field, "FARM").Open(PlaceKind.Opening, "OPEN").Open(PlaceKind.Truck, "T1").Open(PlaceKind.Waste, "WASTE")
            .Open(PlaceKind.Bin, "B1", "B3").Open(new OpenPlace("b2", "B2", PlaceKind.Bin) { Capacity = Mass.FromTonnes(100) });
        mill.Move("FARM", "T1", 24, 0).Move("T1", "B1", 24, 1).Move("OPEN", "B3", 5, 0);
        mill.Record(new Happen("hold", "B3", PosedMill.Hour(2), HappeningKind.Held, "odour"));
        return mill;
    }
}
