namespace Evengrist.Tempering;

/// <summary>What became of a question for tempering water.</summary>
public abstract record TemperWaterOutcome
{
    private protected TemperWaterOutcome()
    {
    }
}

/// <summary>The water by balance, for each tonne of clean wheat as it lies before water.</summary>
/// <param name="Stages">Stage by stage, in order.</param>
/// <param name="LitresPerKilogram">Litres of one kilogram of the water.</param>
/// <param name="EvaporationKilogramsPerTonne">Water lost to first break, kg for each tonne of wheat before water.</param>
/// <param name="AtFirstBreak">Moisture to expect at first break, ±.</param>
/// <param name="Remarks">What must be said with it.</param>
public sealed record TemperWater(
    IReadOnlyList<TemperStage> Stages, double LitresPerKilogram, double EvaporationKilogramsPerTonne, MoistureForecast AtFirstBreak, IReadOnlyList<string> Remarks) : TemperWaterOutcome
{
    /// <summary>Water of all stages, kg for each tonne of wheat before water.</summary>
    public double KilogramsPerTonne => Stages.Sum(s => s.KilogramsPerTonne);

    /// <summary>Mass that reaches first break, kg for each tonne of wheat before water.</summary>
    public double FirstBreakKilogramsPerTonne => 1000 + KilogramsPerTonne - EvaporationKilogramsPerTonne;
}

/// <summary>One stage of wetting.</summary>
/// <param name="FromPercent">Moisture before it, per cent wet basis.</param>
/// <param name="ToPercent">Moisture after it, per cent wet basis.</param>
/// <param name="KilogramsPerTonne">Water let in, kg for each tonne of wheat as it lay before the first stage.</param>
public sealed record TemperStage(double FromPercent, double ToPercent, double KilogramsPerTonne);

/// <summary>There is no water to give.</summary>
/// <param name="Reasons">Why, each a sentence that says what to do.</param>
public sealed record NoTemperWater(IReadOnlyList<string> Reasons) : TemperWaterOutcome;
