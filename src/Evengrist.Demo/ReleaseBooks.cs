using Evengrist.Laboratory.Conformity;
using Evengrist.Laboratory.Lots;
using Evengrist.Laboratory.Specifications;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>The release papers of the demonstration: who may release, what makes a lot, specifications of flours and customers, and decisions about the days of the instrument's shift and those before the opening moment. All invented.</summary>
internal static class ReleaseBooks
{
    private const string Chief = "Dr Anya Holt", Second = "Femi Strand";
    private const string House = "the mill's own sheet", Agreed = "the customer's sheet";

    // Lots of the flour NIR's shift, by milling day: judged as they were read, held once the shift was found, judged again by the reference.
    private static readonly LocalDate ShiftFrom = new(2025, 10, 6), ShiftUntil = new(2025, 10, 9), LatelyFrom = new(2026, 1, 9);
    private static readonly Instant Found = MillCalendar.At(new LocalDate(2025, 10, 8), 6, 25), Again = MillCalendar.At(new LocalDate(2025, 10, 11), 6, 35), Certified = MillCalendar.At(new LocalDate(2025, 10, 13), 8, 15);

    /// <summary>The mill's three shifts, and two hours from the rolls to the package.</summary>
    public static ReleaseRules Rules { get; } = new(3, 120, [Chief, Second])
    {
        Products = ["WB", "AP", "HG", "PA", "WW", "C1", "C2", "SM"], UnitMethods = ["NIR", "combustion", "furnace", "oven 130 °C"],
    };

    /// <summary>The specifications.</summary>
    public static IReadOnlyList<Specification> Specifications { get; } =
    [
        Of("WB", "White bread, patent", Band(11.7m, 12.1m, 11.9m), Ash(0.46m), Moist(14.0m)),
        Of("AP", "All-purpose", Band(10.35m, 10.85m, 10.6m), Ash(0.47m), Moist(14.0m)),
        Of("HG", "High gluten", Band(13.1m, 13.7m, 13.4m), Ash(0.50m), Moist(14.0m)),
        Of("PA", "Pastry, of soft wheat", Band(8.3m, 9.1m, 8.7m), Ash(0.44m), Moist(13.5m)),
        Of("WW", "Whole wheat", new(Property.Protein, "%", House) { Basis = Basis.At14, Lower = 12.4m, Target = 13.0m, LotSpread = 0.04, BiasPart = 0.03 },
            new(Property.Ash, "%", House) { Basis = Basis.At14, Lower = 1.40m, Upper = 1.75m, LotSpread = 0.01, BiasPart = 0.01 }, Moist(13.5m)),
        Of("C1", "First clear", new(Property.Protein, "%", House) { Basis = Basis.At14, Lower = 13.2m }, Ash(0.99m), Moist(14.0m)),
        Of("C2", "Second clear", Ash(1.45m)),
        For("WB-ORLAWICK", "WB", "Orlawick", 0.20, Band(11.7m, 12.1m, 11.9m), Ash(0.46m), Moist(14.0m)),
        For("WB-DUNMARRICK", "WB", "Dunmarrick Bakeries", 0.25, Band(11.6m, 12.2m, 11.9m), Ash(0.47m), Moist(14.0m)),
        For("AP-BRIGHTCRUST", "AP", "Brightcrust Larder", 0.25, Band(10.3m, 10.9m, 10.6m), Ash(0.48m), Moist(14.0m)),
        For("HG-C5", "HG", "pizza kitchens", 0.25, Band(13.1m, 13.7m, 13.4m), Ash(0.50m), Moist(14.0m)),
        For("PA-C6", "PA", "biscuit works", 0.25, Band(8.3m, 9.1m, 8.7m), Ash(0.44m), Moist(13.5m)),
    ];

    /// <summary>Keeps them, as persons would: decisions once the year's facts stand.</summary>
    public static void Keep(Mill mill, Truth truth, ulong seed)
    {
        KeepReleaseRules.Keep(mill, Rules, Chief);
        foreach (var specification in Specifications)
        {
            if (FlourSpecifications.Keep(mill, specification, Chief).Faults is { Count: > 0 } faults)
            {
                throw new InvalidOperationException(string.Join(" ", faults));
            }
        }

        // Laid out once more, nothing is decided or issued twice.
        if (LotDecisions.All(mill).Count > 0)
        {
            return;
        }

        TestAgain(mill, truth, new Dice(seed, "retained samples"));
        foreach (var lot in LotShelf.Of(mill, ShiftFrom, ShiftUntil, Again).Concat(LotShelf.Of(mill, LatelyFrom, LotShelf.DayOf(mill, MillCalendar.OpeningMoment), MillCalendar.OpeningMoment)))
        {
            foreach (var decision in Decisions(lot))
            {
                mill.Papers(LotDecision.Kind).KeepNext(decision.Lot, decision.ToJson(), decision.By);
            }
        }

        foreach (var (lot, specification) in new[] { ("WB-251007-2", "WB-ORLAWICK"), ("WB-251007-3", "WB-DUNMARRICK") })
        {
            if (IssuedCertificates.Issue(mill, lot, specification, Chief, Certified).Refused is { Count: > 0 } refused)
            {
                throw new InvalidOperationException(string.Join(" ", refused));
            }
        }
    }

