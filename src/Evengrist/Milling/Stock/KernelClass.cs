namespace Evengrist.Milling.Stock;

/// <summary>Kernels of one size and hardness in the wheat to first break; each breaks independently of the others [read: abstract of the moisture work].</summary>
/// <param name="Share">Share of the wheat's dry matter; above 0, all together 1.</param>
/// <param name="ThicknessMillimetres">Thickness of the kernel, mm; 1.5 to 4.5.</param>
/// <param name="Hardness">Single-kernel hardness index; −20 to 120, soft about 25, hard about 65.</param>
public sealed record KernelClass(double Share, double ThicknessMillimetres, double Hardness);
