namespace Evengrist.Streams;

/// <summary>Streams run together.</summary>
/// <param name="Yield">Their yields added, per cent of the wheat.</param>
/// <param name="AshPercent">Mean ash by yield: Σ yᵢaᵢ / Σ yᵢ.</param>
/// <param name="ProteinPercent">Mean protein the same way; null where it was not read for all of them.</param>
public sealed record StreamSum(double Yield, double AshPercent, double? ProteinPercent)
{
    /// <summary>Adds streams up, each with the share of it that goes in.</summary>
    /// <exception cref="ArgumentException">Nothing goes in.</exception>
    public static StreamSum Of(IEnumerable<(MillStream Stream, double Share)> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var (yield, ash, protein) = (0.0, 0.0, (double?)0.0);
        foreach (var (stream, share) in parts)
        {
            var amount = share * stream.Yield;
            (yield, ash, protein) = (yield + amount, ash + (amount * stream.AshPercent), protein + (amount * stream.ProteinPercent));
        }

        return yield > 0 ? new StreamSum(yield, ash / yield, protein / yield) : throw new ArgumentException("Nothing goes in.", nameof(parts));
    }

    /// <summary>Adds whole streams up.</summary>
    public static StreamSum Of(IEnumerable<MillStream> streams) => Of(streams.Select(s => (s, 1.0)));
}
