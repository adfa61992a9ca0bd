using Evengrist.Laboratory.Calibration;

namespace Evengrist.Tests.Laboratory.Calibration;

/// <summary>Partial least squares against R 4.2.2, package pls 2.8-1, on open sets of spectra. References are printed to 4 or 5 decimals: the tolerance is one in the last.</summary>
public sealed class PlsReferenceTests
{
    public static TheoryData<string, string, double[], double[], double[]> Wheat => new()
    {
        {
            "protein", "raw",
            [1.05170, .75802, .73090, .72769, .70906, .67097, .65348, .60000, .55362, .51847, .51380, .51159],
            [1.05668, .76351, .73783, .73426, .70424, .66115, .63097, .58313, .54743, .51511, .50324, .50832],
            [.87266, .60942, .59026, .58416, .43688, .53502, .56750, .47780, .43373, .45478, .51919, .49920]
        },
        { "protein", "snv", [0, .81334, 0, .66314, 0, .62231, 0, .52620, 0, .47029, 0, .43120], [], [0, .68487, 0, .50601, 0, .50323, 0, .43024, 0, .46871, 0, .44948] },
        { "protein", "msc", [0, .81300, 0, .66263, 0, .61919, 0, .51733, 0, .45808, 0, .42173], [], [0, .68404, 0, .50287, 0, .50137, 0, .43170, 0, .48980, 0, .48179] },
        { "protein", "sg", [0, .71609, 0, .65272, 0, .58697, 0, .47954, 0, .42488, 0, .39548], [], [0, .58863, 0, .57399, 0, .34752, 0, .41320, 0, .41135, 0, .40004] },
        { "protein", "sgsnv", [0, .78670, 0, .63872, 0, .54059, 0, .38912, 0, .35523, 0, .32944], [], [0, .71476, 0, .49938, 0, .39247, 0, .36246, 0, .33431, 0, .28992] },
        { "moisture", "raw", [1.22023, 1.08922, .25229, .22767, .22370, .22467, 0, .23749], [1.22823, 1.10204, .25671, .23223, .22984, .23314, 0, .23543], [1.51574, 1.39142, .29802, .28180, .27910, .30536, 0, .31165] },
        { "moisture", "snv", [1.07986, .31014, .27776, .22034, .20720, .20459, 0, .20420], [1.09427, .31656, .28486, .22310, .21280, .20765, 0, .20889], [1.32869, .36130, .32586, .26924, .27991, .28116, 0, .25290] },
        { "moisture", "sgsnv", [1.00012, .36391, .27823, .21421, .20430, .19849, 0, .20081], [1.01404, .36321, .28109, .21401, .20807, .20257, 0, .20182], [1.19322, .41971, .32654, .27725, .24956, .23684, 0, .24772] },
    };

    // Ten segments in turn, one out at a time, and 25 of 100 kept back; the reference of the scatter correction is the mean of all 100, as in R there.
    [OpenDataTheory]
    [MemberData(nameof(Wheat))]
    public void Errors_OfTheWheatSet_AreThoseOfR(string property, string treatment, double[] inTen, double[] leftOut, double[] keptBack)
    {
        var set = NirSet.Wheat;
        var steps = Steps(treatment).Fitted(set.Spectra);
        var all = set.Spec(property, _ => true) with { Pretreatment = steps, MostFactors = 12 };
        Match(inTen, CalibrationModel.Of(all)!.Curve, e => e.CrossValidation);
        Match(leftOut, CalibrationModel.Of(all with { Parts = null })!.Curve, e => e.CrossValidation);
        var split = CalibrationModel.Of(set.Spec(property, i => i % 4 != 3, i => i % 4 == 3) with { Pretreatment = steps, MostFactors = 12 })!;
        Match(keptBack, split.Curve, e => e.Validation!.Value);
    }

