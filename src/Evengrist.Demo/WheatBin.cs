using NodaTime;

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

    private readonly List<(Instant At, long Grams, double Protein, double Moisture)> coming = [];

    /// <summary>What lies in it now.</summary>
    public long Grams { get; private set; }

    public double Tonnes => Grams / Tonne;

    /// <summary>With the trucks of the day still to be tipped.</summary>
    public double Expected => Tonnes + (coming.Sum(c => c.Grams) / Tonne);

    public double FreeTonnes => capacityTonnes - Expected;

    /// <summary>Mean protein, per cent 12mb, and moisture, per cent.</summary>
    public double Protein { get; private set; }

    public double Moisture { get; private set; }

    /// <summary>Says that a truck will be tipped into it.</summary>
    public void Await(Instant at, long grams, double protein, double moisture) => coming.Add((at, grams, protein, moisture));

    /// <summary>Takes in what has been tipped up to a moment.</summary>
    public void Settle(Instant now)
    {
        foreach (var (_, grams, protein, moisture) in coming.Where(c => c.At <= now))
        {
            Fill(grams, protein, moisture);
        }

        coming.RemoveAll(c => c.At <= now);
    }

    public bool Awaits(Instant until) => coming.Any(c => c.At <= until);

    public void Fill(long grams, double protein, double moisture)
    {
        var part = grams / (double)(Grams + grams);
        Protein += (protein - Protein) * part;
        Moisture += (moisture - Moisture) * part;
        Grams += grams;
    }

    public void Draw(long grams) => Grams -= grams;
}
