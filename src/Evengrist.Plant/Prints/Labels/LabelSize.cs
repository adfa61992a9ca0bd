namespace Evengrist.Plant.Prints.Labels;

/// <summary>A label, upright, in millimetres.</summary>
/// <param name="Name">What a person types.</param>
/// <param name="Width">Width, mm.</param>
/// <param name="Height">Height, mm.</param>
public sealed record LabelSize(string Name, double Width, double Height)
{
    /// <summary>105 mm by 148 mm (ISO 216).</summary>
    public static LabelSize A6 { get; } = new("a6", 105, 148);

    /// <summary>4 in by 6 in.</summary>
    public static LabelSize FourBySix { get; } = new("4x6", 101.6, 152.4);

    /// <summary>The size of a name, case not mattering, A6 for an empty one; null where there is none.</summary>
    public static LabelSize? Find(string? name) => string.IsNullOrWhiteSpace(name) ? A6 : new[] { A6, FourBySix }.FirstOrDefault(s => s.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>What is said of a name that is none.</summary>
    public static string None(string? name) => $"\"{name}\" is no label. Ask for a6 or 4x6.";
}
