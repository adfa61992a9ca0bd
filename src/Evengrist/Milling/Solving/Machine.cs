using Evengrist.Milling.Grinding;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Sifting;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Solving;

/// <summary>A passage made ready: what of each part and size its rolls would break, and what each outlet would let leave, before load and knobs.</summary>
internal sealed class Machine
{
    private static readonly double[] Nothing = [];

    private Machine(Passage passage) => Passage = passage;

    public Passage Passage { get; }

    /// <summary>By part and size: odds that a piece breaks in one step; empty where nothing grinds.</summary>
    public double[] Odds { get; private init; } = Nothing;

    /// <summary>How many steps of breaking.</summary>
    public int Steps { get; private init; }

    /// <summary>Share of what breaks that is pressed into a flake of the size it had.</summary>
    public double Flaked { get; private init; }

    /// <summary>Pieces of endosperm; null where nothing grinds.</summary>
    public Children? Endosperm { get; private init; }

    /// <summary>Pieces of bran and germ.</summary>
    public Children? Bran { get; private init; }

    /// <summary>Dry matter the rolls' figures hold for, t/h; 0 where load has no effect.</summary>
    public double RollLoad { get; private init; }

    /// <summary>Dry matter the cloths' figures hold for, t/h.</summary>
    public double ClothLoad { get; private init; }

    /// <summary>By part and size: (v/v₅₀)^k of a piece and of a flake in a purifier's air; empty where there is none.</summary>
    public double[] Falls { get; private init; } = Nothing;

    /// <summary>Of each cloth, at three points of each class: (d/d₅₀)^k of a piece, then of a flake.</summary>
    public IReadOnlyList<double[]> Stays { get; private init; } = [];

    public static Machine Of(Passage passage, MillParameters parameters, SizeClasses classes, MillChildren children, double branEase)
    {
        var n = classes.Count;
        var rolls = passage.Rolls;
        var fluted = rolls is { IsFluted: true };
        return new Machine(passage)
        {
            Odds = rolls is not null ? RollOdds(rolls, parameters, classes, branEase) : passage.Kind is PassageKind.Finishing ? FinisherOdds(parameters, n) : Nothing,
            Steps = rolls is not null ? 2 : passage.Kind is PassageKind.Finishing ? 1 : 0,
            Flaked = rolls is { IsFluted: false } ? passage.Detacher ? parameters.FlakedBehindDetacher : parameters.Flaked : 0,
            Endosperm = rolls is null ? passage.Kind is PassageKind.Finishing ? children.Finisher : null : fluted ? children.FlutedEndosperm : children.SmoothEndosperm,
            Bran = rolls is null ? passage.Kind is PassageKind.Finishing ? children.Finisher : null : fluted ? children.FlutedBran : children.SmoothBran,
            RollLoad = rolls is null ? 0 : rolls.LengthMillimetres / 10 * PerCentimetre(passage.Kind) / 24_000,
            ClothLoad = passage.ClothSquareMetres * parameters.ClothLoad,
            Falls = passage.AirMetresPerSecond is { } air ? Fall(air, parameters, classes) : Nothing,
            Stays = [.. passage.Cloths.Select(c => Stay(c.ApertureMicrometres, parameters, classes))],
        };
    }

    // Load of rolls, kg/(cm·24 h) [memory, low confidence]: first breaks 800 to 1200, head reductions 150 to 250, tails 100 to 150; the values between are ours.
    private static double PerCentimetre(PassageKind kind) => kind switch { PassageKind.Break => 600, PassageKind.Sizing => 300, _ => 180 };

    private static double[] RollOdds(RollPair rolls, MillParameters parameters, SizeClasses classes, double branEase)
    {
        var (nip, ease) = rolls.IsFluted ? (parameters.FlutedNip, parameters.FlutedEase) : (parameters.SmoothNip, parameters.SmoothEase);
        var odds = new double[MillWheat.PartCount * classes.Count];
        for (var k = 0; k < odds.Length; k++)
        {
            var (part, size) = (k / classes.Count, k % classes.Count);
            odds[k] = ease[part] * (part == (int)KernelPart.Bran ? branEase : 1) * Math.Pow(nip * classes.Middle(size) / rolls.GapMicrometres, parameters.NipExponent);
        }

        return odds;
    }

    private static double[] FinisherOdds(MillParameters parameters, int n)
    {
        var odds = new double[MillWheat.PartCount * n];
        for (var k = 0; k < odds.Length; k++)
        {
            var share = (KernelPart)(k / n) switch { KernelPart.Bran => parameters.FinisherBran, KernelPart.Germ => 0, _ => parameters.FinisherStrips };
            odds[k] = share / (1 - share);
        }

        return odds;
    }

    private static double[] Fall(double air, MillParameters parameters, SizeClasses classes)
    {
        var n = classes.Count;
        var falls = new double[2 * n];
        for (var i = 0; i < n; i++)
        {
            // A flake of bran is no thicker than a tenth of its size, and no thicker than 100 µm [memory].
            falls[i] = Math.Pow(TerminalVelocity.Round(classes.Middle(i), 1450) / air, parameters.PurifierSharpness);
            falls[n + i] = Math.Pow(TerminalVelocity.Flake(Math.Min(100, classes.Middle(i) / 10), 1250) / air, parameters.PurifierSharpness);
        }

        return falls;
    }

    // Point by point, a piece of each class and then a flake of each: (d/d₅₀)^k.
    private static double[] Stay(double aperture, MillParameters parameters, SizeClasses classes)
    {
        var n = classes.Count;
        var (half, exponent, flake) = (Math.Log(aperture * parameters.HalfOverAperture), PartitionCurve.LogisticExponent(parameters.ClothSharpness), Math.Log(parameters.FlakeOnCloth));
        var stays = new double[6 * n];
        for (var i = 0; i < n; i++)
        {
            for (var point = 0; point < 3; point++)
            {
                var size = Math.Log(classes.Point(i, point)) - half;
                stays[(point * 2 * n) + i] = Math.Exp(exponent * size);
                stays[(point * 2 * n) + n + i] = Math.Exp(exponent * (size + flake));
            }
        }

        return stays;
    }
}
