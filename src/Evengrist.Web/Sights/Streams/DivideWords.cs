using System.Globalization;
using Evengrist.Planning.Streams;
using Evengrist.Quantities;
using Evengrist.Streams;
using Evengrist.Streams.Dividing;

namespace Evengrist.Web.Sights.Streams;

/// <summary>Money and units of a divide in words.</summary>
public static class DivideWords
{
    /// <summary>How long a page looks for a divide: a person waits, longer where limits have to be kept with a chance.</summary>
    public static DivideOptions OnPage(DivideSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return new DivideOptions { Longest = TimeSpan.FromSeconds(spec.Sure is null ? 3 : 8) };
    }

    /// <summary>Money with its cents.</summary>
    public static string Money(decimal amount) => amount.ToString("N2", CultureInfo.InvariantCulture);

    /// <summary>Money more or less, with its sign.</summary>
    public static string Signed(decimal amount) => amount.ToString("+#,##0.00;−#,##0.00;0.00", CultureInfo.InvariantCulture);

    /// <summary>Unit of a property, with its basis.</summary>
    public static string UnitOf(StreamProperty what, Basis basis) => what is StreamProperty.Ash or StreamProperty.Protein ? $"% {basis}" : what.Unit();
}
