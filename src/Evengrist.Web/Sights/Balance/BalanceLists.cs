using Evengrist.Milling.Balance;
using Evengrist.Quantities.Lists;
using Evengrist.Web.Sights.Lists;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Balance;

/// <summary>The balance of a mill as lists: masses, extractions, where the rest went, weighers.</summary>
public static class BalanceLists
{
    private const string Page = "/ledger/balance/mill";

    /// <summary>All four.</summary>
    public static IReadOnlyList<PageList> All { get; } =
    [
        PageList.Answer(Page, "mill-balance", "Balance of the mill: what went in and what came out, as it lay", new ListOf<(string What, string Kind, Weighed Mass, MeanMoisture? Moisture)>()
                .Text("what", r => r.What).Text("kind", r => r.Kind).Reckoned("mass", ListUnit.Tonne, r => r.Mass.Tonnes, "as it lay").Reckoned("one standard uncertainty of the mass", ListUnit.Tonne, r => r.Mass.StandardUncertainty).Reckoned("moisture", ListUnit.Percent, r => r.Moisture?.Percent, "wet basis").Reckoned("one standard uncertainty of the moisture", ListUnit.Percent, r => r.Moisture?.StandardUncertainty)
                .Reckoned("dry matter", ListUnit.Tonne, r => r.Mass.Tonnes * (100 - r.Moisture?.Percent) / 100),
            (visit, context) => Of(visit, context, b => Masses(b.Spec))),
        PageList.Answer(Page, "mill-extractions", "Balance of the mill: flour for a hundred of wheat, on each basis", new ListOf<(Extraction Weighed, Extraction? Reconciled)>()
                .Text("flour for a hundred of", r => Extraction.Words(r.Weighed.Basis)).Reckoned("as weighed", ListUnit.Percent, r => r.Weighed.Percent).Reckoned("one standard uncertainty as weighed", ListUnit.Percent, r => r.Weighed.StandardUncertainty).Reckoned("reconciled", ListUnit.Percent, r => r.Reconciled?.Percent).Reckoned("one standard uncertainty reconciled", ListUnit.Percent, r => r.Reconciled?.StandardUncertainty),
            (visit, context) => Of(visit, context, b => b.Extractions.Select((e, i) => (e, b.ReconciledExtractions.ElementAtOrDefault(i))))),
        PageList.Answer(Page, "mill-losses", "Balance of the mill: where what is unexplained lies; reckoned by reconciling", new ListOf<LossPart>()
                .Text("part", l => l.Name).Text("kind", l => l.Kind.ToString()).Reckoned("share of it", ListUnit.Tonne, l => l.Tonnes).Reckoned("one standard uncertainty", ListUnit.Tonne, l => l.StandardUncertainty),
            (visit, context) => Of(visit, context, b => b.Losses)),
        PageList.Answer(Page, "mill-weighers", "Balance of the mill: each measurement beside its reconciled value", CheckColumns.Of(CheckColumns.IsShareOfMill, ListUnit.Tonne), (visit, context) => Of(visit, context, b => CheckColumns.Rows(b.Check))),
    ];

    private static (IEnumerable<T>? Rows, string Why) Of<T>(Visit visit, HttpContext context, Func<MillBalance, IEnumerable<T>> rows)
    {
        var sight = MillBalanceSight.Of(visit.Mill, context.Request.Query.Typed, visit.AsOf);
        return sight.Outcome switch
        {
            MillBalance balance => (rows(balance), ""),
            NoMillBalance none => (null, string.Join(" ", none.Reasons)),
            _ => (null, sight.Ask.Fields.Faults.Count > 0 ? string.Join(" ", sight.Ask.Fields.Faults) : "There is no mill unit in the records."),
        };
    }

    private static IEnumerable<(string What, string Kind, Weighed Mass, MeanMoisture? Moisture)> Masses(BalanceSpec spec) =>
    [
        ("wheat before cleaning", "in", spec.Dirty, spec.WheatMoisture), ("screenings", "out", spec.Screenings, spec.WheatMoisture), ("water", "in", spec.Water, null),
        .. spec.Products.Select(p => (p.Name, p.Kind == WeighedKind.Flour ? "out, flour" : "out, by-product", p.Mass, p.Moisture)),
        ("temper bins, more at the end", "lies there", spec.TemperRise, null),
    ];
}
