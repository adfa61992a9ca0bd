using System.Globalization;
using System.Text.Json;
using Evengrist.Ledger;

namespace Evengrist.Bins.Storage;

/// <summary>Air that was blown through a bin, as a person records it: the particulars of a happening of the kind <see cref="HappeningKind.Aerated"/>, dated when it ended.</summary>
/// <param name="Hours">How long, h; above 0.</param>
/// <param name="M3PerMinTonne">Airflow, m³/min for each tonne; null where not known.</param>
public sealed record AerationRun(double Hours, double? M3PerMinTonne)
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web);

    /// <summary>The happening's text: words for people, then the particulars.</summary>
    /// <param name="words">Words of the person's own; may be empty.</param>
    public string Text(string words = "") => Happening.TextOf(
        string.Create(CultureInfo.InvariantCulture, $"aerated {Hours:0.#} h{(M3PerMinTonne is { } flow ? string.Create(CultureInfo.InvariantCulture, $" at {flow:0.###} m³/min t") : "")}{(words.Length > 0 ? ": " + words : "")}"),
        JsonSerializer.Serialize(this, Options));

    /// <summary>Reads the particulars of a happening; null where it has none of this form.</summary>
    public static AerationRun? Of(Happening happening)
    {
        ArgumentNullException.ThrowIfNull(happening);
        if (happening.Kind != HappeningKind.Aerated || happening.Particulars.Length == 0)
        {
            return null;
        }

        try
        {
            return JsonSerializer.Deserialize<AerationRun>(happening.Particulars, Options) is { Hours: > 0 } run ? run : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
