using Evengrist.Intake.Deciding;

namespace Evengrist.Records.Intake;

/// <summary>The mill's own rules of what it takes.</summary>
public static class HouseRulesShelf
{
    /// <summary>The kind of its papers.</summary>
    public const string Kind = "house-rules";

    private const string Code = "intake";

    /// <summary>The rules in force; none where the mill has kept none.</summary>
    public static HouseRules Of(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(Kind).Newest(Code) is { } paper && HouseRules.TryRead(paper.Json, out var rules, out _) ? rules! : new HouseRules();
    }

    /// <summary>Keeps rules as a further version.</summary>
    public static int Keep(Mill mill, HouseRules rules, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(rules);
        return mill.Papers(Kind).KeepNext(Code, rules.ToJson(), by);
    }
}
