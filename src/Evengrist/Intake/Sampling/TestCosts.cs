using System.Diagnostics.CodeAnalysis;
using Evengrist.Ledger;

namespace Evengrist.Intake.Sampling;

/// <summary>What decisions and tests cost a mill: a paper, versioned.</summary>
public sealed record TestCosts
{
    /// <summary>Kind of the paper.</summary>
    public const string Kind = "test-costs";

    /// <summary>Code of the paper: a mill has one.</summary>
    public const string Code = "SITE";

    /// <summary>Currency of every cost, three letters.</summary>
    public required string Currency { get; init; }

    /// <summary>Cost of one truck waiting one minute, at least 0.</summary>
    public required double CostPerMinute { get; init; }

    /// <summary>Days of history that are looked back over, 1 to 366.</summary>
    public int HistoryDays { get; init; } = 21;

    /// <summary>The tests, each property once.</summary>
    public required IReadOnlyList<TestCost> Tests { get; init; }

    /// <summary>Where the figures come from; shown beside them.</summary>
    public string Source { get; init; } = "";

    /// <summary>What cannot be, each a sentence; empty where all can.</summary>
    public IReadOnlyList<string> Faults() => [.. new[]
    {
        Currency.Length == 3 && Currency.All(char.IsAsciiLetterUpper) ? null : "A currency is three capital letters, such as USD.",
        CostPerMinute >= 0 && double.IsFinite(CostPerMinute) ? null : "A minute of waiting costs at least 0.",
        HistoryDays is >= 1 and <= 366 ? null : "History is looked back over for 1 to 366 days.",
        Tests.Select(t => t.What).Distinct().Count() == Tests.Count ? null : "Each property stands once among the tests.",
    }.OfType<string>(), .. Tests.SelectMany(t => t.Faults())];

    /// <summary>The test of a property; null where the paper has none.</summary>
    public TestCost? Of(Property what) => Tests.FirstOrDefault(t => t.What == what);

    /// <summary>The costs as JSON.</summary>
    public string ToJson() => SamplingJson.Write(this, indented: true);

    /// <summary>Reads costs and checks them.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out TestCosts? costs, out IReadOnlyList<string> faults)
    {
        (costs, var fault) = SamplingJson.Read<TestCosts>(json);
        faults = costs is null ? [fault] : costs.Faults();
        costs = faults.Count == 0 ? costs : null;
        return costs is not null;
    }
}
