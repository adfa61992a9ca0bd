using Evengrist.Ledger;

namespace Evengrist.Season;

/// <summary>Wheat that goes into a flour.</summary>
/// <param name="Wheat">Code of the wheat or offer.</param>
/// <param name="Flour">Code of the flour.</param>
/// <param name="Period">Number of the period, from 0.</param>
/// <param name="Tonnes">t of wheat as it lies.</param>
public sealed record PlannedUse(string Wheat, string Flour, int Period, double Tonnes);

/// <summary>Wheat that is bought.</summary>
/// <param name="Offer">Code of the offer.</param>
/// <param name="Tier">Number of the tier of its price curve, from 0.</param>
/// <param name="Period">Number of the period, from 0.</param>
/// <param name="Tonnes">t as it lies.</param>
public sealed record PlannedPurchase(string Offer, int Tier, int Period, double Tonnes);

/// <summary>Wheat that lies there at the end of a period.</summary>
/// <param name="Wheat">Code of the wheat or offer.</param>
/// <param name="Period">Number of the period, from 0.</param>
/// <param name="Tonnes">t as it lies.</param>
public sealed record PlannedStock(string Wheat, int Period, double Tonnes);

/// <summary>Flour of a period.</summary>
/// <param name="Flour">Code of the flour.</param>
/// <param name="Period">Number of the period, from 0.</param>
/// <param name="WheatTonnes">Wheat ground for it, t.</param>
/// <param name="FlourTonnes">Flour made, t.</param>
/// <param name="Hours">Hours of its mill unit.</param>
/// <param name="UnmetTonnes">Flour wanted and not there, t.</param>
/// <param name="StockTonnes">Flour in store at the end, t.</param>
public sealed record PlannedFlour(string Flour, int Period, double WheatTonnes, double FlourTonnes, double Hours, double UnmetTonnes, double StockTonnes);

/// <summary>A limit that is not kept.</summary>
/// <param name="Flour">Code of the flour.</param>
/// <param name="Period">Number of the period, from 0.</param>
/// <param name="What">The property.</param>
/// <param name="IsBelow">Below the least; above the most otherwise.</param>
/// <param name="Amount">How far the mix is off, in the unit of the property, beyond any relief.</param>
/// <param name="Tonnes">t of wheat mix that is off.</param>
/// <param name="Cost">What it is taken to cost, money.</param>
public sealed record PlannedMiss(string Flour, int Period, Property What, bool IsBelow, double Amount, double Tonnes, double Cost);

/// <summary>Relaxation of a limit that is made use of.</summary>
/// <param name="Flour">Code of the flour.</param>
/// <param name="Period">Number of the period, from 0.</param>
/// <param name="What">The property.</param>
/// <param name="IsBelow">Of the least; of the most otherwise.</param>
/// <param name="Step">Number of the step, from 0.</param>
/// <param name="Share">Which part of the step, 0 to 1.</param>
/// <param name="Tonnes">t of wheat mix.</param>
/// <param name="Cost">Money.</param>
public sealed record PlannedRelief(string Flour, int Period, Property What, bool IsBelow, int Step, double Share, double Tonnes, double Cost);
