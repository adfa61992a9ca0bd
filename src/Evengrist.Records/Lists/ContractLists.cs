using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Intake;

namespace Evengrist.Records.Lists;

/// <summary>Contracts, the steps of their scales, and booked slots.</summary>
internal static class ContractLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("contracts", "Contracts, a row for each version", new ListOf<(ContractTerms Terms, Paper Paper)>()
                .Text("contract", r => r.Terms.Code).Whole("version", r => r.Terms.Version).Text("name", r => r.Terms.Name).Number("base price", ListOrigin.Stated, null, r => r.Terms.Base.Money.Amount).Text("currency", r => r.Terms.Base.Money.Currency).Text("price for one", r => Per(r.Terms.Base.PerText))
                .Number("base moisture", ListOrigin.Stated, ListUnit.Percent, r => r.Terms.BaseMoisture.Percent, "of the wheat as it lies").YesNo("dry matter shrink", r => r.Terms.DryMatterShrink).YesNo("dockage deducted", r => r.Terms.DeductDockage).YesNo("durum", r => r.Terms.Durum)
                .Text("scales", r => string.Join(", ", r.Terms.Scales.Select(s => s.Title))).Text("for what is smelt or seen, in the currency for one", r => string.Join("; ", (r.Terms.Observed ?? []).Select(o => FormattableString.Invariant($"{o.What} {o.Effect}{(o.Refused ? ", not taken" : "")}"))))
                .Day("in force from", r => r.Terms.From).Day("in force until", r => r.Terms.Until).Text("kept by", r => r.Paper.By).Moment("kept", r => r.Paper.Recorded),
            (mill, ask) => Contracts(mill, ask)),
        MillList.Of("contract-scales", "Scales of contracts, a row for each step", new ListOf<(ContractTerms Terms, ContractScale Scale, ScaleStep Step)>()
                .Text("contract", r => r.Terms.Code).Whole("version", r => r.Terms.Version).Text("scale", r => r.Scale.Title).Text("property", r => r.Scale.Factor.Words()).Number("from this value on", ListOrigin.Stated, null, r => r.Step.From).UnitAndBasis(r => r.Scale.Unit, r => r.Scale.Basis)
                .Text("what it does", r => r.Scale.Effect == ScaleEffect.AddsToPrice ? "adds to the price" : "adds per cent to the settled mass")
                .Number("effect", ListOrigin.Stated, null, r => r.Step.Effect).Text("unit of the effect", r => r.Scale.Effect == ScaleEffect.AddsToPrice ? r.Scale.Currency : "%").Text("effect for one", r => r.Scale.Effect == ScaleEffect.AddsToPrice ? Per(r.Scale.Per == Quantities.PriceUnit.Bushel ? "bu" : "t") : "").Text("source", r => r.Scale.Source),
            (mill, ask) => Contracts(mill, ask).SelectMany(c => c.Terms.Scales.SelectMany(s => s.Table.Select(step => (c.Terms, s, step))))),
        MillList.Of("bookings", "Booked slots, those called off included", new ListOf<(Booking Slot, string? Ticket)>()
                .Text("slot", r => r.Slot.Code).Moment("expected", r => r.Slot.At).Text("from", r => r.Slot.From).Text("class", r => r.Slot.Class).Number("mass expected as it comes", ListOrigin.Stated, ListUnit.Tonne, r => r.Slot.Tonnes).YesNo("called off", r => r.Slot.Cancelled)
                .Text("came as ticket", r => r.Ticket).Text("key of the sender", r => r.Slot.Key),
            Slots),
    ];

    private static IEnumerable<(ContractTerms Terms, Paper Paper)> Contracts(Mill mill, ListAsk ask) => mill.Contracts.All().Read<ContractTerms>(TermsJson.TryRead).Where(c => ask.Names(c.Value.Code) || ask.Names(c.Value.Title)).OrderBy(c => c.Value.Code, StringComparer.OrdinalIgnoreCase).ThenByDescending(c => c.Value.Version);

    // A slot is expected in time to come, so that the moment looked at does not narrow; which truck used it is found day by day.
    private static IEnumerable<(Booking Slot, string? Ticket)> Slots(Mill mill, ListAsk ask)
    {
        var settings = mill.Settings;
        var slots = Bookings.Of(mill).All.Where(b => ask.Spans(b.At) && (ask.Names(b.Code) || ask.Names(b.From))).ToLookup(b => Quantities.MillingDay.Of(b.At, settings.Zone, settings.DayStart));
        return mill.Ask(view => slots.SelectMany(day => Bookings.Come(view.Book, day.Key) is var come ? day.Select(b => (b, come.GetValueOrDefault(b.Code))) : []).ToArray());
    }

    private static string Per(string unit) => unit == "bu" ? ListUnit.TradeBushel.Symbol : unit;
}
