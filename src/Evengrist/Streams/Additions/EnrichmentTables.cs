using System.Diagnostics.CodeAnalysis;
using System.Text.Encodings.Web;
using System.Text.Json;
using Evengrist.Intake.Grading;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Streams.Additions;

/// <summary>The enrichment tables a mill works by: dated, per market, kept by version. Page: docs/model/additions.md.</summary>
/// <param name="Tables">The tables, in any order.</param>
public sealed record EnrichmentTables(IReadOnlyList<EnrichmentTable> Tables)
{
    /// <summary>Kind of the paper.</summary>
    public const string Kind = "enrichment-tables";

    private static readonly JsonSerializerOptions Options = new(StrictJson.Options()) { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>What the program begins with: the United States alone. Other markets are for the mill to enter from their own law.</summary>
    public static EnrichmentTables Start { get; } = new(
    [
        new EnrichmentTable(
            "United States", new LocalDate(1998, 1, 1),
            [new("thiamin", Kg(2.9)), new("riboflavin", Kg(1.8)), new("niacin", Kg(24)), new("folic acid", Kg(0.7)), new("iron", Kg(20))],
            SourceMark.Read, "21 CFR 137.165, mg in a pound, as read in copies: ask for the text in force; the date from memory"),
    ]);

    /// <summary>The table of a market that holds on a day; null where there is none.</summary>
    public EnrichmentTable? Of(string market, LocalDate day) => Tables.Where(t => t.Market.Equals(market, StringComparison.OrdinalIgnoreCase) && t.From <= day).MaxBy(t => t.From);

    /// <summary>Every fault, each a sentence; empty where there is none.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Tables.Where(t => string.IsNullOrWhiteSpace(t.Market)).Select(_ => "A table has no market: name it."),
        .. Tables.GroupBy(t => (t.Market, t.From)).Where(g => g.Count() > 1).Select(g => $"{g.Key.Market} from {g.Key.From:uuuu-MM-dd} stands there {g.Count()} times: give it once."),
        .. Tables.Where(t => t.Nutrients.Count == 0).Select(t => $"{t.Market}: a table asks for at least one nutrient."),
        .. Tables.Where(t => string.IsNullOrWhiteSpace(t.Source)).Select(t => $"{t.Market}: say where it was read."),
        .. Tables.Where(t => t.Mark == SourceMark.None).Select(t => $"{t.Market}: say how well it is known: Read, Memory, House."),
        .. from t in Tables from n in t.Nutrients where string.IsNullOrWhiteSpace(n.Name) || !(n.MilligramsPerKg is > 0 and <= 100_000) select FormattableString.Invariant($"{t.Market}, {n.Name}: its aim lies above 0 and at most at 100000 mg/kg; got {n.MilligramsPerKg}."),
        .. from t in Tables from g in t.Nutrients.GroupBy(n => n.Name, StringComparer.OrdinalIgnoreCase) where g.Count() > 1 select $"{t.Market}: {g.Key} stands there {g.Count()} times: give it once.",
    ];

    /// <summary>As the paper says it.</summary>
    public static string Write(EnrichmentTables tables) => JsonSerializer.Serialize(tables, Options);

    /// <summary>Reads a paper and checks it.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out EnrichmentTables? tables, out IReadOnlyList<string> faults) =>
        StrictJson.TryRead(json, Options, t => t is null || t.Tables.Any(e => e is null || e.Nutrients.Any(n => n is null)) ? ["Enrichment tables are an object with a list of tables; read null."] : t.Faults(), out tables, out faults);

    private static double Kg(double milligramsInAPound) => NutrientAim.FromPound(milligramsInAPound);
}
