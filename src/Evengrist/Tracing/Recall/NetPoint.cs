using Evengrist.Quantities;

namespace Evengrist.Tracing.Recall;

/// <summary>One step of the choice between a narrower net and a smaller chance of missing.</summary>
/// <param name="Chance">Packages in the net hold more than the threshold with at least this chance; above 0 to 1.</param>
/// <param name="Packages">How many.</param>
/// <param name="Mass">Their whole mass.</param>
/// <param name="ChanceOfMissing">As <see cref="Net.ChanceOfMissing"/>.</param>
/// <param name="ExpectedOutside">As <see cref="Net.ExpectedOutside"/>.</param>
public sealed record NetPoint(double Chance, int Packages, Mass Mass, double ChanceOfMissing, double ExpectedOutside);
