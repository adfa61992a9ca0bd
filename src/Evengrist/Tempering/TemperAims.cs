namespace Evengrist.Tempering;

/// <summary>The aims a mill tempers by, and how hard each of its wheat classes is. Editable: a mill keeps its own versions.</summary>
/// <param name="Aims">One line for a hardness.</param>
/// <param name="Classes">The hardness of each wheat class of the mill.</param>
/// <param name="EvaporationPercent">Evaporation to first break of this mill, per cent of the tempered mass, 0 to 5; null until the mill enters its own: no source gives one.</param>
public sealed record TemperAims(IReadOnlyList<TemperAim> Aims, IReadOnlyDictionary<string, Hardness> Classes, double? EvaporationPercent = null)
{
    private const string Source = "moisture: a milling article of 2017 on dampening and tempering (flourpedia.com, Wheat Milling Part 3); hours from memory";

    /// <summary>The aims the program begins with: moistures as one trade article gives them, hours from memory. Not tuned to a mill.</summary>
    public static TemperAims Start { get; } = new(
        [
            new(Hardness.Soft, 14.5, 15.0, TemperMark.Read, 4, 8, TemperMark.Memory, Source),
            new(Hardness.SemiHard, 15.5, 16.0, TemperMark.Read, 8, 16, TemperMark.Memory, Source),
            new(Hardness.Hard, 16.0, 16.5, TemperMark.Read, 12, 24, TemperMark.Memory, Source),
            new(Hardness.VeryHard, 16.5, 17.5, TemperMark.Read, 24, 36, TemperMark.Memory, Source),
        ],
        new Dictionary<string, Hardness>(StringComparer.OrdinalIgnoreCase)
        {
            ["HW"] = Hardness.Hard, ["HWW"] = Hardness.Hard, ["HRW"] = Hardness.Hard, ["HS"] = Hardness.Hard, ["HRS"] = Hardness.Hard, ["SW"] = Hardness.Soft, ["SRW"] = Hardness.Soft, ["DU"] = Hardness.VeryHard,
        });

    /// <summary>The aim for a hardness; null where the table has none.</summary>
    public TemperAim? Of(Hardness hardness) => Aims.FirstOrDefault(a => a.Hardness == hardness);

    /// <summary>The hardness of a wheat class; none where the table does not say.</summary>
    public Hardness OfClass(string material) => Classes.FirstOrDefault(c => c.Key.Equals(material, StringComparison.OrdinalIgnoreCase)).Value;

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Aims.SelectMany(a => a.Faults()),
        .. Aims.GroupBy(a => a.Hardness).Where(g => g.Count() > 1).Select(g => $"{g.Key.Words()} stands twice; keep one line."),
        .. Classes.Where(c => c.Value == Hardness.None || Of(c.Value) is null).Select(c => $"Class {c.Key} is \"{c.Value.Words()}\", and there is no such line among the aims."),
        .. Classes.GroupBy(c => c.Key, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => $"Class {g.Key} stands twice; keep one."),
        .. EvaporationPercent is null or (>= 0 and <= 5) ? Array.Empty<string>() : ["Evaporation to first break lies from 0 to 5 % of the tempered mass."],
        .. Aims.Count == 0 ? ["There is no line of aims."] : Array.Empty<string>(),
    ];
}
