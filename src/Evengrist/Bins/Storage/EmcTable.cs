namespace Evengrist.Bins.Storage;

/// <summary>All constants a mill works with, and which of its wheat classes takes which of them. Editable: a mill keeps its own versions.</summary>
/// <param name="Constants">For one wheat the first line is the one that bins are judged by.</param>
/// <param name="Classes">The wheat, as the constants name it, of each wheat class of the mill.</param>
public sealed record EmcTable(IReadOnlyList<EmcConstants> Constants, IReadOnlyDictionary<string, string> Classes)
{
    private const string Memory = "from memory, thought to be those of the ASAE standard D245.5, which was not at hand";

    private const string Soft = Memory + "; within 0.7 point of five published values (one of them for soft red winter wheat, the others of no stated class)";

    /// <summary>The constants the program begins with.</summary>
    /// <remarks>
    /// Only the Chung-Pfost triple of red spring wheat was read, in a public code file that quotes Storage of Cereal Grains and Their Products, 5th edition, page 272, for "wheat".
    /// All others are from memory. There are none of the Halsey equation for wheat.
    /// </remarks>
    public static EmcTable Start { get; } = new(
        [
            new("hard", EmcForm.Henderson, 2.3007e-5, 2.2857, 55.815, ConstantMark.Unverified, Memory),
            new("hard", EmcForm.ChungPfost, 529.43, 0.17609, 50.998, ConstantMark.Unverified, Memory),
            new("soft", EmcForm.Henderson, 1.2299e-5, 2.5558, 64.346, ConstantMark.Rough, Soft),
            new("soft", EmcForm.ChungPfost, 726.49, 0.23607, 35.662, ConstantMark.Rough, Soft),
            new("durum", EmcForm.Henderson, 2.5738e-5, 2.2110, 70.318, ConstantMark.Unverified, Memory),
            new("durum", EmcForm.ChungPfost, 922.65, 0.18077, 112.350, ConstantMark.Unverified, Memory),
            new("durum", EmcForm.Oswin, 13.101, -0.052626, 2.9987, ConstantMark.Unverified, Memory),
            new("hard red spring", EmcForm.ChungPfost, 610.34, 0.15526, 93.213, ConstantMark.Read,
                "a public code file quoting Storage of Cereal Grains and Their Products, 5th edition, page 272, for \"wheat\"; that it is red spring is from memory, and no published reading of red spring was at hand to check it"),
        ],
        new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase)
        {
            ["HW"] = "hard", ["HWW"] = "hard", ["HRW"] = "hard", ["HS"] = "hard red spring", ["HRS"] = "hard red spring", ["SW"] = "soft", ["SRW"] = "soft", ["DU"] = "durum",
        });

    /// <summary>Every wheat there are constants for, in order.</summary>
    public IReadOnlyList<string> Wheats => [.. Constants.Select(c => c.Wheat).Distinct(StringComparer.OrdinalIgnoreCase)];

    /// <summary>The constants of an equation for a wheat; null where there are none.</summary>
    public EmcConstants? Find(string wheat, EmcForm form) => Constants.FirstOrDefault(c => c.Form == form && c.Wheat.Equals(wheat, StringComparison.OrdinalIgnoreCase));

    /// <summary>The constants that bins with a wheat class are judged by; null where the class is given none.</summary>
    public EmcConstants? OfClass(string material)
    {
        var wheat = Classes.FirstOrDefault(c => c.Key.Equals(material, StringComparison.OrdinalIgnoreCase)).Value;
        return wheat is null ? null : Constants.FirstOrDefault(c => c.Wheat.Equals(wheat, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>What is wrong with the table, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Constants.SelectMany(c => c.Faults()),
        .. Constants.GroupBy(c => (c.Wheat.ToUpperInvariant(), c.Form)).Where(g => g.Count() > 1).Select(g => $"{g.First().Wheat}, {g.First().Form}: stands twice; keep one line."),
        .. Classes.Where(c => !Wheats.Contains(c.Value, StringComparer.OrdinalIgnoreCase)).Select(c => $"Class {c.Key} takes \"{c.Value}\", and there is no such wheat among the constants."),
        .. Constants.Count == 0 ? ["There is no line of constants."] : Array.Empty<string>(),
    ];
}
