using Evengrist.Intake.Grading;
using Evengrist.Intake.Sampling;

namespace Evengrist.Records.Intake;

/// <summary>The site's papers for sampling, as they stand now.</summary>
public static class SamplingPapers
{
    /// <summary>The newest policy with its version; the usual one and 0 where none is kept or it cannot be read.</summary>
    public static (SamplingPolicy Policy, int Version) PolicyOf(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(SamplingPolicy.Kind).Newest(SamplingPolicy.Code) is { } paper && SamplingPolicy.TryRead(paper.Json, out var policy, out _)
            ? (policy, paper.Version)
            : (SamplingPolicy.Usual, 0);
    }

    /// <summary>The newest costs with their version; null where none are kept or they cannot be read.</summary>
    public static (TestCosts Costs, int Version)? CostsOf(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(TestCosts.Kind).Newest(TestCosts.Code) is { } paper && TestCosts.TryRead(paper.Json, out var costs, out _) ? (costs, paper.Version) : null;
    }

    /// <summary>Keeps a policy as the next version; every fault where it cannot be, and then nothing is kept.</summary>
    public static IReadOnlyList<string> KeepPolicy(Mill mill, string json, string by) =>
        SamplingPolicy.TryRead(json, out var policy, out var faults) ? Keep(mill, SamplingPolicy.Kind, SamplingPolicy.Code, policy.ToJson(), by) : faults;

    /// <summary>Keeps costs as the next version; every fault where they cannot be, and then nothing is kept.</summary>
    public static IReadOnlyList<string> KeepCosts(Mill mill, string json, string by) =>
        TestCosts.TryRead(json, out var costs, out var faults) ? Keep(mill, TestCosts.Kind, TestCosts.Code, costs.ToJson(), by) : faults;

    /// <summary>The newest house class of a wheat; null where none is kept or it cannot be read.</summary>
    public static HouseClass? HouseClassOf(Mill mill, string wheat)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return wheat.Length > 0 && mill.Papers(HouseClassJson.Kind).Newest(wheat) is { } paper && HouseClassJson.TryRead(paper.Json, out var house, out _) ? house : null;
    }

    private static string[] Keep(Mill mill, string kind, string code, string json, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (string.IsNullOrWhiteSpace(by))
        {
            return ["Say who you are first: every record carries a name."];
        }

        mill.Papers(kind).KeepNext(code, json, by);
        return [];
    }
}
