using System.Globalization;
using Evengrist.Plant.Gs1.Checks;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Plant.Gs1;

/// <summary>What a value says, in words and units.</summary>
public static class Meaning
{
    /// <summary>The date an element says; null where it is none.</summary>
    public static LocalDate? Date(Element element, int year)
    {
        ArgumentNullException.ThrowIfNull(element);
        return element.Identifier.Parts[0].Checks.Any(c => c == NamedChecks.DateOrMonth || c == NamedChecks.Date) && element.Value.Length >= 6 ? SymbolDate.Read(element.Value[..6], year) : null;
    }

    /// <summary>The number of a measure with its decimals; null where the element is no measure.</summary>
    public static decimal? Measure(Element element)
    {
        ArgumentNullException.ThrowIfNull(element);
        return element.Code is { Length: 4 } code && code[0] == '3' && code[1] <= '6' && int.TryParse(element.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var digits)
            ? new decimal(digits, 0, 0, false, (byte)(code[3] - '0')) : null;
    }

    /// <summary>What an element says: <c>net weight, kg: 25.00</c>, <c>best before: 2025-03-15</c>.</summary>
    public static string Of(Element element, int year)
    {
        ArgumentNullException.ThrowIfNull(element);
        var says = Measure(element) is { } number ? number.ToString(CultureInfo.InvariantCulture)
            : Date(element, year) is { } date ? LocalDatePattern.Iso.Format(date) + (element.Value.Length > 6 ? " " + element.Value[6..] : "") : element.Value;
        return $"{element.Identifier.Words}: {says}";
    }
}
