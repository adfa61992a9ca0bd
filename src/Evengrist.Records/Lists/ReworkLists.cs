using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Packing.Rework;

namespace Evengrist.Records.Lists;

/// <summary>Totes of rework as they stand, and what went into and out of them.</summary>
internal static class ReworkLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("rework-totes", "Totes of rework, those with something in them first, the oldest first", new ListOf<SeenTote>()
                .Text("tote", t => t.Tote.Code).Text("flour", t => t.Tote.Flour).Text("also of", t => string.Join(", ", t.Tote.AlsoOf)).Mass("put into it", ListOrigin.Seen, t => Mass.FromGrams(t.From.Sum(m => m.Mass.Grams))).Mass("still in it", ListOrigin.Reckoned, t => Mass.FromGrams(t.Tote.Grams)).Moment("first came in", t => t.Since)
                .Reckoned("age", ListUnit.Day, t => t.Tote.AgeDays).Text("why rework", t => t.Record?.Reason).Text("said by", t => t.Record?.By).Moment("said", t => t.Record?.At).Text("holds, besides wheat", t => string.Join(", ", t.Tote.Allergens))
                .Reckoned("enriched, at least", ListUnit.Percent, t => 100 * t.Tote.LeastEnriched, "of its mass").Reckoned("enriched, at most", ListUnit.Percent, t => 100 * t.Tote.MostEnriched, "of its mass").Text("on hold, because", t => t.Tote.Hold),
            (mill, ask) => ReworkLedger.Of(mill, ask.AsOf).Where(t => ask.Names(t.Tote.Code))),
        MillList.Of("rework-moves", "What went into totes of rework and what they were fed into, a row for each movement", new ListOf<(SeenTote Seen, Movement Moved, bool IsInto, Place Other)>()
                .Text("tote", r => r.Seen.Tote.Code).Text("way", r => r.IsInto ? "into the tote" : "fed").Text("from or to", r => r.Other.Code).Text("kind of place", r => r.Other.Kind.Words()).Text("material there", r => r.Other.Material).Moment("began", r => r.Moved.At).Moment("ended", r => r.Moved.Until).Mass("mass as it lay", ListOrigin.Seen, r => r.Moved.Mass),
            (mill, ask) => ReworkLedger.Of(mill, ask.AsOf).Where(t => ask.Names(t.Tote.Code)).SelectMany(t => t.From.Select(m => (t, m, true)).Concat(t.To.Select(m => (t, m, false)))).Where(r => ask.Holds(r.m.At)).ToArray() is var moves ? mill.Ask(view => moves.Select(r => (r.t, r.m, r.Item3, view.Book[r.Item3 ? r.m.From : r.m.To])).ToArray()) : []),
    ];
}
