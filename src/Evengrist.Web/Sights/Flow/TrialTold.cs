using Evengrist.Milling.Sheet;

namespace Evengrist.Web.Sights.Flow;

/// <summary>What a trial tries, in words.</summary>
public static class TrialTold
{
    /// <summary>Each setting and figure of the wheat that is tried otherwise.</summary>
    public static IReadOnlyList<string> Of(TrialAsk ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var passages = ask.Sheet.Passages.ToDictionary(p => p.Code, StringComparer.Ordinal);
        var (wheat, other) = (ask.Wheat, ask.OtherWheat);
        return
        [
            .. ask.Change.GapMicrometres.Select(g => $"{g.Key} gap {(passages.GetValueOrDefault(g.Key)?.Rolls is { } r ? FlowSheetWords.Number(r.GapMicrometres) : "?")} → {FlowSheetWords.Number(g.Value)} µm"),
            .. ask.Change.AirMetresPerSecond.Select(a => $"{a.Key} air {(passages.GetValueOrDefault(a.Key)?.AirMetresPerSecond is { } air ? FlowSheetWords.Number(air) : "?")} → {FlowSheetWords.Number(a.Value)} m/s"),
            .. ask.Change.Cloths.Select(c => $"{c.Passage} cloth {FlowSheetWords.Number(c.FromMicrometres)} → {FlowSheetWords.Number(c.ToMicrometres)} µm"),
            .. ask.Change.Outlets.Select(o => $"{o.Passage} outlet {o.Outlet} to {SpoutText.Write(o.To)}"),
            .. wheat is null || other is null ? [] : ((string Name, double Now, double Then, string Unit)[])
            [
                ("wheat", wheat.TonnesPerHour, other.TonnesPerHour, "t/h"), ("moisture", wheat.MoisturePercent, other.MoisturePercent, "%"), ("wheat ash", wheat.AshPercent, other.AshPercent, $"% {ask.Basis}"), ("wheat protein", wheat.ProteinPercent, other.ProteinPercent, $"% {ask.Basis}"),
                ("hardness", wheat.Hardness, other.Hardness, ""), ("falling number", wheat.FallingNumber, other.FallingNumber, "s"),
            ] is var all ? all.Where(x => x.Now != x.Then).Select(x => $"{x.Name} {FlowSheetWords.Number(x.Now)} → {FlowSheetWords.Number(x.Then)} {x.Unit}".TrimEnd()) : [],
        ];
    }
}
