using Evengrist.Packing.Dispatch;
using Evengrist.Packing.NetContent;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Packing;
using Evengrist.Records.Packing.Dispatch;
using Evengrist.Records.Tracing;
using Evengrist.Tracing.Recall;

namespace Evengrist.Records.Lists;

/// <summary>Orders, products, loads with their packages, release records, consignees, what checkweighers weighed, inspections of net content, and recalls issued.</summary>
internal static class PackingLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("packing-orders", "Orders to pack as they stand", new ListOf<KeptOrder>().Text("order", o => o.Order.Number).Whole("version", o => o.Version).Text("customer", o => o.Order.Customer).Text("product", o => o.Order.Product).Number("quantity", ListOrigin.Stated, null, o => o.Order.Quantity)
                .Text("counted in", o => o.Order.Unit.ToString()).Moment("taken", o => o.Order.Taken).Moment("due", o => o.Order.Due).Whole("priority", o => o.Order.Priority).YesNo("from stock", o => o.Order.FromStock).YesNo("cancelled", o => o.Order.IsCancelled).Text("remark", o => o.Order.Remark).Text("reason", o => o.Order.Reason)
                .Text("kept by", o => o.By).Moment("kept", o => o.Recorded),
            (mill, ask) => PackingOrders.Newest(mill).Where(o => ask.Holds(o.Order.Taken) && (ask.Names(o.Order.Number) || ask.Names(o.Order.Customer)))),
        MillList.Of("products", "Products as they stand", new ListOf<KeptProduct>().Text("product", p => p.Product.Code).Whole("version", p => p.Version).Text("name", p => p.Product.Name).Text("flour", p => p.Product.Flour).Text("pack", p => p.Product.PackWords).Mass("net in a pack", ListOrigin.Stated, p => p.Product.Pack)
                .Whole("packs on a pallet", p => p.Product.PerPallet, ListUnit.Piece).Text("GTIN of a pack", p => p.Product.PackGtin).Text("GTIN of a case", p => p.Product.CaseGtin).Whole("keeps for months", p => p.Product.ShelfMonths).Text("contains", p => string.Join(", ", p.Product.Allergens)).YesNo("enriched", p => p.Product.Enriched)
                .Text("reason", p => p.Product.Reason).Text("kept by", p => p.By).Moment("kept", p => p.Recorded),
            (mill, ask) => Products.Newest(mill).Where(p => ask.Names(p.Product.Code))),
        MillList.Of("unit-numbers", "Numbers (SSCC) of pallets and loads", new ListOf<(string Unit, string Number)>().Text("unit", u => u.Unit).Text("SSCC", u => u.Number),
            (mill, ask) => UnitNumbers.All(mill).Where(u => ask.Names(u.Key)).OrderBy(u => u.Key, StringComparer.Ordinal).Select(u => (u.Key, u.Value))),
        MillList.Of("dispatch-loads", "Loads at the ramp", new ListOf<DispatchLoad>().Text("load", l => l.Number).Day("day", l => l.Day).Text("consignee", l => l.Consignee).Text("carrier", l => l.Carrier).Text("trailer", l => l.Trailer).YesNo("tanker", l => l.IsTanker).Text("stage", l => l.Stage.ToString())
                .Text("orders", l => string.Join(", ", l.Orders)).Whole("packages loaded", l => l.Packages.Count, ListUnit.Piece, ListOrigin.Seen).Text("seals", l => string.Join(", ", l.Sealed?.Numbers ?? [])).Moment("sealed", l => l.Sealed?.At).Moment("left", l => l.Departed?.At).Text("sent off by", l => l.Departed?.By)
                .Moment("turned away", l => l.Away?.At).Text("why turned away", l => l.Away?.Reason),
            (mill, ask) => DispatchShelf.All(mill).Where(l => ask.Names(l.Number) || ask.Names(l.Consignee))),
        MillList.Of("dispatch-packages", "Packages on loads, a row for each", new ListOf<(DispatchLoad Load, LoadedPackage Package)>().Text("load", r => r.Load.Number).Day("day", r => r.Load.Day).Text("consignee", r => r.Load.Consignee).Text("package", r => r.Package.Code).Moment("scanned", r => r.Package.At).Text("by", r => r.Package.By).Moment("left", r => r.Load.Departed?.At),
            (mill, ask) => DispatchShelf.All(mill).Where(l => ask.Names(l.Number) || ask.Names(l.Consignee)).SelectMany(l => l.Packages.Select(p => (l, p)))),
        MillList.Of("release-records", "Records of what was released to whom (21 CFR 1.345), a row for each lot", new ListOf<(ReleaseRecord Record, ReleasedLot Lot)>().Text("load", r => r.Record.Load).Text("consignee", r => r.Record.Consignee).Moment("left", r => r.Record.At).Text("food", r => r.Lot.Food).Text("lot", r => r.Lot.Lot)
                .Text("packed as", r => r.Lot.PackedAs).Mass("mass", ListOrigin.Seen, r => r.Lot.Mass).Text("packages", r => string.Join(", ", r.Lot.Packages)).YesNo("complete", r => r.Record.IsComplete).Text("missing", r => string.Join("; ", r.Record.Missing)),
            (mill, ask) => ReleaseRecords.Of(mill, ask.From ?? NodaTime.Instant.FromUnixTimeTicks(0), ask.End).Where(r => ask.Names(r.Load) || ask.Names(r.Consignee)).SelectMany(r => r.Lots.Select(l => (r, l)))),
        MillList.Of("consignees", "Consignees", new ListOf<ConsigneeCard>().Text("consignee", c => c.Code).Text("name", c => c.Name).Text("address", c => c.Address).Text("contact", c => c.Contact).Text("phone", c => c.Phone).Text("phone for recalls", c => c.RecallPhone).Text("mail", c => c.Email).Text("use", c => c.Use.ToString())
                .Whole("least days left", c => c.LeastDaysLeft).Day("confirmed", c => c.Confirmed).Text("confirmed by", c => c.ConfirmedBy),
            (mill, ask) => Consignees.All(mill).Where(c => ask.Names(c.Code))),
        MillList.Of("weighed-hours", "What checkweighers weighed, a row for each hour; the last month where no span is said", new ListOf<(string Line, string Product, HourOfWeights Hour)>().Text("line", r => r.Line).Text("product", r => r.Product).Moment("hour from", r => r.Hour.From).Whole("packs", r => r.Hour.Count, ListUnit.Piece, ListOrigin.Seen)
                .Whole("rejected", r => r.Hour.Rejected, ListUnit.Piece, ListOrigin.Seen).Reckoned("mean", ListUnit.Gram, r => r.Hour.Mean).Reckoned("standard deviation", ListUnit.Gram, r => r.Hour.Deviation).Reckoned("least", ListUnit.Gram, r => r.Hour.Least).Reckoned("most", ListUnit.Gram, r => r.Hour.Most).Reckoned("tare", ListUnit.Gram, r => r.Hour.Tare),
            (mill, ask) => WeighedHours.Within(mill, ask.From ?? ask.AsOf - NodaTime.Duration.FromDays(31), ask.End).Where(l => ask.Names(l.Key.Line) || ask.Names(l.Key.Product)).SelectMany(l => l.Value.Select(h => (l.Key.Line, l.Key.Product, h)))),
        MillList.Of("net-content-inspections", "Inspections of net content", new ListOf<(string Number, ContentInspection Inspection, NodaTime.Instant Kept)>().Text("inspection", r => r.Number).Text("product", r => r.Inspection.Product).Text("lot", r => r.Inspection.Lot).Text("rules", r => r.Inspection.Rules.ToString())
                .Number("label", ListOrigin.Stated, ListUnit.Gram, r => (decimal)r.Inspection.LabelGrams).Whole("packs in the lot", r => r.Inspection.LotSize, ListUnit.Piece).Whole("packs weighed", r => r.Inspection.Gross.Count, ListUnit.Piece, ListOrigin.Seen).Reckoned("mean net", ListUnit.Gram, r => r.Inspection.Net.Average())
                .Number("tare", ListOrigin.Stated, ListUnit.Gram, r => (decimal)r.Inspection.TareGrams).Moment("sampled", r => r.Inspection.SampledAt).Text("sampled by", r => r.Inspection.SampledBy).Text("signed by", r => r.Inspection.SignedBy).Text("remark", r => r.Inspection.Remark).Moment("kept", r => r.Kept),
            (mill, ask) => ContentInspections.All(mill).Where(i => ask.Holds(i.Inspection.SampledAt) && (ask.Names(i.Number) || ask.Names(i.Inspection.Product)))),
        MillList.Of("recalls", "Recalls issued, a row for each package", new ListOf<(KeptRecall Recall, string Package)>().Text("recall", r => r.Recall.Number).Text("asked of", r => r.Recall.Asked).Text("net", r => r.Recall.Net.ToString()).Moment("asked as of", r => r.Recall.AsOf).Text("reason", r => r.Recall.Reason).Text("issued by", r => r.Recall.By)
                .Moment("from when on", r => r.Recall.At).Text("package", r => r.Package),
            (mill, ask) => Recalls.All(mill).Where(r => ask.Names(r.Number)).SelectMany(r => r.Packages.Select(p => (r, p)))),
    ];
}
