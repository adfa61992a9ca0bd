using Evengrist.Ledger;

namespace Evengrist.Tracing.Structure;

/// <summary>A way of keeping lots apart, to be reckoned on paper. All masses in kilograms as they lie.</summary>
/// <param name="Trucks">Kilograms of each truck, in the order they came; 1 to 5000 of them, each above 0.</param>
public sealed record StructureSpec(IReadOnlyList<double> Trucks)
{
    /// <summary>Most trucks, and most lots, that are reckoned.</summary>
    public const int Most = 5000;

    /// <summary>What one filling of a wheat bin holds; a truck that is begun goes in whole.</summary>
    public double BinKilograms { get; init; } = 500_000;

    /// <summary>Bins that a mix is drawn from at the same time, in equal parts; 1 to 20.</summary>
    public int BinsPerMix { get; init; } = 2;

    /// <summary>How trucks fill them.</summary>
    public BinOrder Order { get; init; } = BinOrder.OneAfterAnother;

    /// <summary>How a filling leaves its bin: first in first out, or stirred.</summary>
    public Outflow Emptying { get; init; } = Outflow.FirstInFirstOut;

    /// <summary>Wheat milled for one finished lot.</summary>
    public double LotKilograms { get; init; } = 100_000;

    /// <summary>Finished product of a kilogram of wheat; above 0 and at most 1.</summary>
    public double Yield { get; init; } = 0.75;

    /// <summary>Product that stays in the flour bin when a lot has left it, and mixes with the next; 0 for none.</summary>
    public double HeelKilograms { get; init; }

    /// <summary>Product run through at each change of lot and set aside; 0 for none.</summary>
    public double FlushKilograms { get; init; }

    /// <summary>After how many lots the flour bin is cleaned out and proven empty; 0 for never.</summary>
    public int CleanEveryLots { get; init; }

    /// <summary>Share of a finished lot up to which a truck in it does not count; 0 counts every contact. Below 1.</summary>
    public double ThresholdShare { get; init; } = 1e-6;

    /// <summary>Hours that one clean-out takes.</summary>
    public double HoursEachCleanOut { get; init; } = 4;

    /// <summary>What is wrong with it, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        var faults = new List<string>();
        void Must(bool holds, string says)
        {
            if (!holds)
            {
                faults.Add(says);
            }
        }

        Must(Trucks.Count is >= 1 and <= Most && Trucks.All(t => t is > 0 and <= 1e7), $"Give 1 to {Most} trucks, each above 0 kg and at most 10 000 t.");
        Must(BinKilograms is > 0 and <= 1e9, "What a bin holds lies above 0 kg and is at most 1 000 000 t.");
        Must(BinsPerMix is >= 1 and <= 20, "A mix is drawn from 1 to 20 bins.");
        Must(Enum.IsDefined(Order) && Emptying is Outflow.FirstInFirstOut or Outflow.Stirred, "A filling leaves its bin first in first out or stirred; core first is not reckoned here.");
        Must(LotKilograms is > 0 and <= 1e9, "The wheat for a lot lies above 0 kg and is at most 1 000 000 t.");
        Must(Yield is > 0 and <= 1, "The yield lies above 0 and is at most 1.");
        Must(HeelKilograms is >= 0 and <= 1e9 && FlushKilograms is >= 0 and <= 1e9, "Heel and flush are at least 0 kg.");
        Must(!(HeelKilograms + FlushKilograms >= LotKilograms * Yield), "A lot has to be larger than its heel and its flush together.");
        Must(CleanEveryLots is >= 0 and <= Most, $"Clean out after 1 to {Most} lots, or 0 for never.");
        Must(ThresholdShare is >= 0 and < 1, "The share that counts is at least 0 and below 1.");
        Must(HoursEachCleanOut is >= 0 and <= 1000, "A clean-out takes 0 to 1000 hours.");
        Must(faults.Count > 0 || Trucks.Sum() / LotKilograms <= Most, $"These are more than {Most} lots: larger lots, or fewer trucks.");
        return faults;
    }
}
