using Evengrist.Milling.Grinding;

namespace Evengrist.Milling.Solving;

/// <summary>The constants of the mill model that no flow sheet tells. Every default is ours and not tuned unless it says otherwise: chosen so that the invented hard wheat unit of the demonstration mills near its invented survey.</summary>
public sealed record MillParameters
{
    /// <summary>The defaults.</summary>
    public static MillParameters Default { get; } = new();

    /// <summary>How sharply breaking sets in as a piece grows thicker than the gap: the exponent q of w = (κ d / G)^q, broken share w/(1 + w).</summary>
    public double NipExponent { get; init; } = 2;

    /// <summary>κ of fluted rolls: thickness a piece has to the rolls for its size, many of the pieces being flakes.</summary>
    public double FlutedNip { get; init; } = 0.22;

    /// <summary>κ of smooth rolls.</summary>
    public double SmoothNip { get; init; } = 0.31;

    /// <summary>How readily each part breaks on fluted rolls, of <see cref="Stock.KernelPart"/>: the outer shell clings, bran is tough.</summary>
    public IReadOnlyList<double> FlutedEase { get; init; } = [2.0, 1.0, 0.13, 0.23, 0.27];

    /// <summary>How readily each part breaks on smooth rolls: bran and germ flatten.</summary>
    public IReadOnlyList<double> SmoothEase { get; init; } = [1.05, 1.0, 0.91, 0.083, 0.076];

    /// <summary>Pieces of endosperm from fluted rolls.</summary>
    public Kumaraswamy FlutedEndosperm { get; init; } = new(0.80, 1.86, 3.6, 0.83, 1.2);

    /// <summary>Pieces of bran and germ from fluted rolls: most stay large, a little is powder.</summary>
    public Kumaraswamy FlutedBran { get; init; } = new(0.13, 1.6, 3.0, 1.62, 0.31);

    /// <summary>Pieces of endosperm from smooth rolls, at <see cref="ReferenceHardness"/>.</summary>
    public Austin SmoothEndosperm { get; init; } = new(0.88, 0.79, 4);

    /// <summary>Pieces of bran and germ from smooth rolls.</summary>
    public Austin SmoothBran { get; init; } = new(0.34, 0.93, 5);

    /// <summary>Hardness index at which the figures hold.</summary>
    public double ReferenceHardness { get; init; } = 65;

    /// <summary>How much more of the fine part soft endosperm gives, of each 10 points of hardness below the reference.</summary>
    public double FinePerTenSofter { get; init; } = 0.03;

    /// <summary>How much tougher bran is for each point of moisture above 16 %, as an exponent.</summary>
    public double BranTougherPerPoint { get; init; } = 0.12;

    /// <summary>Share of what smooth rolls break that is pressed into a flake again.</summary>
    public double Flaked { get; init; } = 0.25;

    /// <summary>The same behind a detacher.</summary>
    public double FlakedBehindDetacher { get; init; } = 0.07;

    /// <summary>By what power breaking eases as a roll is fed more than the reference load.</summary>
    public double RollLoadExponent { get; init; } = 0.25;

    /// <summary>Size of which half stays on a cloth, over its aperture [memory: 0.85 to 0.95].</summary>
    public double HalfOverAperture { get; init; } = 0.90;

    /// <summary>Ratio of the sizes of which three and one quarters stay on a cloth.</summary>
    public double ClothSharpness { get; init; } = 1.25;

    /// <summary>How much larger than it is a flake behaves on a cloth.</summary>
    public double FlakeOnCloth { get; init; } = 1.48;

    /// <summary>Fines carried over a cloth at the reference load.</summary>
    public double CarryOver { get; init; } = 0.02;

    /// <summary>Load of cloth the figures hold for, t/h of dry matter for each m².</summary>
    public double ClothLoad { get; init; } = 0.5;

    /// <summary>By what power the size that passes falls with the load.</summary>
    public double ClothLoadExponent { get; init; } = 0.04;

    /// <summary>Share of each part of the endosperm and germ that clings to bran and goes where it goes, at 1000 µm and above; less in proportion to the size below.</summary>
    public IReadOnlyList<double> Clings { get; init; } = [0.05, 0.08, 0.69, 1, 0.10];

    /// <summary>How sharply a purifier's air divides by terminal velocity.</summary>
    public double PurifierSharpness { get; init; } = 5;

    /// <summary>Share of the endosperm on bran a finisher strips in one pass.</summary>
    public double FinisherStrips { get; init; } = 0.32;

    /// <summary>Share of bran a finisher beats to fine.</summary>
    public double FinisherBran { get; init; } = 0.022;

    /// <summary>What a finisher strips, by the share of the parent's size it is finer than.</summary>
    public Austin FinisherPieces { get; init; } = new(1, 0.37, 1);

    /// <summary>Water lost in each passage and its lift, share of the water that enters it.</summary>
    public double Evaporation { get; init; } = 0.012;

    /// <summary>Starch damaged in endosperm as fluted rolls break it, share of what breaks.</summary>
    public double FlutedDamage { get; init; } = 0.012;

    /// <summary>Starch damaged in endosperm as smooth rolls break it, share of what breaks.</summary>
    public double SmoothDamage { get; init; } = 0.05;

    /// <summary>Work of rolls for each kilogram they break, kJ: fluted. By the order of memory figures for a passage.</summary>
    public double FlutedWork { get; init; } = 16;

    /// <summary>Work of rolls for each kilogram they break, kJ: smooth.</summary>
    public double SmoothWork { get; init; } = 35;
}
