namespace Evengrist.Streams.Additions;

/// <summary>What a feeder has to give, and what it gave. Page: docs/model/additions.md.</summary>
/// <remarks>1 ppm = 1 mg/kg = 1 g/t = 0.1 g in 100 kg.</remarks>
public static class Feeder
{
    /// <summary>Grams a minute for a dose: dose · flow / 60.</summary>
    /// <param name="gramsPerTonne">Dose, g in a tonne of flour.</param>
    /// <param name="flourTonnesPerHour">Flour, t/h.</param>
    public static double GramsPerMinute(double gramsPerTonne, double flourTonnesPerHour) => gramsPerTonne * flourTonnesPerHour / 60;

    /// <summary>Grams of a premix in a tonne that bring so much of what is in it: need / content.</summary>
    /// <param name="need">Wanted less what the flour has of its own, mg/kg.</param>
    /// <param name="contentPercent">What of the premix it is, per cent, above 0 to 100.</param>
    public static double PremixGramsPerTonne(double need, double contentPercent) => Math.Max(0, need) / (contentPercent / 100);

    /// <summary>Flour that ran while a feeder stood.</summary>
    /// <param name="minutes">How long, minutes.</param>
    /// <param name="flourTonnesPerHour">Flour, t/h.</param>
    public static double TonnesWithout(double minutes, double flourTonnesPerHour) => flourTonnesPerHour * minutes / 60;
}
