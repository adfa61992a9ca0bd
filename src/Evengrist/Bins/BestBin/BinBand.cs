namespace Evengrist.Bins.BestBin;

/// <summary>The house band of a bin: which wheat is meant for it. A paper of kind <c>bin-band</c>; its code is the bin's.</summary>
public sealed record BinBand
{
    /// <summary>What people call it: <c>strong spring</c>.</summary>
    public string Name { get; init; } = "";

    /// <summary>Least protein, per cent at 12 % moisture, this value included; 0 to 30.</summary>
    public required double ProteinFrom { get; init; }

    /// <summary>Most protein, per cent at 12 % moisture, this value not included; above <see cref="ProteinFrom"/>.</summary>
    public required double ProteinTo { get; init; }

    /// <summary>Least falling number, s; null for none.</summary>
    public double? FallingNumberFrom { get; init; }

    /// <summary>Most falling number, s, not included; null for none.</summary>
    public double? FallingNumberTo { get; init; }

    /// <summary>Least test weight, kg/hL; null for none.</summary>
    public double? TestWeightFrom { get; init; }

    /// <summary>Most test weight, kg/hL, not included; null for none.</summary>
    public double? TestWeightTo { get; init; }

    /// <summary>Classes that may go into the bin besides its own.</summary>
    public IReadOnlyList<string> AlsoClasses { get; init; } = [];

    /// <summary>What is wrong with it, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        (string What, double? From, double? To, double Most)[] ranges =
            [("protein", ProteinFrom, ProteinTo, 30), ("falling number", FallingNumberFrom, FallingNumberTo, 1000), ("test weight", TestWeightFrom, TestWeightTo, 100)];
        return
        [
            .. ranges.Where(r => r.From is < 0 || r.To > r.Most || r.From >= r.To).Select(r => FormattableString.Invariant($"The band's {r.What} runs from a lower to a higher value, within 0 to {r.Most}.")),
        ];
    }

    /// <summary>In words: <c>HS 14.2–15.1 % 12mb</c> without the class.</summary>
    public string Words => string.Join(", ", new[]
    {
        Name, FormattableString.Invariant($"{ProteinFrom:0.0#} up to {ProteinTo:0.0#} % 12mb"), Range("FN", FallingNumberFrom, FallingNumberTo, "s"), Range("test weight", TestWeightFrom, TestWeightTo, "kg/hL"),
    }.Where(w => w.Length > 0));

    /// <summary>
    /// Whether read values lie in the band. An upper limit of falling number or test weight names a fault, which must have been read to be there;
    /// a lower limit is not held against what was not read.
    /// </summary>
    public bool Holds(double proteinPercentAt12, double? fallingNumber, double? testWeight) =>
        In(proteinPercentAt12, ProteinFrom, ProteinTo) && In(fallingNumber, FallingNumberFrom, FallingNumberTo) && In(testWeight, TestWeightFrom, TestWeightTo);

    private static bool In(double? value, double? from, double? to) => value is { } read ? !(read < from) && !(read >= to) : to is null;

    private static string Range(string what, double? from, double? to, string unit) => (from, to) switch
    {
        (null, null) => "",
        ({ } f, null) => FormattableString.Invariant($"{what} from {f:0.#} {unit}"),
        (null, { } t) => FormattableString.Invariant($"{what} below {t:0.#} {unit}"),
        ({ } f, { } t) => FormattableString.Invariant($"{what} {f:0.#} up to {t:0.#} {unit}"),
    };
}
