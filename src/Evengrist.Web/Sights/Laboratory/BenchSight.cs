using Evengrist.Laboratory.Methods;
using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>What lies on the bench at a moment.</summary>
/// <param name="Methods">The methods in use.</param>
/// <param name="Plan">The sampling plan and its version.</param>
/// <param name="Standings">How the instruments stand.</param>
/// <param name="Planned">What the plan asks for, the longest due first.</param>
/// <param name="Waiting">Samples taken that wait for a result, the oldest first.</param>
/// <param name="Tested">Samples with every result, the newest first, each with its rounds.</param>
/// <param name="Lots">Places of the plan's kinds to choose from.</param>
/// <param name="Instruments">What is known of the instruments.</param>
public sealed record BenchSight(
    LabMethods Methods, (LabPlan Plan, int Version) Plan, IReadOnlyList<InstrumentStanding> Standings, IReadOnlyList<PlannedSample> Planned, IReadOnlyList<TakenSample> Waiting,
    IReadOnlyList<(TakenSample Sample, IReadOnlyList<LabRound> Rounds)> Tested, IReadOnlyList<string> Lots, InstrumentRecord Instruments)
{
    /// <summary>Samples older than this are off the bench, days.</summary>
    public const int Days = 7;

    private const int MostTested = 12;

    /// <summary>The bench of a mill.</summary>
    public static BenchSight Of(Mill mill, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var (methods, (plan, version, _)) = (KeepLabMethods.Newest(mill).Methods, KeepLabPlan.Newest(mill));
        var (planned, taken, places) = mill.Ask(view => (PlannedSample.Of(plan, view.Book, at), TakenSample.Within(view.Book, at - Duration.FromDays(Days), at),
            view.Book.Places.Where(p => p.Kind is PlaceKind.MillUnit or PlaceKind.FlourBin or PlaceKind.PackingLine).Select(p => p.Code).ToArray()));
        var tested = taken.Reverse().Where(s => s.Readings.Count > 0).Take(MostTested).Select(s => (s, LabRounds.Of(mill, s, methods))).ToArray();
        var instruments = InstrumentChecks.Record(mill, at);
        return new(methods, (plan, version), instruments.Standings(at), planned, [.. taken.Where(s => !s.IsTested)], tested, places, instruments);
    }

    /// <summary>Instruments that serve a method.</summary>
    public IReadOnlyList<InstrumentStanding> Serving(string method) => [.. Standings.Where(s => s.Instrument.Serves(method))];
}
