using System.Text.Json;
using System.Text.Json.Serialization;
using Evengrist.Intake.Carrying;
using Evengrist.Quantities;

namespace Evengrist.Intake.Deciding;

/// <summary>The mill's own rules of what it takes and where it keeps it apart; data that the mill keeps.</summary>
public sealed record HouseRules
{
    private static readonly JsonSerializerOptions Form = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true, UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow, Converters = { new JsonStringEnumConverter() },
    };

    /// <summary>Each rule on one property.</summary>
    public IReadOnlyList<HouseRule> Rules { get; init; } = [];

    /// <summary>Whether a load is set aside until the trailer's last loads are declared.</summary>
    public bool DemandsLastLoads { get; init; }

    /// <summary>Codes of the markets whose limits hold for everything this mill takes.</summary>
    public IReadOnlyList<string> Markets { get; init; } = [];

    /// <summary>Kilograms that stay in the boot of a receiving leg when it runs empty, as weighed on the site; null where nobody weighed.</summary>
    public decimal? BootResidueKilograms { get; init; }

    /// <summary>What the site's routes carry over.</summary>
    [JsonIgnore]
    public CarryOverSpec CarryOver => BootResidueKilograms is { } weighed ? new() { BootResidue = (double)weighed, IsMeasured = true } : new();

    /// <summary>As the paper of the house says it.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Form);

    /// <summary>Reads a paper.</summary>
    public static bool TryRead(string json, out HouseRules? rules, out IReadOnlyList<string> faults)
    {
        try
        {
            rules = JsonSerializer.Deserialize<HouseRules>(json, Form);
            faults = rules?.Rules is null || rules.Markets is null || rules.Rules.Any(r => r is null) ? ["House rules are a list of rules and a list of markets."] : [.. rules.Rules.Select(r => r.Fault).OfType<string>(), .. rules.BootResidueKilograms is <= 0m ? ["The residue of the boot lies above 0 kg."] : Array.Empty<string>()];
        }
        catch (JsonException fault)
        {
            (rules, faults) = (null, [JsonFault.Words(fault, typeof(HouseRules))]);
        }

        rules = faults.Count == 0 ? rules : null;
        return rules is not null;
    }
}
