using NodaTime;

namespace Evengrist.Packing.Codes;

/// <summary>What the ledger and the product say of one pallet, as its label is to say it.</summary>
/// <param name="Mill">Who made it.</param>
/// <param name="Pallet">The pallet's own code.</param>
/// <param name="Name">The product in words.</param>
/// <param name="Item">Number of the trade item that lies on it; null where the mill has given none.</param>
/// <param name="Count">How many of it.</param>
/// <param name="EachKilograms">Net mass of one, kg as it lies.</param>
/// <param name="Lot">Its lot.</param>
/// <param name="Made">Milling day.</param>
/// <param name="BestBefore">Best before.</param>
/// <param name="Contains">Allergens besides wheat.</param>
public sealed record PalletFacts(string Mill, string Pallet, string Name, Gtin? Item, int Count, decimal EachKilograms, LotCode Lot, LocalDate Made, LocalDate BestBefore, IReadOnlyList<string> Contains)
{
    /// <summary>The pallet's number (SSCC); null where none was given yet.</summary>
    public Sscc? Number { get; init; }

    /// <summary>Why it is on hold; empty where it is not.</summary>
    public string Hold { get; init; } = "";
}
