namespace Evengrist.Quantities;

/// <summary>Decimals of the smallest unit of a currency.</summary>
/// <remarks>Source: ISO 4217, written down from memory; every code not listed here has two.</remarks>
internal static class CurrencyDecimals
{
    private static readonly HashSet<string> None =
        ["BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "VND", "VUV", "XAF", "XOF", "XPF"];

    private static readonly HashSet<string> Three = ["BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"];

    public static int Of(string currency) => None.Contains(currency) ? 0 : Three.Contains(currency) ? 3 : 2;
}
