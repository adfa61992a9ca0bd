using Evengrist.Intake;
using Evengrist.Intake.Paying;
using Evengrist.Intake.Trade;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Intake;

namespace Evengrist.Records.Lists;

/// <summary>Accounts of loads, payments, parties, fields, vehicles, and certificates of instruments.</summary>
internal static class TradeLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("accounts", "What each load is worth, what was paid and what is left", new ListOf<PaymentAccount>()
                .Text("ticket", a => a.Load.Truck.Code).Day("milling day", a => a.Load.Day).Text("grower", a => a.Load.GrowerName).Text("field or elevator", a => a.Load.Source?.Code).Text("class", a => a.Load.Truck.Material).Mass("net", ListOrigin.Seen, a => a.Load.Net).Mass("clean", ListOrigin.Reckoned, a => a.Settled?.Clean)
                .Mass("settled mass", ListOrigin.Reckoned, a => a.Settled?.Settled).Number("counted for payment", ListOrigin.Reckoned, ListUnit.TradeBushel, a => a.Settled?.Bushels).Number("pay", ListOrigin.Reckoned, null, a => a.Settled?.Pay.Amount).Number("advances", ListOrigin.Seen, null, a => a.Advances?.Amount)
                .Number("paid", ListOrigin.Seen, null, a => a.Paid?.Amount).Number("left", ListOrigin.Reckoned, null, a => a.Left?.Amount).Text("currency", a => a.Settled?.Pay.Currency).Text("contract", a => a.Load.Contract).Text("how far", a => a.Stage.ToString())
                .Text("why not settled", a => a.Outcome is NotSettled not ? string.Join(" ", not.Reasons) : "").Text("not for settlement", a => string.Join(" ", a.Load.NotForSettlement())),
            (mill, ask) => Of(mill, ask).Select(PaymentAccount.Of)),
        MillList.Of("settlement-lines", "How each load's pay comes about, a row for each line from gross to pay", new ListOf<(LoadFacts Load, Settlement Settled, Figure Line)>()
                .Text("ticket", r => r.Load.Truck.Code).Text("grower", r => r.Load.GrowerName).Text("line", r => r.Line.What).YesNo("reckoned", r => r.Line.Origin == Origin.Reckoned).Number("value", ListOrigin.Reckoned, null, r => r.Line.Value).UnitAndBasis(r => Traded(r.Line.Unit), r => r.Line.Basis)
                .Text("under", r => r.Settled.Under),
            (mill, ask) => Of(mill, ask).Select(PaymentAccount.Of).Where(a => a.Settled is not null).SelectMany(a => a.Settled!.Lines.Select(l => (a.Load, a.Settled, l)))),
        MillList.Of("payments", "Payments for loads", new ListOf<(LoadFacts Load, Happening Fact, Payment Payment)>()
                .Text("ticket", r => r.Load.Truck.Code).Text("grower", r => r.Load.GrowerName).Moment("at", r => r.Fact.At).Text("kind", r => r.Payment.Kind.ToString()).Number("amount", ListOrigin.Seen, null, r => r.Payment.Amount).Text("currency", r => r.Payment.Currency).Text("under", r => r.Payment.Under).Text("by", r => r.Payment.By),
            (mill, ask) => Of(mill, ask).SelectMany(l => l.Payments.Select(p => (l, p.Fact, p.Payment)))),
        MillList.Of("parties", "Growers, carriers and others", new ListOf<Party>().Text("party", p => p.Code).Text("name", p => p.Name).Text("address", p => p.Address).Text("phone", p => p.Phone).Text("mail", p => p.Email),
            (mill, ask) => TradeShelf.Of(mill).Papers.Parties.Where(p => ask.Names(p.Code))),
        MillList.Of("fields", "Fields", new ListOf<FieldSheet>().Text("field", f => f.Code).Text("grower", f => f.Grower).Text("district", f => f.District).Text("variety", f => f.Variety).Number("area", ListOrigin.Stated, ListUnit.Hectare, f => f.Hectares).Day("from", f => f.From),
            (mill, ask) => TradeShelf.Of(mill).Papers.Fields.Where(f => ask.Names(f.Code))),
        MillList.Of("vehicles", "Vehicles", new ListOf<Vehicle>().Text("plate", v => v.Code).Text("carrier", v => v.Carrier), (mill, ask) => TradeShelf.Of(mill).Papers.Vehicles.Where(v => ask.Names(v.Code))),
        MillList.Of("instrument-certificates", "Certificates of scales and meters", new ListOf<Certificate>().Text("instrument", c => c.Instrument).Text("certificate", c => c.Number).Text("issued by", c => c.Body).Day("from", c => c.From).Day("until", c => c.Until),
            (mill, ask) => TradeShelf.Of(mill).Papers.Certificates.Where(c => ask.Names(c.Instrument))),
    ];

    // Bushels of trade are no mass: they are named as what they are.
    private static string Traded(string unit) => unit == "bu" ? ListUnit.TradeBushel.Symbol : unit.EndsWith("/bu", StringComparison.Ordinal) ? unit[..^2] + ListUnit.TradeBushel.Symbol : unit;

    // A statement is of one grower, by code or name.
    private static IEnumerable<LoadFacts> Of(Mill mill, ListAsk ask) => IntakeLists.Loads(mill, ask).Where(l => ask["grower"] is not { Length: > 0 } grower || l.GrowerCode.Equals(grower, StringComparison.OrdinalIgnoreCase) || l.GrowerName.Equals(grower, StringComparison.OrdinalIgnoreCase));
}
