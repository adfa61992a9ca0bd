using Evengrist.Milling.Learning;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Solving;
using Evengrist.Milling.Stock;

namespace Evengrist.Demo;

/// <summary>The demonstration mill as it truly mills, which nobody sees: gauges, cloths and air are off by what a mill's are, rolls break otherwise than the model's defaults, and the wheat's parts are not quite the usual ones. Its tests are all that shows.</summary>
public sealed class HiddenMill
{
    private readonly Dictionary<string, double> gap = new(StringComparer.Ordinal);
    private readonly Dictionary<(string, int), double> cloth = [];
    private readonly Dictionary<string, double> air = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Passage, int Outlet), double> torn = [];
    private readonly double[] ash;
    private readonly MillParameters parameters;
    private readonly Dice dice;

    /// <summary>A mill of a flow sheet.</summary>
    /// <param name="sheet">The flow sheet as the miller believes it.</param>
    /// <param name="seed">What the dice start from.</param>
    public HiddenMill(FlowSheet sheet, ulong seed)
    {
        dice = new Dice(seed, "hidden mill");
        foreach (var passage in sheet.Passages)
        {
            gap[passage.Code] = Spread(0.12);
            air[passage.Code] = Spread(0.08);
            for (var i = 0; i < passage.Cloths.Count; i++)
            {
                cloth[(passage.Code, i)] = Spread(0.03);
            }
        }

        ash = [.. Enumerable.Range(0, MillWheat.PartCount).Select(_ => Spread(0.08))];
        var usual = MillParameters.Default;
        parameters = usual with
        {
            NipExponent = usual.NipExponent * Spread(0.08), FlutedNip = usual.FlutedNip * Spread(0.12), SmoothNip = usual.SmoothNip * Spread(0.12),
            FlutedEase = [.. usual.FlutedEase.Select(e => e * Spread(0.08))], SmoothEase = [.. usual.SmoothEase.Select(e => e * Spread(0.08))],
            FlutedEndosperm = usual.FlutedEndosperm with { M1 = usual.FlutedEndosperm.M1 * Spread(0.06), N1 = usual.FlutedEndosperm.N1 * Spread(0.06) },
            SmoothEndosperm = usual.SmoothEndosperm with { Gamma = usual.SmoothEndosperm.Gamma * Spread(0.05) },
            ClothSharpness = 1 + ((usual.ClothSharpness - 1) * Spread(0.15)), CarryOver = usual.CarryOver * Spread(0.3), FlakeOnCloth = usual.FlakeOnCloth * Spread(0.04),
            PurifierSharpness = usual.PurifierSharpness * Spread(0.1), RollLoadExponent = usual.RollLoadExponent * Spread(0.15), Evaporation = usual.Evaporation * Spread(0.15),
        };
    }

    /// <summary>What the mill truly does at settings and with a wheat.</summary>
    public MillSolution Truth(FlowSheet sheet, MillWheat wheat)
    {
        var run = new MillRun(MillModel.Of(True(sheet), wheat with { Parts = [.. wheat.Parts.Select((p, i) => p with { AshPercentDry = p.AshPercentDry * ash[i] })] }, parameters));
        foreach (var ((passage, outlet), share) in torn)
        {
            run.Tear(passage, outlet, share);
        }

        return run.Read();
    }

    /// <summary>Rolls of a passage wear: they mill as if their gap were wider by a share, with nothing written down.</summary>
    public void Wear(string passage, double share) => gap[passage] *= 1 + share;

    /// <summary>A cloth tears: a share of what would stay over it falls through.</summary>
    public void Tear(string passage, int outlet, double share) => torn[(passage, outlet)] = share;

    /// <summary>A survey of every product, each figure with the error of its measuring, and release tests of given passages.</summary>
    public MillTest Test(string name, FlowSheet sheet, MillWheat wheat, params IReadOnlyList<string> releases)
    {
        var (truth, errors) = (Truth(sheet, wheat), TestErrors.Usual);
        var wheatAsh = wheat.Parts.Select((p, i) => p.Share * p.AshPercentDry * ash[i]).Sum();
        var read = wheat with { Parts = [.. wheat.Parts.Select(p => p with { AshPercentDry = p.AshPercentDry * (wheatAsh + (errors.WheatAshPoints * dice.Normal(0, 1))) / wheat.AshPercentDry })] };
        return new MillTest(name, sheet, read)
        {
            Streams = [.. truth.Products.Where(p => p.YieldPercent > 0.01).Select(p => new StreamReading(
                p.Product.Code, Math.Max(0.01, (p.YieldPercent * (1 + (errors.YieldShare * dice.Normal(0, 1)))) + (errors.YieldPoints * dice.Normal(0, 1))),
                p.Flow.AshPercentDry + (errors.AshPoints * dice.Normal(0, 1)), p.Flow.ProteinPercentDry + (errors.ProteinPoints * dice.Normal(0, 1))))],
            Releases = [.. releases.Select(r => new ReleaseReading(r, truth.Passage(r).ReleasePercent!.Value + (errors.ReleasePoints * dice.Normal(0, 1))))],
        };
    }

    private FlowSheet True(FlowSheet sheet) => sheet with
    {
        Passages = [.. sheet.Passages.Select(p => p with
        {
            Rolls = p.Rolls is { } rolls ? rolls with { GapMicrometres = rolls.GapMicrometres * gap[p.Code] } : null,
            AirMetresPerSecond = p.AirMetresPerSecond * air[p.Code],
            Cloths = [.. p.Cloths.Select((c, i) => c with { ApertureMicrometres = Math.Min(4000, c.ApertureMicrometres * cloth[(p.Code, i)]) })],
        })],
    };

    private double Spread(double share) => Math.Exp(share * dice.Normal(0, 1));
}
