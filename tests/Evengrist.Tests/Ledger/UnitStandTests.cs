using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Laboratory.Lots;

namespace Evengrist.Tests.Ledger;

/// <summary>Where a pallet stands; cases are derived by hand.</summary>
public sealed class UnitStandTests
{
    [Fact]
    public void Of_APalletSentAndBack_HasNotGone()
    {
        var mill = LotMill.Open().Move("P1", "BAKERY", 1, LotMill.Hour(30)).Move("BAKERY", "P1", 1, LotMill.Hour(50));
        UnitStand At(double hour) => UnitStand.Of(mill.Book, mill.Book.Named("P1").Id, LotMill.At(hour));
        Assert.Equal(UnitWhere.NotPacked, At(-9).Where);
        Assert.Equal((UnitWhere.Here, Mass.FromTonnes(1m), null), (At(29).Where, At(29).Here, At(29).Customer));
        Assert.Equal((UnitWhere.Sent, Mass.Zero, "BAKERY", LotMill.At(30)), (At(40).Where, At(40).Here, At(40).Customer!.Code, At(40).LeftAt));
        var back = At(60);
        Assert.Equal((UnitWhere.CameBack, "BAKERY", LotMill.At(50), null), (back.Where, back.BackFrom!.Code, back.BackAt, back.Customer));
        // What came back is not packed anew.
        Assert.Equal((Mass.FromTonnes(1m), Mass.FromTonnes(1m), Mass.Zero, At(29).PackedAt), (back.Packed, back.Here, back.Gone, back.PackedAt));
        // Sent once more it has gone, and that is when.
        mill.Move("P1", "BAKERY", 1, LotMill.Hour(70));
        Assert.Equal((UnitWhere.Sent, LotMill.At(70), Mass.FromTonnes(1m)), (At(80).Where, At(80).LeftAt, At(80).Gone));
    }

    [Fact]
    public void Of_APalletSentInPartOrUsed_SaysBoth()
    {
        var mill = LotMill.Open().Move("P2", "BAKERY", 0.4m, LotMill.Hour(30));
        var part = UnitStand.Of(mill.Book, mill.Book.Named("P2").Id, LotMill.At(40));
        Assert.Equal((UnitWhere.Here, Mass.FromTonnes(0.6m), Mass.FromTonnes(0.4m), "BAKERY"), (part.Where, part.Here, part.Gone, part.Customer!.Code));
        mill.Move("P3", "FW", 1, LotMill.Hour(30));
        var used = UnitStand.Of(mill.Book, mill.Book.Named("P3").Id, LotMill.At(40));
        Assert.Equal((UnitWhere.Used, "FW", null, Mass.Zero), (used.Where, used.To!.Code, used.Customer, used.Gone));
    }
}
