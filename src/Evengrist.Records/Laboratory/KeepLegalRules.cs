using Evengrist.Laboratory.Specifications;

namespace Evengrist.Records.Laboratory;

/// <summary>The legal rules a mill works by: kept by version; before there is one, those of the program, as far as they were read or remembered.</summary>
public static class KeepLegalRules
{
    private static readonly KeptTable<LegalRules> Kept = new(LegalRules.Kind, "rules", LegalRules.Start, SpecificationJson.TryRead, SpecificationJson.Write);

    /// <inheritdoc cref="KeptTable{T}.Newest"/>
    public static (LegalRules Rules, int Version, string By) Newest(Mill mill) => Kept.Newest(mill);

    /// <inheritdoc cref="KeptTable{T}.Keep"/>
    public static int Keep(Mill mill, LegalRules rules, string by) => Kept.Keep(mill, rules, by);
}
