using Evengrist.Ledger;

namespace Evengrist.Milling.Balance;

/// <summary>Moistures read over a span, as one.</summary>
/// <param name="Mean">Their mean; its uncertainty is the mean of their own, taken as shared by all of them, or what is usual where none says its own.</param>
/// <param name="Count">How many.</param>
public sealed record MoisturesRead(MeanMoisture Mean, int Count)
{
    /// <summary>The mean of readings; null where there is none.</summary>
    public static MoisturesRead? Of(IEnumerable<Reading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        Reading[] all = [.. readings];
        double[] own = [.. all.Select(r => (double?)r.StandardUncertainty).OfType<double>()];
        return all.Length == 0 ? null : new MoisturesRead(new MeanMoisture(all.Average(r => (double)r.Value), own.Length > 0 ? own.Average() : new UsualErrors().MoisturePoints), all.Length);
    }
}
