using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Web.Sights.Season;

/// <summary>Fields of a form as they were typed: read once, kept as they are, every fault in a sentence.</summary>
/// <param name="typed">What was typed into a field; null where the form was not sent.</param>
public sealed class TypedFields(Func<string, string?> typed)
{
    private readonly Dictionary<string, string> texts = [];
    private readonly List<string> faults = [];

    /// <summary>What is wrong so far.</summary>
    public IReadOnlyList<string> Faults => faults;

    /// <summary>Notes another fault.</summary>
    public void Fault(string what) => faults.Add(what);

    /// <summary>Whether a field came with the form.</summary>
    public bool Has(string key) => typed(key) is not null;

    /// <summary>A text; what stands otherwise where the field did not come.</summary>
    public string Text(string key, string otherwise)
    {
        var text = typed(key)?.Trim() ?? otherwise;
        texts[key] = text;
        return text;
    }

    /// <summary>A number; null where the field was left empty, what stands otherwise where it did not come.</summary>
    public double? Number(string key, string words, double? otherwise = null)
    {
        var text = Text(key, otherwise?.ToString("0.####", CultureInfo.InvariantCulture) ?? "");
        if (text.Length == 0)
        {
            return null;
        }

        if (double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value))
        {
            return value;
        }

        faults.Add($"{words}: a number such as 12.5 is needed; read “{text}”.");
        return null;
    }

    /// <summary>A number that has to be there.</summary>
    public double Needed(string key, string words, double? otherwise = null)
    {
        var before = faults.Count;
        if (Number(key, words, otherwise) is { } value)
        {
            return value;
        }

        if (faults.Count == before)
        {
            faults.Add($"{words}: it is missing; give a number.");
        }

        return 0;
    }

    /// <summary>A day; what stands otherwise where the field did not come.</summary>
    public LocalDate Day(string key, string words, LocalDate otherwise)
    {
        if (LocalDatePattern.Iso.Parse(Text(key, LocalDatePattern.Iso.Format(otherwise))).TryGetValue(otherwise, out var day))
        {
            return day;
        }

        faults.Add($"{words}: a day such as {LocalDatePattern.Iso.Format(otherwise)} is needed; read “{texts[key]}”.");
        return otherwise;
    }

    /// <summary>What a field shows: what was typed, or what stands otherwise.</summary>
    public string this[string key] => texts.GetValueOrDefault(key, "");
}
