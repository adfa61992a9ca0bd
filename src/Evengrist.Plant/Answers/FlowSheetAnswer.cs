using Evengrist.Milling.Sheet;

namespace Evengrist.Plant.Answers;

/// <summary>A flow sheet that can be milled on, added up.</summary>
/// <param name="Name">What the unit is called.</param>
/// <param name="FirstBreak">Code of the passage that takes the wheat.</param>
/// <param name="TonnesPerDay">Wheat the unit is built for, t in 24 h; null where the sheet does not say.</param>
/// <param name="Passages">Passages on the sheet.</param>
/// <param name="Kinds">The passages by kind.</param>
/// <param name="Products">Codes of what leaves, with their kind.</param>
/// <param name="RollMillimetres">Roll face in all, mm.</param>
/// <param name="RollMillimetresPer100Kilograms">The same for each 100 kg of wheat in 24 h; null where the sheet does not say what it mills.</param>
/// <param name="SifterSquareMetres">Cloth of all passages but purifiers, m².</param>
/// <param name="SifterSquareMetresPer100Kilograms">The same for each 100 kg of wheat in 24 h.</param>
/// <param name="PurifierSquareMetres">Cloth of the purifiers, m².</param>
/// <param name="Loops">Passages that feed each other.</param>
/// <param name="Cautions">What must be known before a person acts on it.</param>
public sealed record FlowSheetAnswer(
    string Name, string FirstBreak, double? TonnesPerDay, int Passages, IReadOnlyList<FlowSheetKindAnswer> Kinds, IReadOnlyList<FlowSheetProductAnswer> Products, double RollMillimetres, double? RollMillimetresPer100Kilograms,
    double SifterSquareMetres, double? SifterSquareMetresPer100Kilograms, double PurifierSquareMetres, IReadOnlyList<IReadOnlyList<string>> Loops, IReadOnlyList<string> Cautions)
{
    /// <summary>Adds a sheet up.</summary>
    public static FlowSheetAnswer Of(FlowSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var size = FlowSheetSize.Of(sheet);
        return new FlowSheetAnswer(
            sheet.Name, sheet.FirstBreak, sheet.TonnesPerDay, size.Passages,
            [.. FlowSheetWords.PassageKinds.Select(k => FlowSheetKindAnswer.Of(k, [.. sheet.Passages.Where(p => p.Kind == k)])).Where(k => k.Passages.Count > 0)],
            [.. sheet.Products.Select(p => new FlowSheetProductAnswer(p.Code, p.Kind.Words()))],
            size.RollMillimetres, size.RollMillimetresPer100Kilograms, size.SifterSquareMetres, size.SifterSquareMetresPer100Kilograms, size.PurifierSquareMetres, sheet.Loops(), MillingCautions.All);
    }
}

/// <summary>The passages of one kind: codes, roll face in mm, cloth in m².</summary>
public sealed record FlowSheetKindAnswer(string Kind, IReadOnlyList<string> Passages, double RollMillimetres, double ClothSquareMetres)
{
    internal static FlowSheetKindAnswer Of(PassageKind kind, IReadOnlyList<Passage> passages) =>
        new(kind.Words(), [.. passages.Select(p => p.Code)], passages.Sum(p => p.Rolls?.LengthMillimetres ?? 0), passages.Sum(p => p.ClothSquareMetres));
}

/// <summary>What leaves the unit, and what it is.</summary>
public sealed record FlowSheetProductAnswer(string Code, string Kind);
