using Evengrist.Intake.Grading;
using Evengrist.Ledger;

namespace Evengrist.Intake.Deciding;

/// <summary>Limits as far as they were read or remembered, for a mill to begin with. Check the law before anything hangs on one.</summary>
public static class Markets
{
    private const string FdaGuidance = "FDA guidance on deoxynivalenol, July 2010 (advisory)";
    private const string FdaAction = "FDA action level, as a regulatory summary quotes it";
    private const string Eu = "Regulation (EU) 2023/915 as amended by (EU) 2024/1022";
    private const string Codex = "Codex general standard for contaminants";

    /// <summary>United States: finished products; no limit on raw wheat for milling.</summary>
    public static Market UnitedStates { get; } = new("US", "United States",
    [
        new(Property.Don, LimitStage.Product, 1m, "mg/kg", FdaGuidance, SourceMark.Read),
        new(Property.Aflatoxin, LimitStage.AsReceived, 20m, "µg/kg", FdaAction, SourceMark.Read),
    ]);

    /// <summary>European Union: limits before the first stage of processing, and on products.</summary>
    public static Market EuropeanUnion { get; } = new("EU", "European Union",
    [
        new(Property.Don, LimitStage.AsReceived, 1m, "mg/kg", Eu + ", from 1 July 2024", SourceMark.Read),
        new(Property.Don, LimitStage.Product, 0.6m, "mg/kg", Eu, SourceMark.Read),
        new(Property.T2AndHt2, LimitStage.AsReceived, 50m, "µg/kg", Eu, SourceMark.Read),
        new(Property.Aflatoxin, LimitStage.AsReceived, 4m, "µg/kg", Eu, SourceMark.Memory),
        new(Property.OchratoxinA, LimitStage.AsReceived, 5m, "µg/kg", Eu, SourceMark.Memory),
        new(Property.Zearalenone, LimitStage.AsReceived, 100m, "µg/kg", Eu, SourceMark.Memory),
    ]);

    /// <summary>Codex Alimentarius.</summary>
    public static Market CodexAlimentarius { get; } = new("CODEX", "Codex Alimentarius",
    [
        new(Property.Don, LimitStage.AsReceived, 2m, "mg/kg", Codex, SourceMark.Memory),
        new(Property.Don, LimitStage.Product, 1m, "mg/kg", Codex, SourceMark.Memory),
        new(Property.Ergot, LimitStage.AsReceived, 0.05m, "%", "Codex CXS 199-1995", SourceMark.Read),
    ]);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Market> All { get; } = [UnitedStates, EuropeanUnion, CodexAlimentarius];
}
