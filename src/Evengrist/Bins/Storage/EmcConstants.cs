namespace Evengrist.Bins.Storage;

/// <summary>The constants of one equation for one wheat, with what is known of them.</summary>
/// <param name="Wheat">The wheat: <c>hard</c>, <c>soft</c>, <c>durum</c>, <c>hard red spring</c> or one of the mill's own.</param>
/// <param name="Form">The equation.</param>
/// <param name="A">First constant (Henderson: K).</param>
/// <param name="B">Second constant (Henderson: N).</param>
/// <param name="C">Third constant; °C where it is added to the temperature.</param>
/// <param name="Mark">How far they have been checked.</param>
/// <param name="Source">Where they come from and what they were checked against.</param>
public sealed record EmcConstants(string Wheat, EmcForm Form, double A, double B, double C, ConstantMark Mark, string Source)
{
    // Every row of the tables that were at hand lies between 13 and 16 % of dry matter at 15 to 25 °C and 60 %; less than half and half as much again is taken for wheat. [design]
    private const double PosedCelsius = 20, PosedHumidity = 0.6, LeastPosed = 6, MostPosed = 25;

    /// <summary>The least temperature the equation is meant for, °C; from memory.</summary>
    public double LeastCelsius { get; init; } = 10;

    /// <summary>The greatest temperature the equation is meant for, °C; from memory.</summary>
    public double MostCelsius { get; init; } = 45;

    /// <summary>The least humidity the equation is meant for, as a fraction; from memory.</summary>
    public double LeastHumidity { get; init; } = 0.2;

    /// <summary>The greatest humidity the equation is meant for, as a fraction; from memory.</summary>
    public double MostHumidity { get; init; } = 0.9;

    /// <summary>What is wrong with the constants, each a sentence; empty where nothing is.</summary>
    public IEnumerable<string> Faults()
    {
        if (string.IsNullOrWhiteSpace(Wheat) || string.IsNullOrWhiteSpace(Source))
        {
            yield return "Constants name their wheat and their source.";
        }

        if (!EmcWords.All.Contains(Form))
        {
            yield return $"{Wheat}: the form is one of {string.Join(", ", EmcWords.All)}.";
        }

        if (Mark is ConstantMark.None)
        {
            yield return $"{Wheat}, {Form}: say how far the constants were checked: Unverified, Rough or Read.";
        }

        var usable = true;
        if (!(double.IsFinite(A) && double.IsFinite(B) && double.IsFinite(C)) || (Form is EmcForm.Henderson or EmcForm.ChungPfost && !(A > 0 && B > 0)) || (Form is EmcForm.Oswin or EmcForm.Halsey && !(C > 0)))
        {
            usable = false;
            yield return $"{Wheat}, {Form}: A and B of Henderson and Chung-Pfost, and C of Oswin and Halsey, lie above 0.";
        }

        if (!(LeastCelsius < MostCelsius) || !(LeastHumidity is >= 0 and < 1) || !(MostHumidity is > 0 and <= 1) || !(LeastHumidity < MostHumidity))
        {
            usable = false;
            yield return $"{Wheat}, {Form}: a range runs from its least to its most; humidity is a fraction from 0 to 1.";
        }

        if (usable && EmcWords.All.Contains(Form) && EquilibriumModel.PercentDry(this, PosedCelsius, PosedHumidity) is var dry && !(dry is >= LeastPosed and <= MostPosed))
        {
            yield return FormattableString.Invariant(
                $"{Wheat}, {Form}: with these constants wheat in air of {PosedCelsius} °C and {100 * PosedHumidity:0} % would come to {(dry > 100 ? "more than 100" : dry.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture))} % of its dry matter, and wheat comes to {LeastPosed} to {MostPosed} %. Look A, B and C up again.");
        }
    }
}
