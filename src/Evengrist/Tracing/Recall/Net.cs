using Evengrist.Ledger;

namespace Evengrist.Tracing.Recall;

/// <summary>How wide a recall is cast, with what it takes and what it may miss.</summary>
/// <param name="Kind">Which net.</param>
/// <param name="Packages">What is in it, by when it was made.</param>
/// <param name="Balance">Their whole mass: made, in stock, held, shipped, used.</param>
/// <param name="Consignees">Customers who got any of them.</param>
/// <param name="ExpectedInside">Suspect grams expected in its packages, by the beliefs.</param>
/// <param name="ExpectedOutside">Suspect grams expected in packages outside it, by the beliefs.</param>
/// <param name="ChanceOfMissing">
/// Belief, 0 to 1, in the hypotheses under which at least one package outside holds more than the threshold. What no hypothesis describes is not in it.
/// </param>
/// <param name="CanBeMissed">Packages outside it that under some outflow, any at all, can hold more than the threshold.</param>
public sealed record Net(
    NetKind Kind, IReadOnlyList<RecallPackage> Packages, PackageBalance Balance, IReadOnlyList<Place> Consignees,
    double ExpectedInside, double ExpectedOutside, double ChanceOfMissing, int CanBeMissed);
