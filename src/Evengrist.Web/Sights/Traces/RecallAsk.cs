using System.Globalization;
using Evengrist.Tracing.Bounds;
using Evengrist.Tracing.Recall;
using NodaTime;

namespace Evengrist.Web.Sights.Traces;

/// <summary>A recall as it was asked in an address: text, so that nothing typed is lost when it cannot be answered.</summary>
public sealed record RecallAsk
{
    /// <summary>Chance asked where nobody says otherwise, per cent; a choice of ours.</summary>
    public const decimal UsualChance = 50m;

    /// <summary>Things that are suspect, one a line.</summary>
    public string What { get; init; } = "";

    /// <summary>Threshold and beliefs.</summary>
    public TraceAsk Numbers { get; init; } = new();

    /// <summary>Chance of the narrow net, per cent.</summary>
    public string ChancePercent { get; init; } = "";

    /// <summary>The net whose lists are shown: <c>wide</c>, <c>union</c> or <c>narrow</c>.</summary>
    public string NetName { get; init; } = "";

    /// <summary><c>unknown</c> where rest and lines leave in any order too.</summary>
    public string Order { get; init; } = "";

    /// <summary>Prices, one a line: product and money a kilogram.</summary>
    public string Prices { get; init; } = "";

    /// <summary>Destroying a tonne.</summary>
    public string Destruction { get; init; } = "";

    /// <summary>Fetching a tonne back.</summary>
    public string Freight { get; init; } = "";

    /// <summary>The net asked; the cautious union where none is named.</summary>
    public NetKind Net => Enum.TryParse<NetKind>(NetName, ignoreCase: true, out var kind) && Enum.IsDefined(kind) ? kind : NetKind.Union;

    /// <summary>The chance as read, a fraction; the usual where none was typed or it cannot be.</summary>
    public double Chance => (double)(Money(ChancePercent) is { } percent && percent <= 100 ? percent : UsualChance) / 100;

    /// <summary>Bounds asked.</summary>
    public BoundsOptions Bounds => new() { ThroughIsUnknown = Order == "unknown" };

    /// <summary>Costs typed, as far as they can be read.</summary>
    public RecallCosts Costs => new(ReadPrices().Where(p => p.Price is not null).GroupBy(p => p.Product).ToDictionary(g => g.Key, g => g.Last().Price!.Value, StringComparer.OrdinalIgnoreCase), Money(Destruction), Money(Freight));

    /// <summary>The fields of an address that asks the same.</summary>
    public IEnumerable<KeyValuePair<string, string?>> Query(string? net = null, int? page = null, string? what = null)
    {
        KeyValuePair<string, string?>[] fields =
        [
            new("what", what ?? What), new("chance", ChancePercent), new("net", net ?? NetName), new("order", Order), new("prices", Prices), new("destruction", Destruction), new("freight", Freight),
            .. Numbers.Query(page: page).Where(q => q.Key is "kg" or "fifo" or "core" or "stirred" or "page"),
        ];
        return fields.Where(f => !string.IsNullOrEmpty(f.Value));
    }

    /// <summary>What is wrong with the numbers, and what to do.</summary>
    public IEnumerable<string> NumberFaults()
    {
        foreach (var fault in Numbers.NumberFaults())
        {
            yield return fault;
        }

        if (ChancePercent.Length > 0 && !(Money(ChancePercent) <= 100))
        {
            yield return $"“{ChancePercent}” is no chance. Give per cent from 0 to 100.";
        }

        if (NetName.Length > 0 && !Enum.TryParse<NetKind>(NetName, ignoreCase: true, out _))
        {
            yield return $"“{NetName}” is no net: wide, union or narrow.";
        }

        foreach (var (line, _, price) in ReadPrices())
        {
            if (price is null)
            {
                yield return $"“{line}” is no price. Write a product and money a kilogram: WB 0.55.";
            }
        }

        foreach (var text in new[] { Destruction, Freight }.Where(t => t.Length > 0 && Money(t) is null))
        {
            yield return $"“{text}” is no price a tonne. Give a number of at least 0, with a point before decimals.";
        }
    }

    /// <summary>The recall in the terms of tracing, once its starts are found.</summary>
    public RecallQuestion Question(IReadOnlyList<Suspicion> starts, Instant asOf) => new(starts) { AsOf = asOf, Threshold = Numbers.Threshold, Chance = Chance, Bounds = Bounds };

    private static decimal? Money(string text) => decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var money) && money <= 1_000_000m ? money : null;

    private IEnumerable<(string Line, string Product, decimal? Price)> ReadPrices() => Prices.Split(['\n', '\r', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        .Select(line => (Line: line, Words: line.Split(' ', StringSplitOptions.RemoveEmptyEntries)))
        .Select(p => (p.Line, string.Join(' ', p.Words[..^1]), p.Words.Length > 1 ? Money(p.Words[^1]) : null));
}
