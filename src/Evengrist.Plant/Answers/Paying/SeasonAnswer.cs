using Evengrist.Intake.Paying;

namespace Evengrist.Plant.Answers.Paying;

/// <summary>The season report in plain values.</summary>
public sealed record SeasonAnswer(
    string From, string Until, string Currency, GroupAnswer All, IReadOnlyList<SeasonRowAnswer> Districts, IReadOnlyList<SeasonRowAnswer> Varieties, IReadOnlyList<SeasonRowAnswer> Fields)
{
    /// <summary>The report in plain values.</summary>
    public static SeasonAnswer Of(SeasonReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return new($"{report.From:R}", $"{report.Until:R}", report.Currency, GroupAnswer.Of(report.All),
            [.. report.Districts.Select(SeasonRowAnswer.Of)], [.. report.Varieties.Select(SeasonRowAnswer.Of)], [.. report.Fields.Select(SeasonRowAnswer.Of)]);
    }
}

/// <summary>One row of it. Rank, protein over the mean and price over the mean are within the district and class; null for a district or variety.</summary>
public sealed record SeasonRowAnswer(GroupAnswer Group, string District, int? Rank, int RankedOf, decimal? ProteinOverMean, decimal? EachTonneOverMean, string Words)
{
    internal static SeasonRowAnswer Of(SeasonRow row) => new(GroupAnswer.Of(row.Group), row.District, row.Rank, row.Of, GroupAnswer.Rounded(row.ProteinOverMean), GroupAnswer.Rounded(row.EachTonneOverMean), row.Words);
}
