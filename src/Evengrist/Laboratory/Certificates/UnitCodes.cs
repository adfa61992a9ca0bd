using Evengrist.Quantities.Lists;

namespace Evengrist.Laboratory.Certificates;

/// <summary>Common codes of UN/ECE Recommendation 20 for the units of results; those of <see cref="ListUnit"/>, where the source stands.</summary>
public static class UnitCodes
{
    /// <summary>The code of a unit of readings; empty where none is known here.</summary>
    public static string Of(string unit) => ListUnit.Of(unit).Code;
}
