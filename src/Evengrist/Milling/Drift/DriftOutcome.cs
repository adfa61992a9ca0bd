using NodaTime;

namespace Evengrist.Milling.Drift;

/// <summary>What came of looking for drift.</summary>
public abstract record DriftOutcome
{
    private protected DriftOutcome()
    {
    }
}

/// <summary>Looked for.</summary>
/// <param name="Found">What drifted, what costs most first; empty where nothing shows.</param>
/// <param name="Series">Every figure measured twice or more, with its own band.</param>
public sealed record DriftLooked(IReadOnlyList<DriftFound> Found, IReadOnlyList<DriftSeries> Series) : DriftOutcome;

/// <summary>Not looked for.</summary>
/// <param name="Reasons">Why, each a sentence that says what to do.</param>
public sealed record DriftNotLooked(IReadOnlyList<string> Reasons) : DriftOutcome;

/// <summary>A figure over time with its own band.</summary>
/// <param name="What">The figure, as "B3 release".</param>
/// <param name="OwnSpread">How much it scatters from test to test, one standard deviation; the band is three either side.</param>
/// <param name="Points">Test by test.</param>
public sealed record DriftSeries(string What, double OwnSpread, IReadOnlyList<DriftPoint> Points);

/// <summary>A figure at one test.</summary>
/// <param name="At">When.</param>
/// <param name="Measured">As measured.</param>
/// <param name="Own">As the tuned mill has it with the settings and wheat of then and without drift: the middle of its band.</param>
/// <param name="IsOutside">Whether it lies outside its band.</param>
public sealed record DriftPoint(Instant At, double Measured, double Own, bool IsOutside);

/// <summary>What flour and feed bring, money a tonne.</summary>
/// <param name="Flour">Flour.</param>
/// <param name="Feed">Bran, wheatfeed and germ.</param>
public sealed record DriftPrices(decimal Flour, decimal Feed);
