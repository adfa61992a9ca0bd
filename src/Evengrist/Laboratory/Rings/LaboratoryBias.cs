namespace Evengrist.Laboratory.Rings;

/// <summary>How a laboratory reads, by samples that others read too.</summary>
/// <param name="Laboratory">The laboratory.</param>
/// <param name="Bias">By how much it reads high; null where nobody else read what it read, so that flour and laboratory cannot be told apart.</param>
/// <param name="Deviation">One standard deviation of it; null where it is not known.</param>
/// <param name="IsBeyondChance">Whether it is more than chance (95 %); null where that cannot be said.</param>
/// <param name="Against">What 0 is: the reference laboratory, or the mean of all laboratories that are linked by samples.</param>
public sealed record LaboratoryBias(string Laboratory, double? Bias, double? Deviation, bool? IsBeyondChance, string Against);
