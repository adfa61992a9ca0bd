using MathNet.Numerics.Distributions;

namespace Evengrist.Streams.Dividing;

/// <summary>How far a flour is from one end of a limit.</summary>
/// <param name="End">The end.</param>
/// <param name="Distance">From the mean to the end, in the property's unit; below zero where it is missed. Of the rule of identity: per cent of ash.</param>
/// <param name="Chance">How surely the flour keeps it by the uncertainties of the survey, 0 to 1; 0 or 1 where there are none.</param>
public sealed record LimitRoom(LimitEnd End, double Distance, double Chance)
{
    /// <summary>Whether it is kept as surely as is asked.</summary>
    /// <param name="sure">The chance asked for; null where the mean has to keep it.</param>
    public bool IsKeptTo(double? sure) => IsKept && (sure is null || Chance >= sure - 1e-6);

    /// <summary>Whether the mean keeps it, to a millionth of the limit.</summary>
    public bool IsKept => Distance >= -1e-6 * Math.Max(1, Math.Abs(End.Value));

    /// <summary>The room of streams run together; null where one of them was not read for it.</summary>
    public static LimitRoom? Of(LimitEnd end, IReadOnlyList<(MillStream Stream, double Share)> parts, StreamMethods methods)
    {
        ArgumentNullException.ThrowIfNull(end);
        ArgumentNullException.ThrowIfNull(parts);
        if (parts.Any(p => p.Share > 0 && end.Needs.Any(n => n.Read(p.Stream) is null)))
        {
            return null;
        }

        // A flour keeps the end just when Σ y·m ≥ 0: its chance is that of this sum, whose yields and readings both err.
        (double Weight, double Spare, double Unsure)[] of = [.. parts.Where(p => p.Share > 0).Select(p => (p.Share * p.Stream.Yield, end.Spare(p.Stream), end.Unsure(p.Stream, methods)))];
        var all = of.Sum(p => p.Weight);
        var spare = of.Sum(p => p.Weight * p.Spare) / all;
        var unsure = Math.Sqrt(of.Sum(p => p.Weight * p.Weight * ((p.Unsure * p.Unsure) + Math.Pow(methods.YieldShare * p.Spare, 2)))) / all;
        var distance = end.IsIdentity ? spare : (end.IsLeast ? 1 : -1) * (StreamMean.Of(end.What, parts, methods)!.Value - end.Value);
        distance = Math.Abs(distance) < 1e-12 ? 0 : distance;

        // An uncertainty that is smaller than the rounding of the sums is none.
        return new LimitRoom(end, distance, unsure > 1e-9 ? Normal.CDF(0, 1, spare / unsure) : spare >= -1e-9 ? 1 : 0);
    }
}
