using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Intake;

/// <summary>Stages are our own words and rules, docs/model/yard.md.</summary>
public sealed class TruckStagesTests
{
    private const string Ticket = "25-0709-001";
    private static readonly Instant Gate = Instant.FromUtc(2025, 7, 9, 12, 0);
    private static readonly Mass Net = Mass.FromTonnes(26m);

    private static readonly Draft[] Facts =
    [
        new OpenPlace(Ticket, Ticket, PlaceKind.Truck, "KS 1", "HW"),
        new Happen("a", Ticket, Gate, HappeningKind.Arrived, Happening.TextOf("at the gate", new Arrival("scale 1", "k1", "F", "S-1").ToJson())),
        Read("g", Property.GrossWeight, 38_000m, "kg", 5),
        new Happen("s", Ticket, After(7), HappeningKind.Sampled, "three cuts"),
        Read("p", Property.Moisture, 12m, "%", 9),
        new Happen("d", Ticket, After(12), HappeningKind.Decided, Happening.TextOf("good", new LoadDecision(LoadDecisionKind.Accept, "B", ["PIT"]).ToJson())),
        Read("t", Property.TareWeight, 12_000m, "kg", 20),
        new Move("m1", "F", Ticket, Net, After(5)), new Move("m2", Ticket, "PIT", Net, After(20)), new Move("m3", "PIT", "B", Net, After(20)),
        new Happen("x", Ticket, After(90), HappeningKind.Settled, "advance"),
    ];

    [Theory]
    [InlineData(0, TruckStage.AtGate, 0)]
    [InlineData(5, TruckStage.Weighed, 5)]
    [InlineData(8, TruckStage.Probed, 7)]
    [InlineData(9, TruckStage.Graded, 9)]
    [InlineData(19, TruckStage.SentTo, 12)]
    [InlineData(21, TruckStage.Empty, 20)]
    [InlineData(90, TruckStage.Settled, 90)]
    public void Of_AsTimeGoesOn_IsTheLastStageReached(int minutes, TruckStage stage, int since)
    {
        var state = TruckStages.Of(Book(Facts), Truck(Facts), After(minutes))!;
        Assert.Equal((stage, After(since)), (state.Stage, state.Since));
    }

    [Fact]
    public void Of_BeforeItCame_IsNothing() => Assert.Null(TruckStages.Of(Book(Facts), Truck(Facts), After(-1)));

    [Fact]
    public void Of_SentTo_NamesTheBin() => Assert.Equal("sent to B", TruckStages.Of(Book(Facts), Truck(Facts), After(15))!.Words);

    [Fact]
    public void Of_EveryStage_CarriesItsTime() => Assert.Equal(
        [(TruckStage.AtGate, 0), (TruckStage.Weighed, 5), (TruckStage.Probed, 7), (TruckStage.Graded, 9), (TruckStage.SentTo, 12), (TruckStage.Empty, 20), (TruckStage.Settled, 90)],
        TruckStages.Of(Book(Facts), Truck(Facts), After(100))!.Reached.Select(r => (r.Stage, (int)(r.At - Gate).TotalMinutes)));

    [Theory]
    [InlineData(LoadDecisionKind.TurnAway, TruckStage.TurnedAway, false)]
    [InlineData(LoadDecisionKind.SetAside, TruckStage.SetAside, true)]
    [InlineData(LoadDecisionKind.Divert, TruckStage.SentTo, true)]
    public void Of_ALaterDecision_Overrules(LoadDecisionKind kind, TruckStage stage, bool inYard)
    {
        Draft[] facts = [.. Facts[..6], new Happen("d2", Ticket, After(15), HappeningKind.Decided, Happening.TextOf("smells", new LoadDecision(kind).ToJson()))];
        var state = TruckStages.Of(Book(facts), Truck(facts), After(60))!;
        Assert.Equal((stage, After(15), inYard), (state.Stage, state.Since, state.InYard));
    }

    [Fact]
    public void Of_GrainInABin_WasSentThereWhateverWasDecided()
    {
        Draft[] facts = [.. Facts[..5], new Happen("d", Ticket, After(12), HappeningKind.Decided, Happening.TextOf("wait", new LoadDecision(LoadDecisionKind.SetAside).ToJson())), .. Facts[6..10]];
        var state = TruckStages.Of(Book(facts), Truck(facts), After(60))!;
        Assert.Equal((TruckStage.Empty, "B", After(20)), (state.Stage, state.Bin, state.When(TruckStage.SentTo)));
    }

    [Fact]
    public void Of_Voided_IsVoidedWhateverElse()
    {
        Draft[] facts = [.. Facts, new Happen("v", Ticket, After(100), HappeningKind.Voided, "wrong truck")];
        Assert.Equal(TruckStage.Voided, TruckStages.Of(Book(facts), Truck(facts), After(100))!.Stage);
    }

    [Fact]
    public void Of_ALoadBroughtInWithoutWeights_StandsAtTheGateThenIsEmpty()
    {
        Draft[] facts = [Facts[0], .. Facts[7..10]];
        Assert.Equal([TruckStage.AtGate, TruckStage.Empty], new[] { 10, 30 }.Select(m => TruckStages.Of(Book(facts), Truck(facts), After(m))!.Stage));
    }

    [Fact]
    public void Newest_OfATicket_IsItsHighestFactAndNobodyElses()
    {
        Draft[] facts = [.. Facts[..7], new Happen("n", "F", Gate, HappeningKind.Note, "elsewhere")];
        var book = Book(facts);
        Assert.Equal(new FactId(book.Last.Value - 1), LoadWay.Newest(book, Truck(facts)));
    }

    [Fact]
    public void Particulars_WrittenAndRead_AreTheSame()
    {
        var truck = Book(Facts).Named(Ticket);
        var arrival = Arrival.Of(Book(Facts), truck)!;
        Assert.Equal(new Arrival("scale 1", "k1", "F", "S-1"), arrival);
        var decided = LoadDecision.Read(Book(Facts).HappeningsOn(truck.Id).Single(h => h.Kind == HappeningKind.Decided))!;
        Assert.Equal((LoadDecisionKind.Accept, "PIT>B"), (decided.Kind, string.Join('>', decided.Stops)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("[1]")]
    [InlineData("{\"decision\":7}")]
    [InlineData("{broken")]
    public void Particulars_ThatSayNothing_AreNoDecision(string json) =>
        Assert.Null(LoadDecision.Read(new Happening(new FactId(1), new PlaceId(1), Gate, HappeningKind.Decided, Happening.TextOf("x", json))));

    private static Book Book(IReadOnlyList<Draft> facts)
    {
        var book = new Book();
        Draft[] places = [new OpenPlace("F", "F", PlaceKind.Field), new OpenPlace("PIT", "PIT", PlaceKind.Pit), new OpenPlace("B", "B", PlaceKind.Bin), new Connect("c", "PIT", "B")];
        book.Append(book.ToFacts([.. places, .. facts], "Ada", "test", After(1000)));
        return book;
    }

    private static Place Truck(IReadOnlyList<Draft> facts) => Book(facts).Named(Ticket);

    private static Measure Read(string key, Property what, decimal value, string unit, int minutes) => new(key, Ticket, After(minutes), what, value, unit, default, "scale");

    private static Instant After(int minutes) => Gate + Duration.FromMinutes(minutes);
}
