namespace Evengrist.Streams.Dividing;

/// <summary>A flour that streams may be divided into.</summary>
/// <param name="Code">What it is called.</param>
/// <param name="PricePerTonne">What a tonne of it brings.</param>
public sealed record FlourWish(string Code, decimal PricePerTonne)
{
    /// <summary>Least of it, per cent of the wheat; null for none.</summary>
    public double? LeastYield { get; init; }

    /// <summary>Most of it, per cent of the wheat; null for none.</summary>
    public double? MostYield { get; init; }

    /// <summary>Limits of the flour as it leaves the mill, before anything is added.</summary>
    public IReadOnlyList<FlourLimit> Limits { get; init; } = [];

    /// <summary>Whether its ash has to let it be called flour in the United States: <see cref="FlourIdentity"/>.</summary>
    public bool CalledFlour { get; init; }

    /// <summary>Every end of every limit, in the order they were given, the rule of identity last.</summary>
    public IReadOnlyList<LimitEnd> Ends(Quantities.Basis basis) =>
    [
        .. Limits.SelectMany(l => (LimitEnd[])[.. l.Least is { } least ? [new LimitEnd(l.What, true, least, basis)] : Array.Empty<LimitEnd>(), .. l.Most is { } most ? [new LimitEnd(l.What, false, most, basis)] : Array.Empty<LimitEnd>()]),
        .. CalledFlour ? [LimitEnd.Identity(basis)] : Array.Empty<LimitEnd>(),
    ];
}
