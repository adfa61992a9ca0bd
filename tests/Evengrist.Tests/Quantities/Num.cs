using System.Globalization;

namespace Evengrist.Tests.Quantities;

internal static class Num
{
    public static decimal Of(string digits) => decimal.Parse(digits, CultureInfo.InvariantCulture);

    public static void Near(decimal expected, decimal actual, decimal within) =>
        Assert.True(Math.Abs(expected - actual) <= within, FormattableString.Invariant($"expected {expected} ± {within}, got {actual}"));
}
