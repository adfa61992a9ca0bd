using System.Globalization;
using Evengrist.Streams.Additions;

namespace Evengrist.Web.Sights.Streams;

/// <summary>Numbers of a stream survey and of additions in words.</summary>
public static class StreamWords
{
    /// <summary>A number with so many decimals; a dash for none.</summary>
    public static string N(double? number, int decimals) => number?.ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) ?? "–";

    /// <summary>What a feeder has to give.</summary>
    public static string Rate(FeedRate rate)
    {
        ArgumentNullException.ThrowIfNull(rate);
        return $"{N(rate.GramsPerTonne, 1)} g/t{(rate.GramsPerMinute is { } minute ? $", {N(minute, 1)} g/min" : "")}";
    }
}
