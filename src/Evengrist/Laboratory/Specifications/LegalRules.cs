using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory.Specifications;

/// <summary>The legal rules a mill works by. Editable: a mill keeps its own versions.</summary>
/// <param name="Rules">One line for each.</param>
public sealed record LegalRules(IReadOnlyList<LegalRule> Rules)
{
    /// <summary>The kind of its papers.</summary>
    public const string Kind = "legal-rules";

    private const string Identity = "21 CFR 137.105, read in a copy";
    private const string CodexContaminants = "Codex general standard for contaminants";
    private const string NotFlour = "cannot be labelled flour for the US market; other markets use their own table";

    /// <summary>The rules the program begins with, as far as they were read or remembered. Not advice on law.</summary>
    public static LegalRules Start { get; } = new(
    [
        new("US", "ash of white flour, dry: protein/20 + 0.35", Identity, FromMemory: false) { What = Property.Ash, Unit = "%", IsAshByProtein = true, Otherwise = NotFlour },
        new("US", "moisture of white flour", Identity + " for the maize section; for wheat flour from memory", FromMemory: true) { What = Property.Moisture, Unit = "%", Upper = 15m, Otherwise = NotFlour },
        new("US", "malted barley flour in white flour", Identity, FromMemory: false) { Unit = "%", Upper = 0.75m, Otherwise = NotFlour },
        new("US", "white flour through 212 µm", Identity, FromMemory: false) { Unit = "%", Lower = 98m, Otherwise = NotFlour },
        new("US", "DON of finished wheat products", "FDA guidance on deoxynivalenol, July 2010, the figure as quoted elsewhere", FromMemory: false)
        {
            What = Property.Don, Unit = "mg/kg", Upper = 1m, IsBinding = false, ValidFrom = new LocalDate(2010, 7, 1), Otherwise = "is above the guidance for finished products",
        },
        new("EU", "DON of cereal milling products", "Regulation (EU) 2024/1022, read in two summaries", FromMemory: false)
        {
            What = Property.Don, Unit = "mg/kg", Upper = 0.6m, ValidFrom = new LocalDate(2024, 7, 1), Otherwise = "may not be placed on the market there, nor blended down",
        },
        new("EU", "DON of unprocessed wheat", "Regulation (EU) 2024/1022, read in two summaries", FromMemory: false)
        {
            What = Property.Don, Unit = "mg/kg", Upper = 1m, ForFlour = false, ValidFrom = new LocalDate(2024, 7, 1), Otherwise = "may not be placed on the market there, nor blended down",
        },
        new("CODEX", "DON of wheat flour", CodexContaminants, FromMemory: true) { What = Property.Don, Unit = "mg/kg", Upper = 1m, Otherwise = "does not keep the standard" },
        new("CODEX", "DON of raw wheat", CodexContaminants, FromMemory: true) { What = Property.Don, Unit = "mg/kg", Upper = 2m, ForFlour = false, Otherwise = "does not keep the standard" },
        new("CODEX", "moisture of wheat flour", "Codex Stan 152-1985, 3.2.1", FromMemory: false) { What = Property.Moisture, Unit = "%", Upper = 15.5m, ValidFrom = new LocalDate(1985, 1, 1), Otherwise = "does not keep the standard" },
    ]);

    /// <summary>The rules of a market that hold for flour on a day; empty for an unknown market.</summary>
    public IReadOnlyList<LegalRule> Of(string market, LocalDate day) =>
        [.. Rules.Where(r => r.ForFlour && r.Market.Equals(market, StringComparison.OrdinalIgnoreCase) && !(r.ValidFrom > day))];

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() => Rules.Any(r => r is null) ? ["A rule is null: leave it out."] : [.. Rules.Count == 0 ? ["Keep one rule or more."] : Array.Empty<string>(), .. Rules.SelectMany(r => r.Faults())];
}
