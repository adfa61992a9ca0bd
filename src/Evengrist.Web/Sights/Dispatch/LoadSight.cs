using Evengrist.Intake.Trade;
using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;
using Evengrist.Records;
using Evengrist.Records.Intake;
using Evengrist.Records.Packing.Dispatch;
using Evengrist.Web.Face;
using NodaTime;

namespace Evengrist.Web.Sights.Dispatch;

/// <summary>A load with all that is known of it at a moment.</summary>
/// <param name="Load">The load.</param>
/// <param name="Packages">Its packages as they are known.</param>
/// <param name="Rules">The mill's rules.</param>
/// <param name="Card">The consignee's card; null where none is kept.</param>
/// <param name="Place">The consignee in the ledger; null where it is not there.</param>
/// <param name="Carrier">Who hauls it; null where no paper names it.</param>
public sealed record LoadSight(DispatchLoad Load, IReadOnlyList<RampPackage> Packages, DispatchRules Rules, ConsigneeCard? Card, Place? Place, Party? Carrier)
{
    /// <summary>What stands against its leaving, were the seals found as they were put on; empty once it is over.</summary>
    public IReadOnlyList<LoadFinding> Findings { get; private init; } = [];

    /// <summary>The orders it names, with what is kept of each.</summary>
    public IReadOnlyList<NamedOrder> Orders { get; private init; } = [];

    /// <summary>What is said of those orders.</summary>
    public IReadOnlyList<LoadFinding> OrdersSaid => Load.IsOpen ? NamedOrderModel.Of(Load, Orders) : [];

    /// <summary>The consignee's name, or its code.</summary>
    public string Consignee => Card?.Name ?? (Place is { Name.Length: > 0 } place ? place.Name + (place.Of.Length > 0 ? $", {place.Of}" : "") : Load.Consignee);

    /// <summary>What stands on it, or stood on it when it left, t.</summary>
    public double Tonnes => Packages.Sum(p => p.Whole) / 1e6;

    /// <summary>How many packages are planned; 0 where nothing is.</summary>
    public int Planned => Load.Planned.Sum(p => p.Pallets);

    /// <summary>Looks at a load; null where none of the number is kept.</summary>
    public static LoadSight? Of(Mill mill, string? number, Instant at)
    {
        if (DispatchShelf.Find(mill, number) is not { } load)
        {
            return null;
        }

        var packages = RampPackages.Of(mill, [.. load.Packages.Select(p => p.Code)], load.Departed is { } left && left.At > at ? left.At : at, load.Number);
        var (rules, card) = (KeepDispatchRules.Newest(mill).Rules, Consignees.Find(mill, load.Consignee));
        var orders = NamedOrders.Of(mill, load);
        return new(load, packages, rules, card, mill.Ask(view => view.Book.Find(load.Consignee)), TradeShelf.Of(mill).Papers.PartyNamed(load.Carrier))
        {
            Orders = orders, Findings = load.IsOpen ? DepartureModel.Of(load, packages, load.Sealed?.Numbers ?? [], rules, card, orders, at.InZone(mill.Settings.Zone).Date) : [],
        };
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
