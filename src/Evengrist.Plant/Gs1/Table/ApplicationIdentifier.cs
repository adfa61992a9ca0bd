namespace Evengrist.Plant.Gs1.Table;

/// <summary>What an application identifier says of the value behind it: its parts, and what else has to stand on the same item, or must not.</summary>
/// <param name="Code">Two to four digits.</param>
/// <param name="Words">What the value is.</param>
/// <param name="Parts">The parts of the value, in their order.</param>
/// <param name="IsPredefined">Whether its length is known from its first two digits alone, so that no separator follows.</param>
/// <param name="InLink">Whether a link may carry it behind the question mark.</param>
/// <param name="Needs">Groups of identifiers of which one has to stand there whole; patterns such as <c>31nn</c> with n for any digit. Empty where nothing is needed.</param>
/// <param name="Excludes">Identifiers that must not stand there, itself left out.</param>
/// <param name="Qualifiers">For a primary key of a link: the orders of qualifiers that may follow it, one empty order where none may. Null for what is no primary key.</param>
public sealed record ApplicationIdentifier(
    string Code,
    string Words,
    IReadOnlyList<Part> Parts,
    bool IsPredefined,
    bool InLink,
    IReadOnlyList<IReadOnlyList<string>> Needs,
    IReadOnlyList<string> Excludes,
    IReadOnlyList<IReadOnlyList<string>>? Qualifiers)
{
    /// <summary>The fewest characters a value may have.</summary>
    public int Least { get; } = Parts.Where(p => !p.MayLack).Sum(p => p.Least);

    /// <summary>The most characters a value may have.</summary>
    public int Most { get; } = Parts.Sum(p => p.Most);

    /// <summary>Whether an identifier is one of a pattern such as <c>31nn</c>.</summary>
    public static bool Fits(string pattern, string code)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        ArgumentNullException.ThrowIfNull(code);
        return pattern.Length == code.Length && pattern.Zip(code).All(p => p.First == 'n' || p.First == p.Second);
    }

    /// <summary>The identifier in the brackets of the line for people.</summary>
    public override string ToString() => $"({Code})";
}
