using System.Text.Json;
using System.Text.Json.Serialization;
using Evengrist.Quantities;

namespace Evengrist.Intake.Deciding;

/// <summary>The limits of one market: data that the mill keeps, changes with authority, and answers for.</summary>
/// <param name="Code">What people call the market.</param>
/// <param name="Name">Its longer name.</param>
/// <param name="Limits">Each property and stage once.</param>
public sealed record Market(string Code, string Name, IReadOnlyList<MarketLimit> Limits)
{
    private static readonly JsonSerializerOptions Form = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true, UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow, Converters = { new JsonStringEnumConverter() },
    };

    /// <summary>Every fault, each a sentence; empty where there is none.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Limits.Select(l => l.Fault).OfType<string>(),
        .. Limits.GroupBy(l => (l.What, l.Stage)).Where(g => g.Count() > 1).Select(g => $"{g.Key.What} has {g.Count()} limits at one stage: give one."),
    ];

    /// <summary>As the paper of a market says it.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Form);

    /// <summary>Reads a paper.</summary>
    /// <param name="json">What the paper says.</param>
    /// <param name="market">The market; null where it cannot be.</param>
    /// <param name="faults">What is wrong, each a sentence.</param>
    public static bool TryRead(string json, out Market? market, out IReadOnlyList<string> faults)
    {
        try
        {
            market = JsonSerializer.Deserialize<Market>(json, Form);
            faults = market?.Limits is null || market.Code is null || market.Limits.Any(l => l?.Unit is null) ? ["A market has a code, a name and limits, each with a property, a stage, most, unit and source."] : market.Faults();
        }
        catch (JsonException fault)
        {
            (market, faults) = (null, [JsonFault.Words(fault, typeof(Market))]);
        }

        market = faults.Count == 0 ? market : null;
        return market is not null;
    }
}
