using System.Globalization;
using System.Text.Json;
using Evengrist.Plant.Imports;
using Evengrist.Quantities;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Plant.Cases;

/// <summary>A place in a posed case; what is wrong is noted at its JSON path, and a default given, so that every fault is found.</summary>
internal sealed class JsonNode(JsonElement element, string path, List<Fault> faults)
{
    private const decimal MostKilograms = 100_000_000m;

    public string Path => path;

    /// <summary>The text it was read from.</summary>
    public string Raw => element.GetRawText();

    /// <summary>Whether it is a text.</summary>
    public bool IsText => element.ValueKind == JsonValueKind.String;

    /// <summary>Whether it is a number.</summary>
    public bool IsNumber => element.ValueKind == JsonValueKind.Number;

    /// <summary>Notes a fault unless this is an object with no other members than these.</summary>
    public bool IsObject(params string[] known)
    {
        if (element.ValueKind != JsonValueKind.Object)
        {
            Fault("an object");
            return false;
        }

        foreach (var member in element.EnumerateObject().Where(m => !known.Contains(m.Name)))
        {
            var near = Nearest.To(member.Name, known);
            faults.Add(Plant.Fault.AtPath($"{path}.{Plant.Fault.Show(member.Name)}", member.Name, near is null ? $"one of {string.Join(", ", known)}" : $"a known member; the nearest is {near}"));
        }

        return true;
    }

    public bool Has(string name) => element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out _);

    public JsonNode? Member(string name, bool required = true)
    {
        if (element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out var member))
        {
            return new JsonNode(member, $"{path}.{name}", faults);
        }

        if (required)
        {
            faults.Add(Plant.Fault.AtPath($"{path}.{name}", "", "a value; the member is missing"));
        }

        return null;
    }

    /// <summary>The items of a list; empty with a fault where it is none or longer than allowed.</summary>
    public IReadOnlyList<JsonNode> Items(int most)
    {
        if (element.ValueKind != JsonValueKind.Array)
        {
            Fault("a list");
            return [];
        }

        if (element.GetArrayLength() > most)
        {
            faults.Add(Plant.Fault.AtPath(path, $"{element.GetArrayLength()} items", $"at most {most} items"));
            return [];
        }

        return element.EnumerateArray().Select((item, i) => new JsonNode(item, $"{path}[{i.ToString(CultureInfo.InvariantCulture)}]", faults)).ToArray();
    }

    /// <summary>The members of an object by name; empty with a fault where it is none.</summary>
    public IReadOnlyList<(string Name, JsonNode Value)> Members()
    {
        if (element.ValueKind == JsonValueKind.Object)
        {
            return element.EnumerateObject().Select(m => (m.Name, new JsonNode(m.Value, $"{path}.{Plant.Fault.Show(m.Name)}", faults))).ToArray();
        }

        Fault("an object");
        return [];
    }

    public string Text()
    {
        if (element.ValueKind == JsonValueKind.String && element.GetString() is { Length: > 0 and <= 400 } text && !text.Any(char.IsControl))
        {
            return text;
        }

        Fault("a text of 1 to 400 characters");
        return "";
    }

    public string Text(string name, string otherwise) => Has(name) ? Member(name)!.Text() : otherwise;

    public string Text(string name) => Member(name)?.Text() ?? "";

    /// <summary>A number in a range, the ends included.</summary>
    public decimal? Number(decimal least, decimal most)
    {
        if (element.ValueKind == JsonValueKind.Number && element.TryGetDecimal(out var number) && number >= least && number <= most)
        {
            return number;
        }

        Fault(string.Create(CultureInfo.InvariantCulture, $"a number from {least} to {most}"));
        return null;
    }

    public int? Whole(int least, int most)
    {
        if (element.ValueKind == JsonValueKind.Number && element.TryGetInt32(out var number) && number >= least && number <= most)
        {
            return number;
        }

        Fault(string.Create(CultureInfo.InvariantCulture, $"a whole number from {least} to {most}"));
        return null;
    }

    /// <summary>A mass above zero in this object's member <c>t</c> or <c>kg</c>, of which one must be there.</summary>
    public Mass? Mass()
    {
        if (Has("t") == Has("kg"))
        {
            Fault("a mass: one of t and kg");
            return null;
        }

        var (name, kilograms) = Has("t") ? ("t", 1000m) : ("kg", 1m);
        var number = Member(name)!.Number(0.001m / kilograms, MostKilograms / kilograms);
        return number is { } n ? Quantities.Mass.FromKilograms(n * kilograms) : null;
    }

    public Instant? Time()
    {
        var (at, expected) = element.ValueKind == JsonValueKind.String ? Moments.Of(element.GetString()!, null) : (null, "a date and time in quotes with its offset, such as \"2025-07-09T14:05-06:00\"");
        if (at is null)
        {
            Fault(expected);
        }

        return at;
    }

    public Instant? Time(string name, bool required = true) => Member(name, required)?.Time();

    /// <summary>A span of time as in <c>PT4M58.137S</c>, above zero and at most a year.</summary>
    public Duration? Span()
    {
        if (element.ValueKind == JsonValueKind.String && PeriodPattern.NormalizingIso.Parse(element.GetString()!) is { Success: true } parsed
            && parsed.Value is { Years: 0, Months: 0 } period && period.ToDuration() is var span && span > Duration.Zero && span <= Duration.FromDays(366))
        {
            return span;
        }

        Fault("a span of time such as \"PT4M58.137S\"");
        return null;
    }

    public void Fault(string expected) => faults.Add(Plant.Fault.AtPath(path, Shown(), expected));

    private string Shown() => element.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => element.GetString()!,
        _ => element.GetRawText(),
    };
}
