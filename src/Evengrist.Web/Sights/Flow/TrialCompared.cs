using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Records.Milling;
using Evengrist.Records.Streams;

namespace Evengrist.Web.Sights.Flow;

/// <summary>A kept trial reckoned anew on the flow sheet of now.</summary>
/// <param name="Kept">The trial.</param>
/// <param name="Ask">What was typed, read again.</param>
/// <param name="Tuning">What is known of the mill by what it was tuned to.</param>
/// <param name="Trial">The answer; null where what was typed can no longer be read.</param>
public sealed record TrialReckoned(KeptTrial Kept, TrialAsk Ask, MillTuning Tuning, MillTrial? Trial)
{
    /// <summary>Reckons it.</summary>
    public static TrialReckoned Of(KeptTrial kept, KeptFlowSheet sheet, KeptSurvey? survey, MillTunings tunings, MillTestHistory? history)
    {
        ArgumentNullException.ThrowIfNull(kept);
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(tunings);
        var ask = new TrialAsk(key => kept.Paper.Typed.GetValueOrDefault(key), sheet.Sheet, survey, history);
        if (ask.Wheat is not { } wheat || ask.Fields.Faults.Count > 0)
        {
            return new TrialReckoned(kept, ask, MillTuning.None(sheet.Sheet), null);
        }

        var tuning = tunings.OrNone(sheet.Sheet, ask.Tests).Tuning;
        return new TrialReckoned(kept, ask, tuning, MillTrial.Of(sheet.Sheet, ask.Tries ? ask.Change : null, wheat.Of(), ask.OtherWheat?.Of(), tuning, ask.Sets, ask.Prices));
    }

    /// <summary>Why there is no answer, each a sentence; empty where there is one.</summary>
    public IReadOnlyList<string> Faults => Trial is null ? Ask.Fields.Faults : Trial.Unsolved;
}

/// <summary>Two trials beside each other, and what the second does otherwise than the first.</summary>
/// <param name="One">The first.</param>
/// <param name="Other">The second.</param>
/// <param name="Between">The second less the first, by what the first knows of the mill; null where one has no answer.</param>
public sealed record TrialCompared(TrialReckoned One, TrialReckoned Other, MillChange? Between)
{
    /// <summary>Whether both rest on the same wheat and tests.</summary>
    public bool SameBasics => One.Ask.Wheat == Other.Ask.Wheat && One.Tuning.Figures == Other.Tuning.Figures;

    /// <summary>The second's work of the rolls less the first's; null where one has no answer.</summary>
    public WorkChange? Work { get; private init; }

    /// <summary>Compares.</summary>
    public static TrialCompared Of(TrialReckoned one, TrialReckoned other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        if (one.Trial?.Now is null || other.Trial?.Now is null)
        {
            return new TrialCompared(one, other, null);
        }

        var (sheet, prices) = (one.Ask.Sheet, one.Ask.Prices ?? other.Ask.Prices);
        var (now, then) = (one.Ask.Change.Apply(sheet), other.Ask.Change.Apply(sheet));
        return new TrialCompared(one, other, MillChange.Of(now, then, Wheat(one), Wheat(other), one.Tuning, null, prices)) { Work = WorkChange.Of(now, then, Wheat(one), Wheat(other), one.Tuning) };
    }

    private static Evengrist.Milling.Stock.MillWheat Wheat(TrialReckoned of) => (of.Ask.OtherWheat ?? of.Ask.Wheat!).Of();
}
