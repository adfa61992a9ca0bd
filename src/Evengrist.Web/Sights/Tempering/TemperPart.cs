using Evengrist.Tempering;

namespace Evengrist.Web.Sights.Tempering;

/// <summary>All or part of what lies in a temper bin, with the aim and rest of its own wheat.</summary>
/// <param name="Content">Wheat and water.</param>
/// <param name="Hardness">How hard most of its wheat is; none where its class is not known.</param>
/// <param name="IsOneHardness">Whether all of it that has a class is of that hardness.</param>
/// <param name="Advice">The aim; null where the hardness is not known.</param>
/// <param name="Rest">The rest wanted; null where the hardness is not known.</param>
/// <param name="EvaporationPercent">Evaporation to first break allowed for, per cent.</param>
public sealed record TemperPart(TemperContent Content, Hardness Hardness, bool IsOneHardness, AimAdvice? Advice, RestCorrection? Rest, double EvaporationPercent)
{
    private const double Trace = 0.02;

    /// <summary>Looks at what a part is and what it needs.</summary>
    /// <param name="content">Wheat and water.</param>
    /// <param name="aims">The mill's aims.</param>
    /// <param name="season">The air.</param>
    /// <param name="celsius">Temperature of the wheat, °C.</param>
    /// <param name="evaporationPercent">Evaporation to first break allowed for, per cent.</param>
    public static TemperPart Of(TemperContent content, TemperAims aims, TemperSeason season, double celsius, double evaporationPercent)
    {
        ArgumentNullException.ThrowIfNull(content);
        ArgumentNullException.ThrowIfNull(aims);
        var groups = content.Classes.GroupBy(c => aims.OfClass(c.Class)).Select(g => (g.Key, Share: g.Sum(c => c.Share))).OrderByDescending(g => g.Share).ToArray();
        var hardness = groups.FirstOrDefault(g => g.Key != Hardness.None).Key;
        var aim = aims.Of(hardness);
        return new TemperPart(
            content, hardness, groups.Count(g => g.Share >= Trace) <= 1, aim is null ? null : AimAdvice.Of(aim, season, null),
            aim is null ? null : RestCorrection.Of(aim.Hours, DiffusionLaw.ReferenceCelsius, celsius), evaporationPercent);
    }

    /// <summary>The water by balance to its aim; null where it cannot be said, or where wheats of several aims lie together.</summary>
    public TemperWaterOutcome? Asked => IsOneHardness && Advice is { } advice ? Content.Asked(advice.Percent, EvaporationPercent) : null;

    /// <summary>The moisture to expect at first break; null where it cannot be said.</summary>
    public MoistureForecast? AtFirstBreak => Content.AtFirstBreak(EvaporationPercent);
}
