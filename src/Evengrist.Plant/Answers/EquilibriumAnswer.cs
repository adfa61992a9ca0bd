using Evengrist.Bins.Storage;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>Moisture of wheat and humidity of the air round it, by each equation asked.</summary>
/// <param name="Wheat">The wheat.</param>
/// <param name="Celsius">°C.</param>
/// <param name="Answers">One for each equation that has one.</param>
/// <param name="Refused">Why the others have none.</param>
public sealed record EquilibriumAnswer(string Wheat, double Celsius, IReadOnlyList<EquilibriumLine> Answers, IReadOnlyList<string> Refused)
{
    /// <summary>Answers a case; no answer where no equation asked has one.</summary>
    public static Reply<EquilibriumAnswer> To(EquilibriumCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        EquilibriumOutcome[] outcomes = [.. posed.Questions.Select(q => EquilibriumModel.Of(q, posed.Table))];
        string[] refused = [.. outcomes.OfType<NoEquilibrium>().Select(o => o.Reason)];
        return refused.Length == outcomes.Length ? new(null, refused) : new(new EquilibriumAnswer(posed.Questions[0].Wheat, posed.Questions[0].Celsius,
            [.. outcomes.OfType<Equilibrium>().Select(EquilibriumLine.Of)], refused), []);
    }
}

/// <summary>One equation's answer, with the mark of its constants.</summary>
public sealed record EquilibriumLine(string Equation, double MoisturePercent, double PercentOfDryMatter, double HumidityPercent, string Constants, IReadOnlyList<string> Notes)
{
    internal static EquilibriumLine Of(Equilibrium e) => new(e.Constants.Form.Words(), e.MoisturePercent, e.PercentDry, 100 * e.Humidity, e.Constants.Mark.Words(), e.Notes);
}
