namespace Evengrist.Laboratory.Bake;

/// <summary>A step of one bake as it was done, beside what the formula asked.</summary>
/// <param name="Name">What was done, as the formula calls it.</param>
/// <param name="Minutes">How long it took, 0 to 2880; null where nobody timed it.</param>
/// <param name="Celsius">Temperature read, 0 to 350 °C: of the dough after mixing, of the cabinet, of the oven; null where none was read.</param>
/// <param name="PlannedMinutes">What the formula asked; null for a step it has not.</param>
/// <param name="PlannedCelsius">What the formula asked; null for the room's.</param>
public sealed record BakedStep(string Name, double? Minutes = null, double? Celsius = null, double? PlannedMinutes = null, double? PlannedCelsius = null)
{
    // Odd by our own bounds: a fifth of the time and two minutes; three degrees in a dough or a cabinet, fifteen in an oven.
    private const double OddShare = 0.2, OddMinutes = 2, OddDough = 3, OddOven = 15, Oven = 100;

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Name) ? ["A step says what was done."] : Array.Empty<string>(),
        .. Minutes is null or (>= 0 and <= 2880) ? Array.Empty<string>() : [FormattableString.Invariant($"{Name}: minutes lie from 0 to 2880; read {Minutes}.")],
        .. Celsius is null or (>= 0 and <= 350) ? Array.Empty<string>() : [FormattableString.Invariant($"{Name}: a temperature lies from 0 to 350 °C; read {Celsius}. Is it in °C?")],
    ];

    /// <summary>What is far from the formula and to be confirmed with a reason, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Questions() =>
    [
        .. Minutes is { } m && PlannedMinutes is { } asked && Math.Abs(m - asked) > Math.Max(OddMinutes, OddShare * asked) ? [FormattableString.Invariant($"{Name} took {m} min, the formula asks {asked}: is that right?")] : Array.Empty<string>(),
        .. Celsius is { } c && PlannedCelsius is { } wanted && Math.Abs(c - wanted) > (wanted < Oven ? OddDough : OddOven) ? [FormattableString.Invariant($"{Name} at {c} °C, the formula asks {wanted}: is that right?")] : Array.Empty<string>(),
    ];
}
