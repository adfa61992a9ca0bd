using Evengrist.Plant.Gs1.Table;

namespace Evengrist.Plant.Gs1;

/// <summary>One element: an application identifier and its value, checked against the table.</summary>
/// <param name="Identifier">What the value is.</param>
/// <param name="Value">The value, without mark or separator.</param>
public sealed record Element(ApplicationIdentifier Identifier, string Value)
{
    /// <summary>The code of the identifier.</summary>
    public string Code => Identifier.Code;

    /// <summary>As in the line for people: <c>(10)F24-0915-2</c>. A bracket within the value that looks like the next identifier has <c>\</c> before it.</summary>
    public override string ToString() => $"({Code}){Brackets.Guarded(Value)}";
}
