using NodaTime;

namespace Evengrist.Season.Terms;

/// <summary>Wheat that is expected, spread evenly over some days: a harvest, or lots bought already.</summary>
/// <param name="Code">Its code, of its own among bins, offers and districts.</param>
/// <param name="District">Where it grows; empty where that is not known.</param>
/// <param name="WheatClass">Its class.</param>
/// <param name="First">First day.</param>
/// <param name="Last">Last day.</param>
/// <param name="Tonnes">In all, t, 0 or more.</param>
/// <param name="TonnesSpread">Standard deviation of it, t: how far a whole harvest comes in short or long.</param>
/// <param name="MoisturePercent">Moisture, per cent, wet basis.</param>
/// <param name="Quality">What it is expected to be.</param>
public sealed record ArrivalTerms(
    string Code, string District, string WheatClass, LocalDate First, LocalDate Last, double Tonnes, double TonnesSpread, double MoisturePercent, IReadOnlyList<QualityTerms> Quality)
{
    /// <summary>What a truck of it usually carries, t, 0 or more; 0 where that is not known, and then a delivery is as uncertain as any other, large or small.</summary>
    public double TruckTonnes { get; init; }

    /// <summary>Standard deviation of what comes in a week about what was expected of that week, as a share, 0 or more, beside that of the whole.</summary>
    public double WeekShare { get; init; }

    /// <summary>What deliveries of one place have in common: its district, or the arrival itself where none is named.</summary>
    public string Place => District.Length > 0 ? District : Code;
}
