namespace Evengrist.Plant.Gs1;

/// <summary>What is wrong within a value.</summary>
/// <param name="Offset">Where in the value it begins, from 0.</param>
/// <param name="Read">What was read there.</param>
/// <param name="Expected">What was expected.</param>
internal sealed record ValueFault(int Offset, string Read, string Expected);
