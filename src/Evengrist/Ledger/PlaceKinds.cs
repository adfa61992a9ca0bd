namespace Evengrist.Ledger;

/// <summary>What each kind of place does with grain.</summary>
public static class PlaceKinds
{
    /// <summary>Every kind a place can have.</summary>
    public static IReadOnlyList<PlaceKind> All { get; } = Enum.GetValues<PlaceKind>().Where(k => k != PlaceKind.None).ToArray();

    /// <summary>How a place of this kind keeps what it gets.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The kind is <see cref="PlaceKind.None"/> or no kind at all.</exception>
    public static PlaceRole Role(this PlaceKind kind) => kind switch
    {
        PlaceKind.Opening or PlaceKind.Field or PlaceKind.Elevator or PlaceKind.Water or PlaceKind.AdditiveLot or PlaceKind.Gain => PlaceRole.Source,
        PlaceKind.Truck or PlaceKind.Pallet or PlaceKind.BulkLoad or PlaceKind.ReworkTote => PlaceRole.Unit,
        PlaceKind.Bin or PlaceKind.FlourBin => PlaceRole.Store,
        PlaceKind.TemperBin or PlaceKind.PackingLine => PlaceRole.Through,
        PlaceKind.Pit or PlaceKind.Leg or PlaceKind.MixLine or PlaceKind.Cleaner or PlaceKind.MillUnit => PlaceRole.Junction,
        PlaceKind.Customer or PlaceKind.Waste or PlaceKind.Loss or PlaceKind.Shortage => PlaceRole.Sink,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of place."),
    };

    /// <summary>Whether the place belongs to the plant and so needs a named connection to another fixed place.</summary>
    public static bool IsFixed(this PlaceKind kind) => kind.Role() is PlaceRole.Store or PlaceRole.Through or PlaceRole.Junction;

    /// <summary>Whether the place is a bin: of wheat, of wheat at rest in its water, of flour or by-product.</summary>
    public static bool IsBin(this PlaceKind kind) => kind is PlaceKind.Bin or PlaceKind.TemperBin or PlaceKind.FlourBin;

    /// <summary>The kind in plain words: <c>packing line</c>.</summary>
    public static string Words(this PlaceKind kind) => kind switch
    {
        PlaceKind.Opening => "opening stock",
        PlaceKind.AdditiveLot => "additive lot",
        PlaceKind.MixLine => "mix line",
        PlaceKind.TemperBin => "temper bin",
        PlaceKind.MillUnit => "mill unit",
        PlaceKind.FlourBin => "flour bin",
        PlaceKind.PackingLine => "packing line",
        PlaceKind.BulkLoad => "bulk load",
        PlaceKind.ReworkTote => "rework tote",
        _ => kind.ToString().ToLowerInvariant(),
    };
}
