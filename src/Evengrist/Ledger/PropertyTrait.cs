namespace Evengrist.Ledger;

/// <summary>How a property is spoken of and read.</summary>
/// <param name="Words">In the words of the mill.</param>
/// <param name="Least">The least that can be, in every unit; ours.</param>
/// <param name="Most">The most that can be, in the first unit; ours.</param>
/// <param name="Units">The units it may be read in; the first is the usual one.</param>
internal sealed record PropertyTrait(string Words, decimal Least, decimal Most, params string[] Units)
{
    /// <summary>Whether it is a share of solids.</summary>
    public bool NeedsBasis { get; init; }

    /// <summary>Whether only whole numbers can be.</summary>
    public bool IsCount { get; init; }

    // What cannot be is refused; what is merely odd is the laboratory's business.
    public (decimal Least, decimal Most) Range(string unit) => unit switch
    {
        "lb/bu" => (20m, 80m),
        "g/0.5L" => (100m, 550m),
        _ => (Least, Most),
    };
}
