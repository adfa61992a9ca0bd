using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake;

/// <content>
/// A local elevator's wheat premium and discount schedule, effective 24 June 2013, red and white wheat, US dollars a bushel, as printed. Not read to its end:
/// scab and insect damage are not here, and below 53.0 lb/bu, above 5.0 % heat damage and above 50 smut balls the rule in its head goes on where it has one.
/// "Subject to rejection" (damage above 7.0 %, heat above 2.0 %) is the elevator's choice and no limit here.
/// </content>
public static partial class ReferenceScales
{
    private const string Local = "a local wheat schedule effective 24 June 2013 (aghost.net/images/e0235302/discountw_DNK.htm)";

    /// <summary>Test weight: two cents for each half pound begun below 58.0 lb/bu, four below 56.0.</summary>
    public static ContractScale LocalTestWeight { get; } = Price("LOCAL-TW", Property.TestWeight, "lb/bu", StepRounding.Floor, [new(53.0m, -0.32m)]) with
    {
        Tiers = [new(56.0m, 0.5m, 0.04m), new(58.0m, 0.5m, 0.02m)],
        Below = new Beyond(BeyondRule.PerStep, 0.04m, 0.5m),
        Above = Beyond.Holds,
    };

    /// <summary>Moisture, on the price: nothing to 15.0 %, then two cents for each half point begun to 20.0, five above.</summary>
    public static ContractScale LocalMoisture { get; } = Price("LOCAL-MOISTURE", Property.Moisture, "%", StepRounding.Begun, [new(15.0m, 0m)]) with
    {
        Line = "moisture discount",
        Tiers = [new(20.0m, 0.5m, -0.02m)],
        Below = Beyond.Holds,
        Above = new Beyond(BeyondRule.PerStep, -0.05m, 0.5m),
    };

    /// <summary>Moisture, on the mass: commercial shrink of 1.4 % for each point above 13.5 %, a tenth of a point counting a tenth of it.</summary>
    /// <remarks>1.4 % is printed; the base of 13.5 % is read off the first band of the table, and that parts of a point count is by design.</remarks>
    public static ContractScale LocalShrink { get; } = new()
    {
        Code = "LOCAL-SHRINK",
        Version = 1,
        Line = "commercial shrink",
        Factor = Property.Moisture,
        Unit = "%",
        RecordedDecimals = 1,
        Effect = ScaleEffect.MultipliesMass,
        Steps = [new(13.5m, 0m)],
        Below = Beyond.Holds,
        Above = new Beyond(BeyondRule.PerStep, -0.14m, 0.1m),
        Source = Local,
    };

    /// <summary>Damaged kernels: nothing to 4.0 %, two cents for each per cent begun to 7.0, four above.</summary>
    public static ContractScale LocalDamage { get; } = Begun("LOCAL-DAMAGE", Property.Damaged, 4.0m) with
    {
        Tiers = [new(7.0m, 1m, -0.02m)],
        Above = new Beyond(BeyondRule.PerStep, -0.04m, 1m),
    };

    /// <summary>Heat-damaged kernels, beside the damage discount: nothing to 0.2 %, four cents to 1.0 and for each per cent begun from there to 5.0.</summary>
    public static ContractScale LocalHeat { get; } = Begun("LOCAL-HEAT", Property.HeatDamaged, 0.2m) with { Tiers = [new(1.0m, 0.8m, -0.04m), new(5.0m, 1m, -0.04m)] };

    /// <summary>Wheat of other classes: three cents for each per cent begun above 5.0.</summary>
    public static ContractScale LocalOtherClasses { get; } = Begun("LOCAL-WOC", Property.OtherClasses, 5.0m) with { Above = new Beyond(BeyondRule.PerStep, -0.03m, 1m) };

    /// <summary>Smut balls in 250 g: five cents from 5, ten more from 11 and for each ten after, twenty for each ten above 50.</summary>
    public static ContractScale LocalSmut { get; } = Price("LOCAL-SMUT", Property.SmutBalls, "/250 g", StepRounding.Floor,
        [new(0m, 0m), new(5m, -0.05m), new(11m, -0.15m), new(21m, -0.25m), new(31m, -0.35m), new(41m, -0.45m)]) with
    {
        RecordedDecimals = 0,
        Above = new Beyond(BeyondRule.PerStep, -0.20m, 10m),
        NotReadCountsAs = 0m,
    };

    /// <summary>Live weevils: such wheat is not taken.</summary>
    public static ContractScale LocalWeevils { get; } = Price("LOCAL-WEEVIL", Property.LiveWeevils, "/sample", StepRounding.Floor, [new(0m, 0m)]) with
    {
        RecordedDecimals = 0,
        RejectAbove = 0m,
        NotReadCountsAs = 0m,
    };

    /// <summary>Musty, sour, or another objectionable odour: at least ten cents; here the least.</summary>
    public static IReadOnlyList<ObservedCharge> LocalObserved { get; } = [new("musty", -0.10m), new("sour", -0.10m), new("objectionable odour", -0.10m)];

    /// <summary>Every scale of the local schedule.</summary>
    public static IReadOnlyList<ContractScale> LocalSchedule { get; } = [LocalTestWeight, LocalMoisture, LocalShrink, LocalDamage, LocalHeat, LocalOtherClasses, LocalSmut, LocalWeevils];

    private static ContractScale Begun(string code, Property factor, decimal free) => Price(code, factor, "%", StepRounding.Begun, [new(free, 0m)]) with
    {
        Below = Beyond.Holds,
        NotReadCountsAs = 0m,
    };

    private static ContractScale Price(string code, Property factor, string unit, StepRounding rounding, IReadOnlyList<ScaleStep> steps) => new()
    {
        Code = code,
        Version = 1,
        Factor = factor,
        Unit = unit,
        RecordedDecimals = 1,
        Effect = ScaleEffect.AddsToPrice,
        Currency = "USD",
        Per = PriceUnit.Bushel,
        Steps = steps,
        Rounding = rounding,
        Source = Local,
    };
}
