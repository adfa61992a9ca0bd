using Evengrist.Intake.Paying;
using Evengrist.Ledger;

namespace Evengrist.Plant.Answers.Paying;

/// <summary>Loads taken together. Masses in kilograms; money in the currency of the statement or report; one standard uncertainty in the unit of the value.</summary>
public sealed record GroupAnswer(
    string Name, int Loads, int Voided, int Settled, decimal NetKg, decimal SettledNetKg, decimal CleanKg, decimal SettledKg, decimal Bushels, IReadOnlyList<QualityAnswer> Quality,
    decimal? Gross, decimal? Advances, decimal? Paid, decimal? Left, decimal? EachBushel, decimal? EachTonneOfNet, decimal? AtBasePrice, IReadOnlyList<CauseAnswer> Causes)
{
    /// <summary>The group in plain values.</summary>
    public static GroupAnswer Of(LoadGroup group)
    {
        ArgumentNullException.ThrowIfNull(group);
        return new(group.Name, group.Standing.Count, group.Accounts.Count - group.Standing.Count, group.Settled.Count, group.Net.Kilograms, group.SettledNet.Kilograms, group.Clean.Kilograms, group.SettledMass.Kilograms,
            Math.Round(group.Bushels, 6), [.. group.Quality.Select(QualityAnswer.Of)], group.Gross?.Amount, group.Advances?.Amount, group.Paid?.Amount, group.Left?.Amount,
            Rounded(group.EachBushel?.Amount), Rounded(group.EachTonne?.Amount), Rounded(group.AtBase?.Amount), [.. group.Causes.Select(c => new CauseAnswer(c.What, Rounded(c.Money.Amount)!.Value))]);
    }

    internal static decimal? Rounded(decimal? value) => value is { } number ? Math.Round(number, 6) : null;
}

/// <summary>An average over loads.</summary>
public sealed record QualityAnswer(string What, decimal Value, string Unit, string Basis, decimal? StandardUncertainty, int Loads, decimal NetKg)
{
    internal static QualityAnswer Of(QualityLine line) => new(line.What.Words(), Math.Round(line.Figure.Value, 6), line.Figure.Unit, line.Figure.Basis.IsStated ? line.Figure.Basis.ToString() : "",
        GroupAnswer.Rounded(line.Figure.StandardUncertainty), line.Loads, line.Net.Kilograms);
}

/// <summary>What one cause moved the pay by.</summary>
public sealed record CauseAnswer(string What, decimal Money);
