using System.Globalization;
using Evengrist.Season.Terms;

namespace Evengrist.Web.Sights.Season;

/// <summary>Terms with other figures in them, as a person typed them.</summary>
/// <param name="Terms">The changed terms; the given ones where nothing was changed or something is wrong.</param>
/// <param name="Changes">What was changed, each in words.</param>
/// <param name="Typed">What was typed, by the name of its field.</param>
/// <param name="Faults">What is wrong, each a sentence.</param>
public sealed record TermsAsk(SeasonTerms Terms, IReadOnlyList<string> Changes, IReadOnlyDictionary<string, string> Typed, IReadOnlyList<string> Faults)
{
    /// <summary>Reads the fields; one that is missing stays as it is.</summary>
    public static TermsAsk Of(SeasonTerms terms, Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentNullException.ThrowIfNull(typed);
        var (changed, changes, texts, faults) = (terms, new List<string>(), new Dictionary<string, string>(), new List<string>());
        foreach (var field in TermsField.Of(terms))
        {
            if (typed(field.Key)?.Trim() is not { } text || text == field.Text)
            {
                continue;
            }

            texts[field.Key] = text;
            if (!double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value))
            {
                faults.Add($"{field.Group}, {Lower(field.Words)}: a number such as {(field.Text.Length > 0 ? field.Text : "12.5")} is needed; read “{text}”.");
                continue;
            }

            changed = field.With(changed, value);
            changes.Add(string.Create(CultureInfo.InvariantCulture, $"{field.Group}, {Lower(field.Words)}: {field.Text} → {value:0.####} {field.Unit}"));
        }

        faults.AddRange(faults.Count == 0 ? changed.Faults() : []);
        return new TermsAsk(faults.Count == 0 ? changed : terms, changes, texts, faults);
    }

    private static string Lower(string words) => char.ToLowerInvariant(words[0]) + words[1..];
}
