using System.Globalization;

namespace Evengrist.Web.Sights.Streams;

/// <summary>Numbers of a stream survey in words.</summary>
public static class StreamWords
{
    /// <summary>A number with so many decimals; a dash for none.</summary>
    public static string N(double? number, int decimals) => number?.ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) ?? "–";
}
