using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tracing.Structure;

/// <summary>A truck with the recall it would have meant.</summary>
/// <param name="Truck">The truck.</param>
/// <param name="At">When it was loaded.</param>
/// <param name="Kilograms">What it brought.</param>
/// <param name="Recall">Kilograms of all packages over the threshold under each hypothesis, in the order of the answer.</param>
/// <param name="RecallUnion">The same under any of them.</param>
/// <param name="Packages">How many packages those of the union are.</param>
/// <param name="Packed">Share of the truck found in packages under the first hypothesis, 0 to 1; the rest is by-product, still in store, or lost.</param>
public sealed record PracticeTruck(Place Truck, Instant At, double Kilograms, IReadOnlyList<double> Recall, double RecallUnion, int Packages, double Packed);