    // What R prints of the raw spectra for protein.
    [OpenDataFact]
    public void Coefficients_OfTheWheatSet_AreThoseOfR()
    {
        var set = NirSet.Wheat;
        var all = CalibrationModel.Of(set.Spec("protein", _ => true))!;
        Match([1.02960, .73568, .70080, .69341, .61351, .56728, .50670, .43378, .40846, .37633, .35651, .33843], all.Curve, e => e.Calibration);
        Assert.Equal([95.266, 4.3437, .21254, .13754, .01447], Enumerable.Range(1, 5).Select(a => all.Curve[a].SpectraExplainedPercent - all.Curve[a - 1].SpectraExplainedPercent), new Within(5e-4));
        var factors = PlsFactors.Of(set.Spectra, set.Column("protein"), 12);
        Regression(factors, 1, 6.5376792, [.0071738716, .0142852051, .0069656478, .0040692140]);
        Regression(factors, 3, 16.1863663, [.0082462193, .2599509767, -.0862615213, -.3077930998]);
        Regression(factors, 8, -4.6459431, [-7.5561093, 5.1330860, -5.0090965, 12.4674169]);
        var eight = CalibrationModel.Of(set.Spec("protein", _ => true) with { Factors = 8 })!;
        Assert.Equal([12.545176, 10.050524, 9.811996, 11.119472, 10.085921], eight.Findings.Take(5).Select(f => f.Fitted), new Within(1e-6));
        Assert.Equal([.32846665, .67935608, .88667322, 1.09213345], Channels.Select(c => factors.Mean[set.Channel(c)]), new Within(1e-8));
    }

    [OpenDataFact]
    public void Calibration_OnThreeQuarters_IsThatOfR()
    {
        var set = NirSet.Wheat;
        var made = CalibrationModel.Of(set.Spec("protein", i => i % 4 != 3, i => i % 4 == 3) with { Factors = 9 })!;
        var (factors, c) = (PlsFactors.Of([.. set.Spectra.Where((_, i) => i % 4 != 3)], [.. set.Column("protein").Where((_, i) => i % 4 != 3)], 9), made.Calibration);
        Assert.Equal(11.4184, factors.MeanOfProperty, 1e-12);
        Assert.Equal([.0285798637, .0529049111, .0211655560, .0091134166], Channels.Select(at => factors.Weights[0][set.Channel(at)]), new Within(1e-9));
        Assert.Equal([.330799447, .017772919, 2.390054027, -2.009815587, -.276638351], factors.Scores[0].Take(5), new Within(1e-8));
        Assert.Equal(.30176944, factors.YLoadings[0], 1e-8);
        Assert.Equal(-7.2764810, c.Intercept, 1e-6);
        Assert.Equal([-13.8315760, 7.7582146, -5.0467805, 11.3622196], Channels.Select(at => c.Coefficients[set.Channel(at)]), new Within(1e-6));
        Assert.Equal([10.883517, 10.054083, 11.365759, 11.054339, 10.333690], made.Validation.Take(5).Select(v => v.Reading.Value), new Within(1e-6));
        // Leverage, global H and Q of the same calibration, and of samples it does not know.
        Assert.Equal(["9", "3", "5", "27", "7"], made.Findings.OrderByDescending(f => f.Leverage).Take(5).Select(f => f.Id));
        Assert.Equal([.414990, .392252, .366706, .351158, .273256], made.Findings.OrderByDescending(f => f.Leverage).Take(5).Select(f => f.Leverage), new Within(1e-6));
        Assert.Equal([3.41214, 3.22518, 3.01514, 2.88730, 2.24677], made.Findings.OrderByDescending(f => f.GlobalH).Take(5).Select(f => f.GlobalH), new Within(1e-5));
        Assert.Equal([.1235949, .1309807], made.Findings.Take(2).Select(f => f.Leverage), new Within(1e-7));
        Assert.Equal([.475540, .455477, .362386, .317012, .225567], new[] { "40", "100", "28", "12", "20" }.Select(id => made.Validation.Single(v => v.Id == id).Reading.Leverage), new Within(1e-6));
        Assert.Equal([2.06728e-4, 2.63196e-4, 3.74605e-4, 5.18228e-5, 3.80014e-4], made.Validation.Take(5).Select(v => v.Reading.Residual), new Within(1e-9));
    }

    // The example of the package's manual, and its other set.
    [OpenDataFact]
    public void Errors_OfGasolineAndYarn_AreThoseOfR()
    {
        var gasoline = CalibrationModel.Of(NirSet.Of("gasoline-nir.csv").Spec("octane", i => i < 50, i => i >= 50) with { MostFactors = 10, Factors = 2, Parts = null })!;
        Assert.Equal([1.545076, 1.356951, .296620, .252408, .247578, .239794, .231881, .238600, .231576, .244934, .267289], gasoline.Curve.Select(e => e.CrossValidation), new Within(1e-6));
        Assert.Equal([1.536901, 1.169597, .244483, .234108, .328684, .278033, .270318, .330136, .357109, .409006, .611641], gasoline.Curve.Select(e => e.Validation!.Value), new Within(1e-6));
        Assert.Equal([87.94125, 87.25242, 88.15832, 84.96913, 85.15396, 84.51415, 87.56190, 86.84622, 89.18925, 87.09116], gasoline.Validation.Select(v => v.Reading.Value), new Within(1e-5));
        var set = NirSet.Of("yarn-nir.csv");
        var train = set.Column("train");
        var yarn = CalibrationModel.Of(set.Spec("density", i => train[i] == 1, i => train[i] == 0) with { MostFactors = 8, Parts = null })!;
        Assert.Equal([31.311346, 5.355646, 4.753717, 2.186621, .907841, .573667, .522829, .354352, .298838], yarn.Curve.Select(e => e.CrossValidation), new Within(1e-6));
        Assert.Equal([11.674310, 2.142669, 2.181114, 1.289184, .434254, .286001, .187710, .110536, .115970], yarn.Curve.Select(e => e.Validation!.Value), new Within(1e-6));
    }

