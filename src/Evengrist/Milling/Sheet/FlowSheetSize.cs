namespace Evengrist.Milling.Sheet;

/// <summary>How large a mill unit is: its rolls and cloths, in all and for what it mills.</summary>
/// <param name="Passages">Passages on the sheet.</param>
/// <param name="RollMillimetres">Roll face of all passages, mm.</param>
/// <param name="BreakMillimetres">Roll face of the breaks, mm.</param>
/// <param name="SifterSquareMetres">Cloth of all passages but purifiers, m².</param>
/// <param name="PurifierSquareMetres">Cloth of the purifiers, m².</param>
/// <param name="TonnesPerDay">Wheat the unit is built for, t in 24 h; null where the sheet does not say.</param>
public sealed record FlowSheetSize(int Passages, double RollMillimetres, double BreakMillimetres, double SifterSquareMetres, double PurifierSquareMetres, double? TonnesPerDay)
{
    /// <summary>Specific roll length, mm for each 100 kg of wheat in 24 h; usually 10 to 12 for hard wheat, 11 to 14 for soft [memory]. Null where the sheet does not say what it mills.</summary>
    public double? RollMillimetresPer100Kilograms => RollMillimetres / Hundreds;

    /// <summary>Specific sifter cloth, m² for each 100 kg of wheat in 24 h; usually 0.05 to 0.08 [memory]. Null where the sheet does not say what it mills.</summary>
    public double? SifterSquareMetresPer100Kilograms => SifterSquareMetres / Hundreds;

    private double? Hundreds => TonnesPerDay * 10;

    /// <summary>Adds a sheet up.</summary>
    public static FlowSheetSize Of(FlowSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var purifiers = sheet.Passages.ToLookup(p => p.Kind is PassageKind.Purifying, p => p.ClothSquareMetres);
        return new FlowSheetSize(
            sheet.Passages.Count, sheet.Passages.Sum(p => p.Rolls?.LengthMillimetres ?? 0), sheet.Passages.Where(p => p.Kind is PassageKind.Break).Sum(p => p.Rolls?.LengthMillimetres ?? 0),
            purifiers[false].Sum(), purifiers[true].Sum(), sheet.TonnesPerDay);
    }
}
