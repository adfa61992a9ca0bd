using System.Globalization;

namespace Evengrist.Tempering;

/// <summary>The moisture to aim for at first break, from hardness and season.</summary>
/// <param name="Percent">Per cent wet basis.</param>
/// <param name="Aim">The line of the table it rests on.</param>
/// <param name="Season">The air it is for.</param>
/// <param name="Reasons">How it came about, with the mark of each figure.</param>
public sealed record AimAdvice(double Percent, TemperAim Aim, TemperSeason Season, IReadOnlyList<string> Reasons)
{
    /// <summary>Reckons it: the table's range, taken high in dry air and low in damp air, and no higher than the flour's most moisture allows.</summary>
    /// <remarks>Flour comes out drier than wheat at first break by 2.0, 1.5 or 1.0 points in dry, middling or damp air: 1 to 2 points is from memory, that the season parts them so is ours.</remarks>
    /// <param name="aim">The line of the table.</param>
    /// <param name="season">The air.</param>
    /// <param name="flourCeilingPercent">Most moisture the flour may have, per cent wet basis, 10 to 20; null where there is none.</param>
    /// <exception cref="ArgumentOutOfRangeException">No season is said.</exception>
    public static AimAdvice Of(TemperAim aim, TemperSeason season, double? flourCeilingPercent)
    {
        ArgumentNullException.ThrowIfNull(aim);
        var wanted = aim.Percent(season);
        var reasons = new List<string>
        {
            $"{aim.Hardness.Words()}: {N(aim.LeastPercent)} to {N(aim.MostPercent)} % at first break ({aim.MoistureMark.Words()}; {aim.Source}).",
            $"{season.Words()}: {N(wanted)} %, the {(season == TemperSeason.Dry ? "top" : season == TemperSeason.Damp ? "bottom" : "middle")} of it ({TemperMark.Ours.Words()}).",
        };
        if (flourCeilingPercent is not { } ceiling)
        {
            return new AimAdvice(wanted, aim, season, reasons);
        }

        var loss = LossInMill(season);
        var most = ceiling + loss;
        reasons.Add($"Flour of at most {N(ceiling)} % allows {N(most)} %: it loses about {N(loss)} points in the mill (1 to 2 from memory, by season ours). {(most < wanted ? "That lowers the aim." : "That does not bind.")}");
        return new AimAdvice(Math.Min(wanted, most), aim, season, reasons);
    }

    private static double LossInMill(TemperSeason season) => season == TemperSeason.Dry ? 2 : season == TemperSeason.Damp ? 1 : 1.5;

    private static string N(double percent) => percent.ToString("0.##", CultureInfo.InvariantCulture);
}
