using Evengrist.Intake.Grading;
using Evengrist.Laboratory.Specifications;
using Evengrist.Ledger;

namespace Evengrist.Intake.Deciding;

/// <summary>Limits as far as they were read or remembered, for a mill to begin with. Check the law before anything hangs on one.</summary>
public static class Markets
{
    private const string FdaAction = "FDA action level, as a regulatory summary quotes it";
    private const string Eu = "Regulation (EU) 2023/915 as amended by (EU) 2024/1022";

    /// <summary>United States: finished products; no limit on raw wheat for milling.</summary>
    public static Market UnitedStates { get; } = new("US", "United States",
    [
        Don("US", LimitStage.Product),
        new(Property.Aflatoxin, LimitStage.AsReceived, 20m, "µg/kg", FdaAction, SourceMark.Read),
    ]);

    /// <summary>European Union: limits before the first stage of processing, and on products.</summary>
    public static Market EuropeanUnion { get; } = new("EU", "European Union",
    [
        Don("EU", LimitStage.AsReceived),
        Don("EU", LimitStage.Product),
        new(Property.T2AndHt2, LimitStage.AsReceived, 50m, "µg/kg", Eu, SourceMark.Read),
        new(Property.Aflatoxin, LimitStage.AsReceived, 4m, "µg/kg", Eu, SourceMark.Memory),
        new(Property.OchratoxinA, LimitStage.AsReceived, 5m, "µg/kg", Eu, SourceMark.Memory),
        new(Property.Zearalenone, LimitStage.AsReceived, 100m, "µg/kg", Eu, SourceMark.Memory),
    ]);

    /// <summary>Codex Alimentarius.</summary>
    public static Market CodexAlimentarius { get; } = new("CODEX", "Codex Alimentarius",
    [
        Don("CODEX", LimitStage.AsReceived),
        Don("CODEX", LimitStage.Product),
        new(Property.Ergot, LimitStage.AsReceived, 0.05m, "%", "Codex CXS 199-1995", SourceMark.Read),
    ]);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Market> All { get; } = [UnitedStates, EuropeanUnion, CodexAlimentarius];

    // Limits that flour is released by stand once, among the laboratory's dated rules.
    private static MarketLimit Don(string market, LimitStage stage)
    {
        var rule = LegalRules.Start.Rules.Single(r => r.Market == market && r.What == Property.Don && r.ForFlour == (stage == LimitStage.Product));
        return new(Property.Don, stage, rule.Upper!.Value, rule.Unit, $"{rule.Source}{(rule.IsBinding ? "" : " (advisory)")}", rule.FromMemory ? SourceMark.Memory : SourceMark.Read);
    }
}
