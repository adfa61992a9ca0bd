using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Laboratory.Specifications;

/// <summary>What a market's law or a standard asks of a product of milling. Data, dated and marked: check the text in force before anything hangs on it.</summary>
/// <param name="Market">The market: <c>US</c>, <c>EU</c>, <c>CODEX</c>.</param>
/// <param name="Of">What it limits, in words: <c>moisture of white flour</c>.</param>
/// <param name="Source">The document.</param>
/// <param name="FromMemory">Whether it is from memory; false where it was read in the document, or in a copy that is named.</param>
public sealed record LegalRule(string Market, string Of, string Source, bool FromMemory)
{
    /// <summary>The property of a reading that is held against it; null where none of the ledger's is.</summary>
    public Property? What { get; init; }

    /// <summary>The unit of the limits.</summary>
    public string Unit { get; init; } = "";

    /// <summary>The moisture basis; none where the goods are meant as they lie.</summary>
    public Basis Basis { get; init; }

    /// <summary>The least; null for none.</summary>
    public decimal? Lower { get; init; }

    /// <summary>The most; null for none.</summary>
    public decimal? Upper { get; init; }

    /// <summary>Whether the most is that of <see cref="FlourAshLimit"/>: it goes by the protein.</summary>
    public bool IsAshByProtein { get; init; }

    /// <summary>Whether it holds for flour as it leaves the mill; false for other stages of the grain, which are listed and not judged here.</summary>
    public bool ForFlour { get; init; } = true;

    /// <summary>Whether it binds by law; false for guidance.</summary>
    public bool IsBinding { get; init; } = true;

    /// <summary>Since when; null where that is not known here.</summary>
    public LocalDate? ValidFrom { get; init; }

    /// <summary>What a lot outside may not be.</summary>
    public string Otherwise { get; init; } = "";

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Market) || string.IsNullOrWhiteSpace(Of) || string.IsNullOrWhiteSpace(Source) ? ["A legal rule names its market, what it limits, and its source."] : Array.Empty<string>(),
        .. IsAshByProtein && What != Property.Ash ? [$"{Of}: only ash goes by the protein."] : Array.Empty<string>(),
        .. !IsAshByProtein && Lower is null && Upper is null ? [$"{Of}: give a lower or an upper limit."] : Array.Empty<string>(),
        .. Lower >= Upper ? [$"{Of}: the lower limit {Lower} lies below the upper; got {Upper}."] : Array.Empty<string>(),
        .. What is { } what && !Readings.UnitsOf(what).Contains(Unit) ? [$"{Of}: {what.Words()} is given in {string.Join(" or ", Readings.UnitsOf(what))}, not in “{Unit}”."] : Array.Empty<string>(),
    ];
}
