using Evengrist.Intake.Trade;
using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;
using Evengrist.Records;
using Evengrist.Records.Intake;
using Evengrist.Records.Packing.Dispatch;
using Evengrist.Web.Face;
using NodaTime;

namespace Evengrist.Web.Sights.Dispatch;

/// <summary>A load as pages show it.</summary>
/// <param name="Seen">The load with all that is known of it.</param>
/// <param name="Place">The consignee in the ledger; null where it is not there.</param>
/// <param name="Carrier">Who hauls it; null where no paper names it.</param>
public sealed record LoadSight(SeenLoad Seen, Place? Place, Party? Carrier)
{
    /// <summary>The load.</summary>
    public DispatchLoad Load => Seen.Load;

    /// <summary>Its packages as they are known.</summary>
    public IReadOnlyList<RampPackage> Packages => Seen.Packages;

    /// <summary>The mill's rules.</summary>
    public DispatchRules Rules => Seen.Rules;

    /// <summary>The consignee's card; null where none is kept.</summary>
    public ConsigneeCard? Card => Seen.Card;

    /// <summary>What stands against its leaving, were the seals found as they were put on; empty once it is over.</summary>
    public IReadOnlyList<LoadFinding> Findings { get; } = Seen.Findings;

    /// <summary>The orders it names, with what loads carry of each.</summary>
    public IReadOnlyList<OrderOnLoads> Orders => Seen.Filled.Orders;

    /// <summary>What is said of those orders.</summary>
    public IReadOnlyList<LoadFinding> OrdersSaid => Load.IsOpen ? NamedOrderModel.Of(Load, Seen.Filled, Rules) : [];

    /// <summary>The consignee's name, or its code.</summary>
    public string Consignee => Card?.Name ?? (Place is { Name.Length: > 0 } place ? place.Name + (place.Of.Length > 0 ? $", {place.Of}" : "") : Load.Consignee);

    /// <summary>What stands on it, or stood on it when it left, t.</summary>
    public double Tonnes => Packages.Sum(p => p.Whole) / 1e6;

    /// <summary>How many packages are planned; 0 where nothing is.</summary>
    public int Planned => Load.Planned.Sum(p => p.Pallets);

    /// <summary>Looks at a load; null where none of the number is kept.</summary>
    public static LoadSight? Of(Mill mill, string? number, Instant at) => SeenLoad.Of(mill, number, at) is { } seen ? Of(mill, [seen])[0] : null;

    /// <summary>Looks at loads; the papers are read once.</summary>
    public static IReadOnlyList<LoadSight> Of(Mill mill, RampPapers papers, IEnumerable<DispatchLoad> loads, Instant at) => Of(mill, [.. loads.Select(l => SeenLoad.Of(mill, papers, l, at))]);

    private static LoadSight[] Of(Mill mill, IReadOnlyList<SeenLoad> seen)
    {
        var trade = TradeShelf.Of(mill).Papers;
        return mill.Ask(view => seen.Select(s => new LoadSight(s, view.Book.Find(s.Load.Consignee), trade.PartyNamed(s.Load.Carrier))).ToArray());
    }

    /// <summary>How far it has come, as shape and word.</summary>
    public static (StateKind Kind, string Word) Stage(DispatchLoad load) => load.Stage switch
    {
        LoadStage.Departed => (StateKind.Clear, "left"),
        LoadStage.TurnedAway => (StateKind.Stop, "turned away"),
        LoadStage.Sealed => (StateKind.Clear, "sealed"),
        LoadStage.Loading => (StateKind.Watch, "loading"),
        LoadStage.AtTheRamp => (StateKind.Watch, "at the ramp"),
        _ => (StateKind.Watch, "planned"),
    };

    /// <summary>A finding's shape.</summary>
    public static StateKind Shape(LoadFinding finding) => finding.Words.Contains("on HOLD", StringComparison.Ordinal) ? StateKind.Hold : finding.Weight switch { FindingWeight.Stop => StateKind.Stop, _ => StateKind.Watch };

    /// <summary>A finding's word.</summary>
    public static string Word(LoadFinding finding) => finding.Words.Contains("on HOLD", StringComparison.Ordinal) ? "HOLD:" : finding.Weight switch { FindingWeight.Stop => "Stop:", FindingWeight.Ask => "Asked:", _ => "Mind:" };
}
