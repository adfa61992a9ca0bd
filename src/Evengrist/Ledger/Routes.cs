namespace Evengrist.Ledger;

/// <summary>Which kind of place grain can leave for which kind, where at least one of the two is not part of the plant.</summary>
public static class Routes
{
    /// <summary>Whether the trade moves anything from the one kind to the other.</summary>
    public static bool Allows(PlaceKind from, PlaceKind to)
    {
        if (to.Role() == PlaceRole.Source || from is PlaceKind.Waste or PlaceKind.Loss or PlaceKind.Shortage)
        {
            return false;
        }

        if (to is PlaceKind.Waste or PlaceKind.Loss or PlaceKind.Shortage)
        {
            return from.Role() != PlaceRole.Source;
        }

        return from switch
        {
            PlaceKind.Opening or PlaceKind.Gain => to is not PlaceKind.Customer,
            PlaceKind.Field or PlaceKind.Elevator => to is PlaceKind.Truck,
            PlaceKind.Water => to is PlaceKind.Cleaner or PlaceKind.TemperBin or PlaceKind.MillUnit or PlaceKind.MixLine,
            PlaceKind.AdditiveLot => to is PlaceKind.MillUnit or PlaceKind.FlourBin or PlaceKind.PackingLine,
            PlaceKind.Truck => to is PlaceKind.Pit or PlaceKind.Bin or PlaceKind.FlourBin or PlaceKind.Customer,
            PlaceKind.ReworkTote => to is PlaceKind.MillUnit or PlaceKind.FlourBin or PlaceKind.BulkLoad or PlaceKind.Pallet,
            PlaceKind.Pallet or PlaceKind.BulkLoad => to is PlaceKind.Customer or PlaceKind.ReworkTote or PlaceKind.FlourBin,
            PlaceKind.Customer => to is PlaceKind.ReworkTote or PlaceKind.Pallet or PlaceKind.BulkLoad,
            PlaceKind.PackingLine => to is PlaceKind.Pallet or PlaceKind.BulkLoad or PlaceKind.ReworkTote,
            PlaceKind.FlourBin => to is PlaceKind.BulkLoad or PlaceKind.Pallet or PlaceKind.ReworkTote,
            PlaceKind.Bin => to is PlaceKind.Truck or PlaceKind.BulkLoad,
            PlaceKind.MillUnit or PlaceKind.Cleaner or PlaceKind.MixLine or PlaceKind.TemperBin or PlaceKind.Pit or PlaceKind.Leg => to is PlaceKind.ReworkTote,
            _ => false,
        };
    }
}
