using Evengrist.Laboratory;
using Evengrist.Laboratory.Methods;
using Evengrist.Ledger;
using Evengrist.Records.Laboratory;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests.Laboratory;

public sealed class InstrumentChecksTests
{
    [Theory, OnSqlite, OnPostgres]
    public void Keep_Checks_StandForTheInstrumentOnceAndAfterReopening(Store store)
    {
        using var site = new TestSite(store);
        using (var mill = site.Open())
        {
            Assert.Contains("There is no instrument", Assert.Single(InstrumentChecks.Keep(mill, Check(0, 12.1m), "Ada", Hour(1))), StringComparison.Ordinal);
            Assert.Equal(1, KeepLabInstruments.Keep(mill, new LabInstruments([new("NIR-2", ["NIR"], 24, [new(Property.Protein, 0.2m, FigureMark.Ours, "test")], [])]), "Ada"));
            Assert.Contains("in the future", Assert.Single(InstrumentChecks.Keep(mill, Check(2, 12.1m), "Ada", Hour(1))), StringComparison.Ordinal);
            Assert.Contains("No tolerance for ash", Assert.Single(InstrumentChecks.Keep(mill, Check(0, 0.5m) with { What = Property.Ash, Known = 0.5m }, "Ada", Hour(1))), StringComparison.Ordinal);
            Assert.Empty(InstrumentChecks.Keep(mill, Check(0, 12.1m), "Ada", Hour(1)));
            Assert.Empty(InstrumentChecks.Keep(mill, Check(1, 12.5m), "Ben", Hour(1)));
            Assert.Empty(InstrumentChecks.Keep(mill, Check(0, 12.1m), "Ada", Hour(1)));
        }

        using var reopened = site.Open();
        Assert.Equal(["Ada", "Ben"], InstrumentChecks.All(reopened).Select(c => c.By));
        Assert.Equal(InstrumentState.InCheck, Assert.Single(InstrumentChecks.Standings(reopened, Hour(0))).State);
        Assert.Equal(InstrumentState.Out, Assert.Single(InstrumentChecks.Standings(reopened, Hour(1))).State);
        Assert.Equal(0, KeepLabMethods.Newest(reopened).Version);
    }

    private static InstrumentCheck Check(int hour, decimal found) => new("nir-2", Hour(hour), Property.Protein, 12.0m, [found], "CS-1");

    private static Instant Hour(int hour) => SmallMill.Morning + Duration.FromHours(hour);
}
