using Evengrist.Bins.Shape;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Bins;

/// <summary>A named person sounds a bin: the tape as it was read, and the tonnes that the bin's shape makes of it, recorded together.</summary>
/// <param name="Key">The source's own key, so that the same sounding sent twice is one.</param>
/// <param name="Bin">Code of the bin.</param>
/// <param name="At">When.</param>
/// <param name="Sounding">The tape.</param>
/// <param name="Sounded">What it comes to.</param>
/// <param name="How">Density and pack factor in words.</param>
public sealed record RecordSounding(string Key, string Bin, Instant At, Sounding Sounding, Sounded Sounded, string How)
{
    /// <summary>Records both readings.</summary>
    /// <exception cref="LedgerRefusal">A rule is broken; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by, Instant? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Record([.. Drafts()], by, "bin page", recorded);
    }

    /// <summary>The readings as drafts.</summary>
    public IReadOnlyList<Draft> Drafts() =>
    [
        new Measure(Key + "/tape", Bin, At, Property.Ullage, Math.Round((decimal)Sounding.UllageMetres, 3), "m", default, SoundingMethod.Words(Sounding.From, Sounding.Surface), "", Math.Round((decimal)Sounding.StandardUncertaintyMetres, 3)),
        new Measure(Key + "/stock", Bin, At, Property.SoundedStock, Math.Round((decimal)Sounded.Tonnes, 1), "t", default, "sounding by the bin's shape; " + How, "", Math.Round((decimal)Sounded.StandardUncertaintyTonnes, 1)),
    ];
}
