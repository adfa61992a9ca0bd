using Evengrist.Intake.Paying;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Web.Sights.Paying;

/// <summary>The milling days that are asked for; the crop year of the day looked at where nothing is said.</summary>
/// <param name="Span">First and last milling day.</param>
/// <param name="Faults">What is wrong with what was asked, each a sentence; the crop year is shown then.</param>
public sealed record SpanAsk(SeasonSpan Span, IReadOnlyList<string> Faults)
{
    /// <summary>Reads two dates.</summary>
    /// <param name="from">First milling day; may be empty.</param>
    /// <param name="until">Last milling day; may be empty.</param>
    /// <param name="day">The milling day looked at.</param>
    public static SpanAsk Of(string? from, string? until, LocalDate day)
    {
        var faults = new List<string>();
        var season = SeasonSpan.Around(day);
        var (first, last) = (Read(from, season.From, faults), Read(until, season.Until, faults));
        if (last < first)
        {
            faults.Add(FormattableString.Invariant($"It ends on {last:R} before it begins on {first:R}. Are the two swapped?"));
        }

        return new(faults.Count > 0 ? season : new SeasonSpan(first, last), faults);
    }

    private static LocalDate Read(string? text, LocalDate otherwise, List<string> faults)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return otherwise;
        }

        var read = LocalDatePattern.Iso.Parse(text.Trim());
        if (!read.Success)
        {
            faults.Add($"“{text.Trim()}” is no date. Write it like 2025-07-09.");
        }

        return read.Success ? read.Value : otherwise;
    }
}
