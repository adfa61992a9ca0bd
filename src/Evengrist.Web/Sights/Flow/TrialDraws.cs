using System.Globalization;
using Evengrist.Milling.Draws;
using Evengrist.Milling.Learning;
using Evengrist.Planning.Milling;
using Evengrist.Records.Milling;
using Evengrist.Records.Streams;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Flow;

/// <summary>What a trial's draws are about: the same sheet, the same survey.</summary>
/// <param name="Unit">The unit.</param>
/// <param name="Version">Version of its flow sheet.</param>
/// <param name="Survey">Version of its stream survey; null where none is kept.</param>
/// <param name="Tests">Its kept mill tests in versions; null where the trial does not rest on them.</param>
public sealed record TrialDraws(string Unit, int Version, int? Survey, string? Tests)
{
    /// <summary>How many mills the button draws.</summary>
    public const int Usual = 10_000;

    /// <summary>The work of drawing the mills a trial asks for; null where it asks for none.</summary>
    /// <param name="shelf">Where work is kept.</param>
    /// <param name="kept">The unit.</param>
    /// <param name="survey">Its newest survey; null where none is kept.</param>
    /// <param name="history">Its kept mill tests; null where there are none.</param>
    /// <param name="ask">The trial.</param>
    /// <param name="tuning">What is known of the mill.</param>
    /// <param name="query">The trial as it was typed.</param>
    /// <param name="again">Whether what was stopped is begun anew.</param>
    public static LongWork<DrawsOutcome>? Work(WorkShelf shelf, KeptFlowSheet kept, KeptSurvey? survey, MillTestHistory? history, TrialAsk ask, MillTuning tuning, IQueryCollection query, bool again)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(kept);
        ArgumentNullException.ThrowIfNull(ask);
        if (ask is not { Draws: { } draws, Wheat: { } wheat })
        {
            return null;
        }

        var spec = new DrawsSpec(kept.Sheet, wheat.Of(), tuning) { Try = ask.Tries ? ask.Change : null, OtherWheat = ask.OtherWheat?.Of(), Sets = ask.Sets, PricePerTonne = ask.Prices, Draws = draws };
        return shelf.WorkOn(new TrialDraws(kept.Unit, kept.Version, survey?.Version, ask.IsHistoryAsked ? history?.Mark : null), query.Without(), () => LongWork.Begin<DrawsOutcome>(
            (tell, stop) =>
            {
                var telling = new Telling<int>(done => tell(new WorkStep(string.Create(CultureInfo.InvariantCulture, $"{done:N0} of {draws:N0} mills drawn"), (double)done / draws)));
                telling.Report(0);
                return DrawRun.Draw(spec, null, telling, stop);
            },
            why => new MillsNotDrawn([why])), again);
    }
}
