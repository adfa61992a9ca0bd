namespace Evengrist.Quantities;

/// <summary>A number as it is shown or printed.</summary>
/// <param name="Value">Digits, invariant: a comma between thousands, a decimal point.</param>
/// <param name="Unit">The unit, with its convention where the unit alone does not tell.</param>
public sealed record ShownValue(string Value, string Unit)
{
    /// <summary>Number and unit: <c>58,070 lb</c>.</summary>
    public override string ToString() => Unit.Length == 0 ? Value : $"{Value} {Unit}";
}
