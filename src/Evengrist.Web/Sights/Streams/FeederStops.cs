using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Streams.Additions;
using Evengrist.Tracing;
using Evengrist.Web.Sights.Traces;
using NodaTime;

namespace Evengrist.Web.Sights.Streams;

/// <summary>Feeders that stood while flour ran, as the ledger has it, and the lots of the one that is looked at.</summary>
/// <param name="Stops">The stops, the newest first.</param>
/// <param name="Doses">What was put into each bin's flour in that time; empty where nothing was fed at all.</param>
/// <param name="Looked">The stop whose lots are listed; null for none.</param>
/// <param name="Reach">What its flour has reached, by packages that may hold the usual threshold of a trace or more.</param>
public sealed record FeederStops(IReadOnlyList<FeederStop> Stops, IReadOnlyList<FedDose> Doses, FeederStop? Looked, ReachOutcome? Reach)
{
    /// <summary>How far it looks back.</summary>
    public static readonly Duration Span = Duration.FromDays(60);

    /// <summary>Looks back from a moment.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="at">The moment.</param>
    /// <param name="looked">The stop whose lots are wanted, as <see cref="Key"/> writes it.</param>
    public static FeederStops Of(Mill mill, Instant at, string? looked)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Ask(view =>
        {
            var stops = FeederWatch.Stops(view.Book, at - Span, at);
            var one = stops.FirstOrDefault(s => Key(s) == looked);
            return new FeederStops(
                stops, FeederWatch.Doses(view.Book, at - Span, at), one,
                one is null ? null : view.Tracer().Reach(new TraceQuestion(one.Mixer.Code) { From = one.From, Until = one.Until, AsOf = at, Threshold = Mass.FromKilograms(TraceAsk.UsualThreshold) }, Belief.Usual));
        });
    }

    /// <summary>What names a stop in an address.</summary>
    public static string Key(FeederStop stop)
    {
        ArgumentNullException.ThrowIfNull(stop);
        return $"{stop.Mixer.Code} {stop.To.Code} {stop.From.ToUnixTimeSeconds()} {stop.Additive}";
    }
}
