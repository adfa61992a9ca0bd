using Evengrist.Ledger;

namespace Evengrist.Intake.Grading;

/// <summary>The grade table of 7 CFR 810.2204, 2015 edition.</summary>
/// <remarks>A proposed rule of 2012 printed shrunken and broken as 2.0 and 4.0 for the first two grades; the text in force has 3.0 and 5.0.</remarks>
internal static class UsWheatFactors
{
    private const string Source = "7 CFR 810.2204, 2015 edition";
    private static readonly string[] Light = [UsWheatClasses.HardRedSpring, UsWheatClasses.WhiteClub];

    public static IReadOnlyList<GradeFactor> All { get; } =
    [
        TestWeight(58m, 57m, 55m, 53m, 50m) with { Only = Light },
        TestWeight(60m, 58m, 56m, 54m, 51m) with { Except = Light },
        Percent("heat-damaged kernels", Property.HeatDamaged, SampleBasis.DoublyClean, 0.2m, 0.2m, 0.5m, 1m, 3m) with { PartOf = Property.Damaged, Portion = "50 g, from memory" },
        Percent("damaged kernels, total", Property.Damaged, SampleBasis.DoublyClean, 2m, 4m, 7m, 10m, 15m) with { Portion = "15 g, from memory" },
        Percent("foreign material", Property.ForeignMaterial, SampleBasis.DoublyClean, 0.4m, 0.7m, 1.3m, 3m, 5m) with { Portion = "30 g, a farm-press article" },
        Percent("shrunken and broken", Property.ShrunkenAndBroken, SampleBasis.DockageFree, 3m, 5m, 8m, 12m, 20m) with { Portion = "250 g, from memory" },
        Percent("total defects", Property.None, SampleBasis.DoublyClean, 3m, 5m, 8m, 12m, 20m) with
        {
            SumOf = [Property.Damaged, Property.ForeignMaterial, Property.ShrunkenAndBroken], Note = "A straight sum, although the bases of its parts differ.",
        },
        Percent("contrasting classes", Property.ContrastingClasses, SampleBasis.DoublyClean, 1m, 2m, 3m, 10m, 10m) with { PartOf = Property.OtherClasses, NotInMixed = true, Except = [UsWheatClasses.Unclassed], Portion = "15 g, from memory" },
        Percent("wheat of other classes, total", Property.OtherClasses, SampleBasis.DoublyClean, 3m, 5m, 10m, 10m, 10m) with { NotInMixed = true, Except = [UsWheatClasses.Unclassed], Portion = "15 g, from memory" },
        Percent("wheat of other classes, total", Property.OtherClasses, SampleBasis.DoublyClean, 10m, 10m, 10m, 10m, 10m) with { Only = [UsWheatClasses.Unclassed], Note = "In unclassed wheat 10.0 % at any grade." },
        Percent("stones by mass", Property.Stones, SampleBasis.DockageFree, 0.1m, 0.1m, 0.1m, 0.1m, 0.1m),
        Count("animal filth", 1, Property.AnimalFilth),
        Count("castor beans", 1, Property.CastorBeans),
        Count("crotalaria seeds", 2, Property.CrotalariaSeeds),
        Count("glass", 0, Property.Glass),
        Count("stones by count", 3, Property.StoneCount),
        Count("unknown foreign substances", 3, Property.UnknownForeignSubstances),
        Count("all counted material together", 4, Property.None) with
        {
            SumOf = [Property.AnimalFilth, Property.CastorBeans, Property.CrotalariaSeeds, Property.Glass, Property.StoneCount, Property.UnknownForeignSubstances],
        },
        Count("insect-damaged kernels", 31, Property.InsectDamagedKernels) with { Unit = "/100 g", Portion = "100 g" },
    ];

    private static GradeFactor TestWeight(params decimal[] limits) => new()
    {
        Words = "test weight", What = Property.TestWeight, Unit = "lb/bu", Decimals = 1, AtLeast = true, Basis = SampleBasis.DockageFree, Limits = Row(limits), Source = Source,
    };

    private static GradeFactor Percent(string words, Property what, SampleBasis basis, params decimal[] limits) => new()
    {
        Words = words, What = what, Unit = "%", Decimals = 1, Basis = basis, Limits = Row(limits), Source = Source,
    };

    private static GradeFactor Count(string words, decimal most, Property what) => new()
    {
        Words = words, What = what, Unit = "/kg", Decimals = 0, Basis = SampleBasis.DockageFree, Limits = Row(most, most, most, most, most), Source = Source, Portion = "1,000 g",
    };

    private static GradeLimit[] Row(params decimal[] limits) => [.. limits.Select(l => new GradeLimit(l))];
}
