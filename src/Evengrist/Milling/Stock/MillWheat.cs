using System.Globalization;

namespace Evengrist.Milling.Stock;

/// <summary>The wheat that enters first break.</summary>
/// <param name="DryTonnesPerHour">Flow of dry matter, t/h; above 0, at most 1000.</param>
/// <param name="MoisturePercent">Moisture at first break, per cent wet basis; 10 to 20.</param>
/// <param name="Kernels">Its kernels by size and hardness.</param>
/// <param name="Parts">Its parts, in the order of <see cref="KernelPart"/>.</param>
public sealed record MillWheat(double DryTonnesPerHour, double MoisturePercent, IReadOnlyList<KernelClass> Kernels, IReadOnlyList<PartAssay> Parts)
{
    /// <summary>How many parts the kernel has.</summary>
    public const int PartCount = 5;

    /// <summary>Mean hardness index.</summary>
    public double Hardness => Kernels.Sum(k => k.Share * k.Hardness);

    /// <summary>Ash of the whole wheat, per cent of dry matter.</summary>
    public double AshPercentDry => Parts.Sum(p => p.Share * p.AshPercentDry);

    /// <summary>Protein of the whole wheat, per cent of dry matter.</summary>
    public double ProteinPercentDry => Parts.Sum(p => p.Share * p.ProteinPercentDry);

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        (bool Holds, string Otherwise)[] rules =
        [
            (DryTonnesPerHour is > 0 and <= 1000, "The wheat to first break lies above 0 and is at most 1000 t/h of dry matter."),
            (MoisturePercent is >= 10 and <= 20, "The moisture at first break lies from 10 to 20 %, wet basis."),
            (Parts.Count == PartCount, "A kernel has five parts: inner, middle and outer endosperm, bran with aleurone, germ."),
            (Parts.All(p => p is { Share: >= 0, AshPercentDry: >= 0 and <= 20, ProteinPercentDry: >= 0 and <= 60, Liquefaction: >= 0 }), "Each part has a share, ash (to 20 %), protein (to 60 %) and liquefaction number, none below 0."),
            (Math.Abs(Parts.Sum(p => p.Share) - 1) <= 1e-9, string.Create(CultureInfo.InvariantCulture, $"The parts of the kernel add up to {100 * Parts.Sum(p => p.Share):0.###} %: make them 100 %.")),
            (Kernels.Count > 0 && Kernels.All(k => k is { Share: > 0, ThicknessMillimetres: >= 1.5 and <= 4.5, Hardness: >= -20 and <= 120 }), "Kernels have a share above 0, a thickness of 1.5 to 4.5 mm and a hardness index of -20 to 120."),
            (Math.Abs(Kernels.Sum(k => k.Share) - 1) <= 1e-9, "The shares of the kernels by size and hardness add up to 1."),
        ];
        return [.. rules.Where(r => !r.Holds).Select(r => r.Otherwise)];
    }
}
