using Evengrist.Laboratory.Specifications;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>The specifications of a mill's flours: papers by code and version, nothing lost.</summary>
public static class FlourSpecifications
{
    /// <summary>Every specification in its newest version, by code.</summary>
    public static IReadOnlyList<KeptSpecification> Newest(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(Specification.Kind).NewestOfEach().Select(Read).OfType<KeptSpecification>()];
    }

    /// <summary>All versions of one, the first first; empty where none is kept.</summary>
    public static IReadOnlyList<KeptSpecification> Versions(Mill mill, string code)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(Specification.Kind).All().Where(p => p.Code.Equals(code.Trim(), StringComparison.OrdinalIgnoreCase)).Select(Read).OfType<KeptSpecification>()];
    }

    /// <summary>Those that hold for a flour on a day, each in the version in force: the mill's own first, then by customer.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="flour">The flour.</param>
    /// <param name="day">The day; a version that begins later does not hold yet.</param>
    public static IReadOnlyList<KeptSpecification> Of(Mill mill, string flour, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return Of(All(mill), flour, day);
    }

    internal static IReadOnlyList<KeptSpecification> All(Mill mill) => [.. mill.Papers(Specification.Kind).All().Select(Read).OfType<KeptSpecification>()];

    internal static IReadOnlyList<KeptSpecification> Of(IEnumerable<KeptSpecification> all, string flour, LocalDate day) =>
        [.. all.Where(k => k.Specification.Flour.Equals(flour, StringComparison.OrdinalIgnoreCase) && !(k.Specification.ValidFrom > day))
            .GroupBy(k => k.Specification.Code).Select(g => g.Last()).OrderBy(k => k.Specification.Customer, StringComparer.OrdinalIgnoreCase).ThenBy(k => k.Specification.Code, StringComparer.Ordinal)];

    /// <summary>Keeps a specification as the next version of its code; every fault where it cannot be, and then nothing is kept.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="specification">What it says.</param>
    /// <param name="by">Who keeps it.</param>
    /// <param name="after">The version it follows, so that nobody's is overwritten unseen; 0 for a new one, null for whichever is newest.</param>
    public static (KeptSpecification? Kept, IReadOnlyList<string> Faults) Keep(Mill mill, Specification specification, string by, int? after = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(specification);
        var versions = Versions(mill, specification.Code);
        var newest = versions.Count > 0 ? versions[^1].Version : 0;
        string[] faults =
        [
            .. string.IsNullOrWhiteSpace(by) ? ["Say who you are first: every record carries a name."] : Array.Empty<string>(),
            .. specification.Faults(),
            .. after is { } seen && seen != newest ? [seen == 0 ? $"{specification.Code} stands already in version {newest}: change that one, or give another code." : $"{specification.Code} was changed meanwhile: version {newest} stands. Look at it first."] : Array.Empty<string>(),
            .. versions.Count > 0 && versions[^1].Specification.Flour != specification.Flour ? [$"{specification.Code} is of {versions[^1].Specification.Flour}: one of {specification.Flour} has another code."] : Array.Empty<string>(),
        ];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        try
        {
            var code = versions.Count > 0 ? versions[^1].Specification.Code : specification.Code;
            var version = mill.Papers(Specification.Kind).KeepNext(code, SpecificationJson.Write(specification with { Code = code }), by.Trim());
            return (Read(mill.Papers(Specification.Kind).Find(code, version)!), []);
        }
        catch (LedgerRefusal taken) when (taken.Rule == LedgerRule.KeyTaken)
        {
            return (null, [$"{specification.Code} was kept meanwhile by another. Look at it first."]);
        }
    }

    private static KeptSpecification? Read(Paper paper) =>
        SpecificationJson.TryRead(paper.Json, out Specification? specification, out _) ? new KeptSpecification(paper.Version, paper.By, paper.Recorded, specification) : null;
}