    // The lamp's shift as it was found, and three retained samples of each lot it touched by combustion.
    private static void TestAgain(Mill mill, Truth truth, Dice dice)
    {
        InstrumentsFoundWrong.Keep(mill, new WrongSpan("NIR-2", Property.Protein, MillCalendar.At(new LocalDate(2025, 10, 7), 10, 20), MillCalendar.At(new LocalDate(2025, 10, 8), 13), 0.279, 0.0125), Chief, MillCalendar.At(new LocalDate(2025, 10, 8), 13, 5));
        var drafts = LotShelf.Of(mill, ShiftFrom, ShiftUntil, Again).Where(IsShifted).SelectMany(l => l.Lot.Packages.Where(p => p.Place.Kind == PlaceKind.Pallet).Where((_, i) => i % 20 == 9).Take(3)).Select(p => (Draft)new Measure(
            p.Place.Code, p.Place.Code, p.PackedAt, Property.Protein, LabBench.Round(truth.Flours.Last(f => f.Unit == 'A' && f.At <= p.PackedAt - Duration.FromMinutes(Rules.LagMinutes)).Protein + dice.Normal(0, 0.05), 2), "%", Basis.At14, "combustion", "N-1", 0.05m)).ToArray();
        mill.Record(drafts, Second, "laboratory, retained samples", MillCalendar.At(new LocalDate(2025, 10, 10), 15));
    }

    private static bool IsShifted(SeenLot seen) => seen.Readings.Any(r => r is { What: Property.Protein, Instrument: "NIR-2" } && Incidents.NirShift(r.At) > 0);

    // A lot is judged when its shift is over, by what was read by then; one that the figures do not release waits.
    private static IEnumerable<LotDecision> Decisions(SeenLot seen)
    {
        var first = seen.Lot.Until + Duration.FromMinutes(40);
        if (seen.Judged is null || first > MillCalendar.OpeningMoment)
        {
            yield break;
        }

        var then = LotJudge.Of(seen.Judged.Specification, Rules.Policy).Results([.. seen.Readings.Where(r => r.At <= first && seen.Lot.Packages.All(p => p.Place.Id != r.On))]);
        LotDecision On(IReadOnlyList<LotResult> results, LotVerdict verdict, string by, Instant when, string reason) =>
            new(seen.Lot.Code, verdict, by, when, reason) { Specification = seen.Judged.Title, Results = [.. results.Select(DecidedResult.Of)] };
        var isShifted = IsShifted(seen);
        if (first < Found || !isShifted)
        {
            if (ReleaseAdvice.Of([.. then.Select(r => r.Advice).OfType<ReleaseAdvice>()]) is ReleaseAdvice.Release)
            {
                yield return On(then, LotVerdict.Release, Second, first, "");
            }
            else if (!isShifted && then.All(r => r.Outcome is { Chance: > 0.8 }))
            {
                yield return On(then, LotVerdict.Release, Chief, first, "near a limit; the customer takes it");
            }
        }

        if (isShifted)
        {
            yield return On(then, LotVerdict.Hold, Chief, Instant.Max(first, Found), "flour NIR read protein 0.28 too high: judge again by the reference");
            yield return On(seen.Results, LotVerdict.Release, Chief, Again, "judged again by the reference, from retained samples");
        }
    }

    private static Specification Of(string flour, string name, params IReadOnlyList<SpecificationItem> items) => new(flour, flour, items) { Name = name, Market = flour == "C2" ? "" : "US", ValidFrom = MillCalendar.FirstDay };

    private static Specification For(string code, string flour, string customer, double protein, params IReadOnlyList<SpecificationItem> items) => new(code, flour,
        [.. items.Select(i => i with { Source = Agreed, Customer = i.What == Property.Protein ? new CustomerLaboratory(protein) : i.What == Property.Ash ? new CustomerLaboratory(0.015) : new CustomerLaboratory(0.15) })])
    {
        Customer = customer, Market = "US", ValidFrom = MillCalendar.FirstDay, Name = flour switch { "WB" => "White bread, patent", "AP" => "All-purpose", "HG" => "High gluten", _ => "Pastry, of soft wheat" },
    };

    private static SpecificationItem Band(decimal least, decimal most, decimal target) => new(Property.Protein, "%", House) { Basis = Basis.At14, Lower = least, Upper = most, Target = target, LotSpread = 0.04, BiasPart = 0.03 };

    private static SpecificationItem Ash(decimal most) => new(Property.Ash, "%", House) { Basis = Basis.At14, Upper = most, LotSpread = 0.004, BiasPart = 0.002 };

    private static SpecificationItem Moist(decimal most) => new(Property.Moisture, "%", House) { Upper = most, LotSpread = 0.05, BiasPart = 0.05 };
}
