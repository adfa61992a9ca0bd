using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>A flour bin at a moment: level by the ledger, flows of the last hours, and how long until it is empty or full if they go on.</summary>
/// <param name="Place">The bin.</param>
/// <param name="Level">What lies in it.</param>
/// <param name="InTonnesPerHour">What flowed in, a mean of the last hours.</param>
/// <param name="OutTonnesPerHour">What flowed out, a mean of the last hours.</param>
/// <param name="NetUncertainty">Standard uncertainty of inflow less outflow, t/h, from how the hours differ; null where there are too few.</param>
/// <param name="Layers">Its layers, the next out first under first in, first out: since when each was set down and how much.</param>
public sealed record FlourBinNow(Place Place, Mass Level, double InTonnesPerHour, double OutTonnesPerHour, double? NetUncertainty, IReadOnlyList<(Instant From, Instant Until, double Tonnes)> Layers)
{
    /// <summary>The least net flow that says anything, t/h [ours].</summary>
    private const double Still = 0.05;

    /// <summary>Inflow less outflow, t/h.</summary>
    public double Net => InTonnesPerHour - OutTonnesPerHour;

    /// <summary>Minutes until it is empty if the flows go on; null where it does not empty.</summary>
    public double? MinutesToEmpty => Net < -Still ? 60 * (double)Level.Tonnes / -Net : null;

    /// <summary>Minutes until it is full if the flows go on; null where it does not fill or no capacity is stated.</summary>
    public double? MinutesToFull => Net > Still && Place.Capacity is { } most ? 60 * (double)(most - Level).Tonnes / Net : null;

    /// <summary>Standard uncertainty of the minutes, from that of the net flow: minutes · u(net)/|net|, first order; null where it is not known.</summary>
    public double? MinutesUncertainty => NetUncertainty is { } u && (MinutesToEmpty ?? MinutesToFull) is { } minutes ? minutes * u / Math.Abs(Net) : null;
}
