namespace Evengrist.Milling.Learning;

/// <summary>What became of tuning a mill.</summary>
public abstract record MillFitOutcome
{
    private protected MillFitOutcome()
    {
    }
}

/// <summary>The mill is tuned.</summary>
/// <param name="Tuning">What was found.</param>
/// <param name="Rounds">How many rounds it took.</param>
/// <param name="Compared">Every measured figure beside the tuned model's.</param>
public sealed record MillTuned(MillTuning Tuning, int Rounds, IReadOnlyList<ComparedFigure> Compared) : MillFitOutcome;

/// <summary>The mill was not tuned.</summary>
/// <param name="Reasons">Why, each a sentence that says what to do.</param>
public sealed record MillNotTuned(IReadOnlyList<string> Reasons) : MillFitOutcome;

/// <summary>A measured figure beside the model's.</summary>
/// <param name="Test">Name of the test.</param>
/// <param name="What">What was measured, as "1M ash".</param>
/// <param name="Measured">As measured: per cent, ash and protein of dry matter.</param>
/// <param name="Modelled">As the tuned model has it.</param>
/// <param name="Uncertainty">One standard uncertainty of their difference: of the measuring and the model's shortfall.</param>
public sealed record ComparedFigure(string Test, string What, double Measured, double Modelled, double Uncertainty)
{
    /// <summary>Difference in standard uncertainties.</summary>
    public double Deviation => (Measured - Modelled) / Uncertainty;
}