    [OpenDataTheory]
    [InlineData("flour", new[] { 2.3685, 1.9784, 1.2346, 1.1321, 1.0954, 1.1211, 1.2203, 1.2204 }, new[] { 2.39575, 4.30656, 1.06227, 1.37719, .87217, 1.31615, .70654, .82299 })]
    [InlineData("water", new[] { .99261, .80919, .37779, .35234, .32142, .30955, .28014, .26698 }, new[] { 1.11948, 1.65780, .46830, .76171, .58847, .51806, .38342, .35631 })]
    [InlineData("fat", new[] { 1.54178, 1.38487, .60685, .54530, .55120, .57842, .51157, .50749 }, new[] { 1.69030, 2.54896, 1.06736, 1.20610, 1.33205, .57317, .39683, .43223 })]
    public void Errors_OfBiscuitDough_AreThoseOfR(string property, double[] leftOut, double[] keptBack)
    {
        var set = NirSet.Of("biscuit-dough-nir.csv");
        bool Is(int i, string part, string outlier) => set.Lines[i]["set"] == part && set.Lines[i]["id"] != outlier;
        var made = CalibrationModel.Of(set.Spec(property, i => Is(i, "cal", "23"), i => Is(i, "pred", "21")) with { MostFactors = 8, Parts = null })!;
        Assert.Equal((39, 31), (made.Findings.Count, made.Validation.Count));
        Assert.Equal(leftOut, made.Curve.Skip(1).Select(e => e.CrossValidation), new Within(property == "flour" ? 1e-4 : 1e-5));
        Match(keptBack, made.Curve, e => e.Validation!.Value);
    }

    // R, selectNcomp with "onesigma", 0 factors among those looked at.
    [OpenDataTheory]
    [InlineData("wheat-nir.csv", "protein", 10, 9)]
    [InlineData("wheat-nir.csv", "protein", null, 9)]
    [InlineData("wheat-nir.csv", "moisture", 10, 4)]
    [InlineData("wheat-nir.csv", "moisture", null, 4)]
    public void Factors_WithinOneStandardError_AreThoseOfR(string file, string property, int? parts, int factors)
    {
        var made = CalibrationModel.Of(NirSet.Of(file).Spec(property, _ => true) with { Parts = parts })!;
        Assert.Equal(factors, made.Suggested[FactorChoice.OneStandardError]);
        Assert.Equal(factors, made.Calibration.Factors);
    }

    private static readonly double[] Channels = [1100, 1700, 2100, 2500];

    private static Pretreatment Steps(string name) => new(name switch
    {
        "snv" => [new StandardNormalVariate()],
        "msc" => [new ScatterCorrection()],
        "sg" => [new SavitzkyGolay(5, 2, 1)],
        "sgsnv" => [new SavitzkyGolay(5, 2, 1), new StandardNormalVariate()],
        _ => Array.Empty<PretreatmentStep>(),
    });

    private static void Regression(PlsFactors factors, int count, double intercept, double[] at)
    {
        var (found, b) = factors.Regression(count);
        Assert.Equal(intercept, found, 1e-6);
        Assert.Equal(at, Channels.Select(c => b[NirSet.Wheat.Channel(c)]), new Within(count < 8 ? 1e-9 : 1e-6));
    }

    // A 0 stands for a number of factors that was not printed.
    private static void Match(double[] expected, IReadOnlyList<FactorErrors> curve, Func<FactorErrors, double> error) =>
        Assert.All(expected.Index().Where(e => e.Item > 0), e => Assert.Equal(e.Item, error(curve[e.Index + 1]), 1e-5));

    private sealed class Within(double tolerance) : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) <= tolerance;

        public int GetHashCode(double obj) => 0;
    }
}
