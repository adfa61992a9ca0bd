namespace Evengrist.Laboratory.Watch;

/// <summary>What so many pairs say by themselves.</summary>
/// <param name="Pairs">How many, from the first.</param>
/// <param name="Rivals">Every answer by its probability, the likeliest first.</param>
/// <param name="Fit">How many times better than "nothing moved" the pairs fit, each start in parts of what is asked of it: from 1 on something moved.</param>
internal sealed record WatchFinding(int Pairs, IReadOnlyList<WatchRival> Rivals, double Fit)
{
    /// <summary>What moved is named where it has this share of all that may have moved [ours].</summary>
    public const double NamingShare = 0.9;

    /// <summary>A verdict once reached stands while it is this likely: likelier than not.</summary>
    public const double Stands = 0.5;

    private static readonly WatchVerdict[] Moves = [WatchVerdict.Instrument, WatchVerdict.Flour, WatchVerdict.Mill, WatchVerdict.Both];

    /// <summary>What moved, where something did and it can be named; otherwise none.</summary>
    public WatchVerdict Moved => Fit >= 1 ? Moves.FirstOrDefault(v => Of(v) >= NamingShare * (1 - Of(WatchVerdict.NothingMoved))) : WatchVerdict.None;

    /// <summary>Probability of a verdict's causes together.</summary>
    public double Of(WatchVerdict verdict) => Rivals.Where(r => AnswerOf(r.Cause) == verdict).Sum(r => r.Probability);

    /// <summary>What is said of a move after what was said before: what is found now, or what was found while it stands.</summary>
    /// <param name="before">What was said one pair before.</param>
    public WatchVerdict After(WatchVerdict before) => Moved is not WatchVerdict.None and var moved ? moved : before != WatchVerdict.None && Of(before) >= Stands ? before : WatchVerdict.None;

    private static WatchVerdict AnswerOf(WatchCause cause) => cause switch
    {
        WatchCause.Instrument or WatchCause.InstrumentDrift => WatchVerdict.Instrument,
        WatchCause.Flour => WatchVerdict.Flour,
        WatchCause.Mill => WatchVerdict.Mill,
        WatchCause.Both => WatchVerdict.Both,
        _ => WatchVerdict.NothingMoved,
    };
}
