using Evengrist.Ledger;
using Evengrist.Web.Face;
using Evengrist.Web.Sights;
using Evengrist.Web.Sights.Storage;

namespace Evengrist.Edge.Tests.Web.Bins;

public sealed class StorageTodayTests
{
    [Fact]
    public void Told_BinWithInsects_StandsBehindTheHoldsAndBeforeTheRest()
    {
        var folder = Directory.CreateTempSubdirectory("evengrist-today-");
        using (var mill = TinyMill.Open(Path.Combine(folder.FullName, "tiny.db")))
        {
            var (b01, b02) = mill.Ask(v => (v.Book.Named("B01"), v.Book.Named("B02")));
            Waiting[] waits = [new(StateKind.Watch, b01, "nearly full", null), new(StateKind.Hold, b01, "held", TinyMill.Morning)];

            // Nobody has read a cable: that is on the page of the store, and does not crowd Today.
            Assert.Equal(["held", "nearly full"], StorageSight.Told(mill, waits, TinyMill.Morning).Select(w => w.Text));

            mill.Record([new Measure("i", "B02", TinyMill.Morning, Property.LiveWeevils, 2, "/sample", default, "sieved")], "Ada Miller", "test");
            var told = StorageSight.Told(mill, waits, TinyMill.Morning);
            Assert.Equal(["held", "in store: live insects in the last sample (2 weevils, 0 others)", "nearly full"], told.Select(w => w.Text));
            Assert.Equal((StateKind.Watch, b02), (told[1].Kind, told[1].Place));
        }

        folder.Delete(recursive: true);
    }
}
