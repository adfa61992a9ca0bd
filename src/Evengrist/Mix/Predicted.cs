using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Mix;

/// <summary>What a property of a mix or of its flour is expected to be.</summary>
/// <param name="What">The property.</param>
/// <param name="On">Wheat or flour.</param>
/// <param name="Value">Expected, usual unit.</param>
/// <param name="Basis">Its basis; default where the property has none.</param>
/// <param name="StandardUncertainty">One standard uncertainty, all parts together, unit of the value.</param>
/// <param name="OwnPart">The part of the bins' own loads and layers.</param>
/// <param name="InstrumentPart">The part of instruments, which mixing does not lessen.</param>
/// <param name="RelationPart">The part of the relation of flour to wheat; 0 for the wheat.</param>
public sealed record Predicted(Property What, LimitOn On, double Value, Basis Basis, double StandardUncertainty, double OwnPart, double InstrumentPart, double RelationPart);
