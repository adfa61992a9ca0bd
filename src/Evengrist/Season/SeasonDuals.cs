using Evengrist.Ledger;

namespace Evengrist.Season;

/// <summary>What one more unit of anything scarce is worth to the plan, from the linear one: exact for a small change.</summary>
/// <param name="Wheats">A tonne of a wheat in a period.</param>
/// <param name="Limits">A limit of a flour in a period.</param>
/// <param name="Units">An hour of a mill unit in a period.</param>
/// <param name="Flours">A tonne of a flour in a period.</param>
/// <param name="Homes">A tonne of room in a bin at the end of a period.</param>
public sealed record SeasonDuals(
    IReadOnlyList<WheatWorth> Wheats, IReadOnlyList<LimitWorth> Limits, IReadOnlyList<UnitWorth> Units, IReadOnlyList<FlourWorth> Flours, IReadOnlyList<HomeWorth> Homes)
{
    /// <summary>Relief of a limit that is used up, by flour, period and step.</summary>
    public IReadOnlyList<ReliefWorth> Reliefs { get; init; } = [];

    /// <summary>A tonne left at the end, where carry-out is short.</summary>
    public IReadOnlyList<CarryOutWorth> CarryOut { get; init; } = [];
}

/// <summary>What one more t of a wheat saves, were it there in a period.</summary>
public sealed record WheatWorth(string Wheat, int Period, double PerTonne);

/// <summary>What it saves to give a wheat mix one more t·unit towards a limit: t of mix, by the weight its property averages by, times units of the scale it averages on.</summary>
public sealed record LimitWorth(string Flour, int Period, Property What, bool IsLeast, double PerTonneUnit);

/// <summary>What one more hour of a mill unit saves.</summary>
public sealed record UnitWorth(string Unit, int Period, double PerHour);

/// <summary>What one more t of a flour saves, were it there in a period.</summary>
public sealed record FlourWorth(string Flour, int Period, double PerTonne);

/// <summary>What one more t of room in a bin saves at the end of a period.</summary>
public sealed record HomeWorth(string Home, int Period, double PerTonne);

/// <summary>What it saves if a step of relief gave one more t·unit, on the scale its property averages on.</summary>
public sealed record ReliefWorth(string Flour, int Period, Property What, bool IsLeast, int Step, double PerTonneUnit);

/// <summary>What one more t left at the end saves beside its end value, by the class that carry-out asks for; empty for all wheat.</summary>
public sealed record CarryOutWorth(string WheatClass, double PerTonne);
