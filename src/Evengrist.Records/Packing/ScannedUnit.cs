using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Packing.Codes;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>A pallet or load of the ledger that a scan names, as it stands at a moment.</summary>
/// <param name="Place">The place.</param>
/// <param name="Lot">Code of its lot; empty where it has none yet.</param>
/// <param name="Stand">Where it stands by the ledger.</param>
/// <param name="Hold">The hold on it; null where there is none.</param>
/// <param name="Number">Its number (SSCC); null where none was given.</param>
/// <param name="OnLoad">Number of the open load it was scanned onto; null where it stands on none.</param>
public sealed record ScannedUnit(Place Place, string Lot, UnitStand Stand, Happening? Hold, Sscc? Number, string? OnLoad)
{
    /// <summary>When it was packed; null where nothing went into it by then.</summary>
    public Instant? PackedAt => Stand.PackedAt;

    /// <summary>What was packed, as it lies.</summary>
    public Mass Packed => Stand.Packed;

    /// <summary>What of it is still here.</summary>
    public Mass Here => Stand.Here;

    /// <summary>Where it stands, in words; moments as the ledger writes them.</summary>
    public string Standing => Stand.Where switch
    {
        UnitWhere.NotPacked => "nothing packed on it yet",
        UnitWhere.Sent => $"with {Stand.To!.Code} since {Stand.LeftAt}",
        UnitWhere.Used => $"used in the mill{(Stand.To is { } to ? $", last into {to.Code} on {Stand.LeftAt}" : "")}",
        UnitWhere.CameBack => string.Create(CultureInfo.InvariantCulture, $"{Stand.Here.Kilograms:#,0.###} kg here, back from {Stand.BackFrom!.Code} on {Stand.BackAt}{OnIt}"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{Stand.Here.Kilograms:#,0.###} kg here{(Stand.Customer is { } customer ? $", {Stand.Gone.Kilograms:#,0.###} kg with {customer.Code}" : "")}{OnIt}"),
    };

    private string OnIt => OnLoad is null ? "" : $", on load {OnLoad}, which has not left";
}
