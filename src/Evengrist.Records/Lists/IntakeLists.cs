using Evengrist.Intake;
using Evengrist.Intake.Paying;
using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Intake;

namespace Evengrist.Records.Lists;

/// <summary>Trucks, what they are worth, retained samples, parties, fields, vehicles and certificates.</summary>
internal static class IntakeLists
{
    private static readonly Property[] Shown = [Property.Protein, Property.Moisture, Property.TestWeight, Property.FallingNumber];

    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("trucks", "Trucks and railcars with weights, main readings and what they are worth", Trucks(), Loads),
        MillList.Of("retained-samples", "Retained samples of loads", new ListOf<RetainedSample>().Text("ticket", r => r.Load.Code).Text("sample", r => r.Taken.RetainedId).Moment("taken", r => r.At)
            .Day("kept until", r => r.Taken.LastDay).YesNo("load on hold", r => r.OnHold).Moment("thrown away", r => r.Discarded),
            (mill, ask) => mill.Ask(view => RetainedSample.All(view.Book, ask.AsOf).Where(s => ask.Names(s.Load.Code)).ToArray())),
    ];

    private static ListOf<LoadFacts> Trucks()
    {
        var list = new ListOf<LoadFacts>()
            .Text("ticket", l => l.Truck.Code).Moment("came", l => l.At).Day("milling day", l => l.Day).Text("plate", l => l.Truck.Name).Text("class", l => l.Truck.Material).Text("variety", l => l.Variety)
            .Text("field or elevator", l => l.Source?.Code).Text("grower", l => l.GrowerName).Text("district", l => l.District).Mass("net", ListOrigin.Seen, l => l.Net);
        foreach (var what in Shown)
        {
            list.Number(what.Words() + " as read", ListOrigin.Seen, null, l => l.Read(what)?.Value).Text(what.Words() + ", unit and basis", l => l.Read(what) is { } r ? r.Unit + (r.Basis.IsStated ? " " + r.Basis : "") : "");
        }

        return list.Text("contract", l => l.Contract).Number("pay", ListOrigin.Reckoned, null, l => (l.Settle() as Settlement)?.Pay.Amount).Text("currency", l => (l.Settle() as Settlement)?.Pay.Currency).Text("why not settled", l => l.Settle() is NotSettled not ? string.Join(" ", not.Reasons) : "").Text("voided", l => l.Voided?.Words);
    }

    internal static IEnumerable<LoadFacts> Loads(Mill mill, ListAsk ask)
    {
        var shelf = TradeShelf.Of(mill);
        return mill.Ask(view => shelf.Reader(view, ask.AsOf).All().Where(l => ask.Holds(l.At) && ask.Names(l.Truck.Code)).ToList());
    }
}
