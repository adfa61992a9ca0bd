using CsCheck;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Tests.Ledger;

/// <summary>A place that is held, shut, under gas or has a person in it: what is refused, and that the order of recording does not matter.</summary>
public sealed class BarsTests
{
    private static readonly HappeningKind[] Kinds =
    [
        HappeningKind.PersonInside, HappeningKind.PersonOut, HappeningKind.UnderGas, HappeningKind.GasCleared,
        HappeningKind.Held, HappeningKind.Released, HappeningKind.Shut, HappeningKind.Reopened,
    ];

    [Theory]
    [InlineData(HappeningKind.UnderGas, LedgerRule.UnderGas, true, true, "licensed person")]
    [InlineData(HappeningKind.PersonInside, LedgerRule.PersonInside, true, true, "nobody is inside")]
    [InlineData(HappeningKind.Held, LedgerRule.OnHold, true, true, "named person")]
    [InlineData(HappeningKind.Shut, LedgerRule.Shut, true, false, "choose another bin")]
    public void Move_BarredBin_IsRefusedWithTheReason(HappeningKind kind, LedgerRule rule, bool into, bool outOf, string says)
    {
        var mill = Mill();
        mill.Record(Happen(mill, kind, 2));
        foreach (var (draft, barred) in new[] { (Load(mill, "OPEN", "B1", 3), into), (Load(mill, "B1", "WASTE", 3), outOf) })
        {
            if (barred)
            {
                var refusal = Assert.Throws<LedgerRefusal>(() => mill.Record(draft));
                Assert.Equal((rule, "B1", PosedMill.Hour(2)), (refusal.Rule, refusal.Place, refusal.At));
                Assert.Contains(says, refusal.Message, StringComparison.Ordinal);
                Assert.Contains("as posed", refusal.Message, StringComparison.Ordinal);
            }
            else
            {
                mill.Record(draft);
            }
        }
    }

    [Theory]
    [InlineData(HappeningKind.UnderGas, HappeningKind.GasCleared)]
    [InlineData(HappeningKind.PersonInside, HappeningKind.PersonOut)]
    [InlineData(HappeningKind.Held, HappeningKind.Released)]
    public void Move_FlowAcrossABarredHour_IsRefusedAndBeforeOrAfterItTaken(HappeningKind begins, HappeningKind ends)
    {
        var mill = Mill();
        mill.Record(Happen(mill, begins, 2), Happen(mill, ends, 3));
        foreach (var (from, until) in new[] { (1.0, 2.5), (1, 4), (2, 3), (2.5, 5) })
        {
            Assert.Throws<LedgerRefusal>(() => mill.Record(Load(mill, "B1", "WASTE", from, until)));
        }

        mill.Record(Load(mill, "B1", "WASTE", 1, 2), Load(mill, "B1", "WASTE", 3, 4), Load(mill, "OPEN", "B1", 3));
    }

    [Theory]
    [InlineData(HappeningKind.UnderGas)]
    [InlineData(HappeningKind.PersonInside)]
    public void Happen_WhileAFlowRuns_IsRefusedAndSaysWhich(HappeningKind kind)
    {
        var mill = Mill();
        mill.Record(Load(mill, "B1", "WASTE", 1, 4));
        var refusal = Assert.Throws<LedgerRefusal>(() => mill.Record(Happen(mill, kind, 2)));
        Assert.Equal((LedgerRule.InUse, "B1"), (refusal.Rule, refusal.Place));
        Assert.Contains("goes from B1 to WASTE", refusal.Message, StringComparison.Ordinal);
        Assert.False(mill.Book.BarsOn(mill.Id("B1"), PosedMill.Hour(9)).IsAny);
        mill.Record(Happen(mill, kind, 4));
    }

    [Fact]
    public void Happen_PersonIntoGas_IsRefusedInEitherOrder()
    {
        var gassed = Mill();
        gassed.Record(Happen(gassed, HappeningKind.UnderGas, 1));
        Assert.Equal(LedgerRule.UnderGas, Assert.Throws<LedgerRefusal>(() => gassed.Record(Happen(gassed, HappeningKind.PersonInside, 2))).Rule);
        gassed.Record(Happen(gassed, HappeningKind.GasCleared, 3), Happen(gassed, HappeningKind.PersonInside, 4));

        var entered = Mill();
        entered.Record(Happen(entered, HappeningKind.PersonInside, 2));
        Assert.Equal(LedgerRule.PersonInside, Assert.Throws<LedgerRefusal>(() => entered.Record(Happen(entered, HappeningKind.UnderGas, 1))).Rule);
    }

    [Fact]
    public void Move_CorrectionOfABarredMovement_IsTaken()
    {
        var mill = Mill();
        var draw = (Moved)mill.Record(Load(mill, "B1", "WASTE", 1))[0];
        mill.Record(Happen(mill, HappeningKind.UnderGas, 2));
        mill.Record(Load(mill, "B1", "WASTE", 3) with { Corrects = draw.Id, Note = "an hour later" });
        Assert.Equal(PosedMill.Hour(3), mill.Book.Movements[^1].At);
    }

