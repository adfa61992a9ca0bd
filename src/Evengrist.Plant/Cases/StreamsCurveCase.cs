using Evengrist.Streams;

namespace Evengrist.Plant.Cases;

/// <summary>A survey of flour streams posed in JSON, with ash to cut at and products to add up.</summary>
/// <param name="Table">The streams.</param>
public sealed record StreamsCurveCase(StreamTable Table)
{
    /// <summary>Ash at which the curve is cut, per cent, on the table's basis.</summary>
    public IReadOnlyList<double> CutAt { get; init; } = [];

    /// <summary>Which streams run together into which flour; what is in none of them is left over.</summary>
    public IReadOnlyList<PosedProduct> Products { get; init; } = [];

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "table": { "basis": "14mb", "streams": [ { "code", "yield": % of the wheat, one wheat for all, "ashPercent", "proteinPercent"? } ... ] },
          "cutAt"?: [ ash, % on the table's basis ... ],
          "products"?: [ { "code", "streams": [ codes ] } ... ]
        }
        """,
        """
        { "table": { "basis": "14mb", "streams": [ { "code": "1M", "yield": 14, "ashPercent": 0.36, "proteinPercent": 10.6 }, { "code": "4M", "yield": 5.5, "ashPercent": 0.52, "proteinPercent": 11.3 },
                                                   { "code": "B4", "yield": 2, "ashPercent": 0.95, "proteinPercent": 15.2 } ] },
          "cutAt": [ 0.42 ], "products": [ { "code": "patent", "streams": [ "1M", "4M" ] }, { "code": "clear", "streams": [ "B4" ] } ] }
        """);

    /// <summary>Reads a case; what cannot be is a fault too.</summary>
    public static Parsed<StreamsCurveCase> Read(Stream stream) => SeasonCase.ReadAs<StreamsCurveCase>(stream).Then(posed => posed.Faults() is { Count: > 0 } faults ? Parsing.Failed<StreamsCurveCase>(faults) : Parsing.Got(posed));

    private List<Fault> Faults()
    {
        if (Table.Streams.Any(s => s is null) || Products.Any(p => p is null))
        {
            return [Fault.AtPath("$", "null in a list", "something in its place")];
        }

        var codes = Table.Streams.Select(s => s.Code).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. Table.Faults().Select(f => Fault.Told("$.table", f)),
            .. CutAt.Where(a => !StreamTable.CanBeAsh(a)).Select(a => Fault.AtPath("$.cutAt", $"{a}", "ash above 0 and at most 10 %")),
            .. Products.Where(p => p.Streams.Count == 0).Select(p => Fault.Told("$.products", $"{p.Code} has no stream: give it one or leave it out.")),
            .. Products.SelectMany(p => p.Streams).Where(c => !codes.Contains(c)).Distinct().Select(c => Fault.Told("$.products", $"There is no stream {c} in the table.")),
            .. Products.SelectMany(p => p.Streams).GroupBy(c => c, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => Fault.Told("$.products", $"{g.Key} goes into {g.Count()} places: a whole stream goes into one.")),
            .. Products.GroupBy(p => p.Code, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => Fault.Told("$.products", $"{g.Key} stands there {g.Count()} times: give each product once.")),
        ];
    }
}

/// <summary>Streams that run together.</summary>
/// <param name="Code">What the flour is called.</param>
/// <param name="Streams">Codes of its streams.</param>
public sealed record PosedProduct(string Code, IReadOnlyList<string> Streams);
