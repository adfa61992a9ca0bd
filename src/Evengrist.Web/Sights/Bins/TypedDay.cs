using NodaTime;
using NodaTime.Text;

namespace Evengrist.Web.Sights.Bins;

/// <summary>Reads a day that a person typed.</summary>
public static class TypedDay
{
    /// <summary>What is said of a text that is none.</summary>
    /// <param name="text">What was typed.</param>
    public static string None(string? text) => $"“{text?.Trim()}” is no day: write it like 2026-01-14.";

    /// <summary>The day; null where the text is none of 1900 to 9000, written like 2026-01-14. Outer blanks do not matter.</summary>
    /// <param name="text">What was typed.</param>
    public static LocalDate? Read(string? text) => LocalDatePattern.Iso.Parse((text ?? "").Trim()) is { Success: true, Value: { Year: >= 1900 and <= 9000 } day } ? day : null;
}