    [Fact]
    public void Move_HeldPallet_TakesNothingOutYetMayBeFilled()
    {
        // A hold on a package keeps it from leaving; that nothing goes in any more is a rule for bins.
        var mill = Mill().Open(PlaceKind.PackingLine, "L1").Open(PlaceKind.Pallet, "P1").Open(PlaceKind.Customer, "BAKERY");
        mill.Record(Load(mill, "OPEN", "L1", 0), new Happen(mill.Key(), "P1", PosedMill.Hour(1), HappeningKind.Held, "as posed"), Load(mill, "L1", "P1", 2));
        Assert.Equal(LedgerRule.OnHold, Assert.Throws<LedgerRefusal>(() => mill.Record(Load(mill, "P1", "BAKERY", 3))).Rule);
    }

    [Theory]
    [InlineData("person inside: sweeping", LedgerRule.PersonInside)]
    [InlineData("under gas", LedgerRule.UnderGas)]
    [InlineData("shut", LedgerRule.Shut)]
    [InlineData("resting", null)]
    public void Move_StateSaidInWordsByAnEarlierRelease_StillCounts(string text, LedgerRule? rule)
    {
        var mill = Mill();
        mill.Record(new Happen(mill.Key(), "B1", PosedMill.Hour(1), HappeningKind.State, text));
        if (rule is null)
        {
            mill.Record(Load(mill, "OPEN", "B1", 2));
            return;
        }

        Assert.Equal(rule, Assert.Throws<LedgerRefusal>(() => mill.Record(Load(mill, "OPEN", "B1", 2))).Rule);
        mill.Record(new Happen(mill.Key(), "B1", PosedMill.Hour(3), HappeningKind.State, "open"), Load(mill, "OPEN", "B1", 4));
    }

    [Fact]
    public void Record_MovementsAndPeopleAndGas_NoneEverMeet() => Events.Sample(events =>
    {
        var mill = Mill();
        foreach (var (isMove, kind, hour, lasts) in events)
        {
            try
            {
                mill.Record(isMove ? Load(mill, kind % 2 == 0 ? "B1" : "OPEN", kind % 2 == 0 ? "WASTE" : "B1", hour, hour + lasts) : Happen(mill, Kinds[kind], hour));
            }
            catch (LedgerRefusal)
            {
                // What is refused is not in the book; what is in it is judged below.
            }
        }

        var bin = mill.Id("B1");
        for (var hour = 0; hour <= 24; hour++)
        {
            var bars = mill.Book.BarsOn(bin, PosedMill.Hour(hour));
            Assert.False(bars.PersonInside is not null && bars.UnderGas is not null);
            if (bars.PersonInside is not null || bars.UnderGas is not null)
            {
                Assert.DoesNotContain(mill.Book.MovementsOf(bin).Select(i => mill.Book.Movements[i]), m => m.At == PosedMill.Hour(hour) || (m.At < PosedMill.Hour(hour) && m.Until > PosedMill.Hour(hour)));
            }
        }
    });

    [Fact]
    public void Record_OneMovementAndOneEpisode_TheOrderOfRecordingDoesNotMatter() => Gen.Select(Gen.Int[1, 12], Gen.Int[0, 6], Gen.Int[1, 12], Gen.Int[1, 6], Gen.Bool).Sample((at, lasts, enters, stays, gas) =>
    {
        bool Taken(bool moveFirst)
        {
            var mill = Mill();
            var (begins, ends) = gas ? (HappeningKind.UnderGas, HappeningKind.GasCleared) : (HappeningKind.PersonInside, HappeningKind.PersonOut);
            Draft[] episode = [Happen(mill, begins, enters), Happen(mill, ends, enters + stays)];
            Draft[] move = [Load(mill, "B1", "WASTE", at, at + lasts)];
            try
            {
                mill.Record(moveFirst ? move : episode);
                mill.Record(moveFirst ? episode : move);
                return true;
            }
            catch (LedgerRefusal)
            {
                return false;
            }
        }

        var apart = lasts == 0 ? at < enters || at >= enters + stays : at + lasts <= enters || at >= enters + stays;
        Assert.Equal((apart, apart), (Taken(moveFirst: true), Taken(moveFirst: false)));
    });

    private static readonly Gen<(bool, int, int, int)[]> Events = Gen.Select(Gen.Bool, Gen.Int[0, 7], Gen.Int[1, 20], Gen.Int[0, 4]).Array[1, 12];

    private static Happen Happen(PosedMill mill, HappeningKind kind, double hour) => new(mill.Key(), "B1", PosedMill.Hour(hour), kind, "as posed");

    private static Move Load(PosedMill mill, string from, string to, double hour, double? until = null) =>
        new(mill.Key(), from, to, Mass.FromTonnes(1), PosedMill.Hour(hour), until is { } end ? PosedMill.Hour(end) : null);

    private static PosedMill Mill()
    {
        var mill = new PosedMill().Open(PlaceKind.Opening, "OPEN").Open(PlaceKind.Waste, "WASTE").Open(PlaceKind.Bin, "B1");
        return mill.Move("OPEN", "B1", 1000, 0);
    }
}
