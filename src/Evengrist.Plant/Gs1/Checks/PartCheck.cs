namespace Evengrist.Plant.Gs1.Checks;

/// <summary>What a part of a value has to fulfil besides its length and characters.</summary>
public sealed class PartCheck
{
    private readonly Func<string, int, string?> expected;

    internal PartCheck(string name, Func<string, int, string?> expected)
    {
        Name = name;
        this.expected = expected;
    }

    internal PartCheck(string name, string words, Func<string, bool> holds)
        : this(name, (part, _) => holds(part) ? null : words)
    {
    }

    /// <summary>The name of the check in GS1's syntax dictionary.</summary>
    public string Name { get; }

    /// <summary>What was expected where a part does not fulfil it; null where it does.</summary>
    /// <param name="part">The part, of the right characters and length.</param>
    /// <param name="year">This year, for the century of a year of two digits.</param>
    public string? Expected(string part, int year) => expected(part, year);
}
