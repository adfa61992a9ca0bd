using Evengrist.Intake.Grading;

namespace Evengrist.Records.Intake;

/// <summary>Keeps a version of one of the mill's own classes of wheat.</summary>
public static class KeepHouseClass
{
    /// <summary>Keeps it; the same once more changes nothing.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="house">The class in its version.</param>
    /// <param name="by">Who decided it.</param>
    /// <exception cref="ArgumentException">It has <see cref="HouseClass.Faults"/>, or nobody is named.</exception>
    /// <exception cref="Evengrist.Ledger.LedgerRefusal">The version is kept already and says something else.</exception>
    public static void Keep(this Mill mill, HouseClass house, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(house);
        if (house.Faults() is [var fault, ..])
        {
            throw new ArgumentException(fault, nameof(house));
        }

        mill.Papers(HouseClassJson.Kind).Keep(house.Code, house.Version, HouseClassJson.Write(house), by);
    }
}
