namespace Evengrist.Ledger;

/// <summary>What sort of place grain, flour, water or an additive can be in, in the order of the way of the grain.</summary>
/// <remarks>The numbers are stored; a kind keeps its number for ever.</remarks>
public enum PlaceKind
{
    /// <summary>Not a place; the default value is refused.</summary>
    None = 0,

    /// <summary>Stock found when the ledger was opened, origin unknown. A source.</summary>
    Opening = 1,

    /// <summary>A grower's field. A source.</summary>
    Field = 2,

    /// <summary>A country elevator or merchant: fields unknown. A source.</summary>
    Elevator = 3,

    /// <summary>Mains or well water. A source.</summary>
    Water = 4,

    /// <summary>One lot of malt, enrichment, ascorbic acid, gluten …, as delivered. A source.</summary>
    AdditiveLot = 5,

    /// <summary>What a count or sounding found more than the ledger held. A source.</summary>
    Gain = 6,

    /// <summary>One truckload or railcar: its code is the ticket number.</summary>
    Truck = 10,

    /// <summary>A receiving pit. Passes on what it gets.</summary>
    Pit = 11,

    /// <summary>A bucket elevator or conveyor. Passes on what it gets.</summary>
    Leg = 12,

    /// <summary>A wheat bin.</summary>
    Bin = 13,

    /// <summary>The conveyor under the bins in which the gates' wheats meet; blends at once.</summary>
    MixLine = 14,

    /// <summary>Screenroom and dampener: dirty wheat in, clean wheat and screenings out; blends at once.</summary>
    Cleaner = 15,

    /// <summary>A tempering bin: first in first out, then a stirred stage.</summary>
    TemperBin = 16,

    /// <summary>A mill unit: wheat in, streams out; blends at once.</summary>
    MillUnit = 17,

    /// <summary>A flour or by-product bin.</summary>
    FlourBin = 18,

    /// <summary>A packing line or bulk spout.</summary>
    PackingLine = 19,

    /// <summary>One pallet of bags.</summary>
    Pallet = 20,

    /// <summary>One bulk load.</summary>
    BulkLoad = 21,

    /// <summary>A tote of flour to be fed back.</summary>
    ReworkTote = 22,

    /// <summary>A customer or consignee. A sink.</summary>
    Customer = 30,

    /// <summary>Waste, sweepings, samples. A sink.</summary>
    Waste = 31,

    /// <summary>Evaporation and unweighed loss. A sink.</summary>
    Loss = 32,

    /// <summary>What a count or sounding found less than the ledger held. A sink.</summary>
    Shortage = 33,
}
