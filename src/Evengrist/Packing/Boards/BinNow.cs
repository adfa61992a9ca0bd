namespace Evengrist.Packing.Boards;

/// <summary>A flour bin when a plan begins.</summary>
/// <param name="Code">Its code in the ledger.</param>
/// <param name="Flour">The flour it is for.</param>
/// <param name="Tonnes">What lies in it.</param>
/// <param name="Capacity">The most it holds, tonnes.</param>
/// <param name="Lines">Lines it is connected to.</param>
public sealed record BinNow(string Code, string Flour, double Tonnes, double Capacity, IReadOnlyList<string> Lines);
