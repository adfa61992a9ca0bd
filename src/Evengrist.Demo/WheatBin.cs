namespace Evengrist.Demo;

/// <summary>A wheat bin as the mill's people see it: what the ledger says it holds and the mean of what was measured on the way in.</summary>
internal sealed class WheatBin(string code, string material, long capacityTonnes, double coreShare, double planTonnes)
{
    public const double Tonne = 1e6;

    public string Code => code;

    public string Material => material;

    public long CapacityTonnes => capacityTonnes;

    public double CoreShare => coreShare;

    /// <summary>Stock planned for 15 September 2025 06:00, t.</summary>
    public double PlanTonnes => planTonnes;

    public long Grams { get; private set; }

    public double Tonnes => Grams / Tonne;

    public double FreeTonnes => capacityTonnes - Tonnes;

    /// <summary>Mean protein, per cent 12mb, and moisture, per cent.</summary>
    public double Protein { get; private set; }

    public double Moisture { get; private set; }

    public void Fill(long grams, double protein, double moisture)
    {
        var part = grams / (double)(Grams + grams);
        Protein += (protein - Protein) * part;
        Moisture += (moisture - Moisture) * part;
        Grams += grams;
    }

    public void Draw(long grams) => Grams -= grams;
}
