namespace Evengrist.Packing.Lines;

/// <summary>A packing line as the mill knows it.</summary>
/// <param name="Code">Its code in the ledger.</param>
/// <param name="Crew">People it takes while it runs.</param>
/// <param name="Makes">What it can make; what is not named it cannot.</param>
public sealed record LineTerms(string Code, int Crew, IReadOnlyList<LineRate> Makes)
{
    /// <summary>The rate at which it makes a product; null where it cannot.</summary>
    /// <param name="product">Code of the product.</param>
    public LineRate? Of(string product) => Makes.FirstOrDefault(m => m.Product.Equals(product, StringComparison.OrdinalIgnoreCase));
}
