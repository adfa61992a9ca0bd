using Evengrist.Milling.Stock;
using Evengrist.Quantities;

namespace Evengrist.Milling.Learning;

/// <summary>Wheat at first break, posed.</summary>
/// <param name="TonnesPerHour">As it flows, t/h.</param>
/// <param name="MoisturePercent">Per cent wet basis.</param>
/// <param name="AshPercent">Of the whole wheat, on <paramref name="Basis"/>.</param>
/// <param name="ProteinPercent">Of the whole wheat, on <paramref name="Basis"/>.</param>
/// <param name="Basis">Moisture basis of ash and protein.</param>
public sealed record PosedWheat(double TonnesPerHour, double MoisturePercent, double AshPercent, double ProteinPercent, Basis Basis)
{
    /// <summary>Falling number, s.</summary>
    public double FallingNumber { get; init; } = 350;

    /// <summary>Single-kernel hardness index.</summary>
    public double Hardness { get; init; } = 65;

    /// <summary>Thickness of the kernel, mm.</summary>
    public double ThicknessMillimetres { get; init; } = 2.9;

    /// <summary>Bran with aleurone, per cent of dry matter.</summary>
    public double BranPercent { get; init; } = 15;

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        if (!Basis.IsStated)
        {
            return ["Ash and protein of the wheat need a moisture basis: dry, 12mb, 14mb or another."];
        }

        (bool Holds, string Otherwise)[] rules =
        [
            (TonnesPerHour is > 0 and <= 1000, "The wheat to first break flows at above 0 and at most 1000 t/h."),
            (AshPercent * Basis.ToDry is >= 1 and <= 3, "The ash of the wheat lies from 1 to 3 % of dry matter."),
            (ProteinPercent * Basis.ToDry is >= 5 and <= 25, "The protein of the wheat lies from 5 to 25 % of dry matter."),
            (FallingNumber is > 60 and <= 2000, "The falling number of the wheat lies above 60 and is at most 2000 s."),
            (BranPercent is >= 10 and <= 25, "Bran with aleurone is 10 to 25 % of the kernel's dry matter."),
        ];
        string[] own = [.. rules.Where(r => !r.Holds).Select(r => r.Otherwise)];
        return own.Length > 0 ? own : Of().Faults();
    }

    /// <summary>The wheat.</summary>
    public MillWheat Of() => new(
        TonnesPerHour * (1 - (MoisturePercent / 100)), MoisturePercent, [new KernelClass(1, ThicknessMillimetres, Hardness)],
        KernelMake.Of(AshPercent * Basis.ToDry, ProteinPercent * Basis.ToDry, FallingNumber, BranPercent / 100));
}
