using Evengrist.Laboratory.Bake;
using Evengrist.Records;
using Evengrist.Records.Laboratory;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>A blend as typed: to be guessed, or to be kept with what it was measured.</summary>
public sealed class BlendAsk
{
    /// <summary>Which property.</summary>
    public string? Property { get; set; }

    /// <summary>Lines of flour; share %; value.</summary>
    public string? Parts { get; set; }

    /// <summary>Its own code, where it is kept.</summary>
    public string? Code { get; set; }

    /// <summary>What was measured, where it is kept.</summary>
    public string? Measured { get; set; }

    /// <summary>The flours; what cannot be is said.</summary>
    public IReadOnlyList<BlendPart> Read(List<string> faults)
    {
        ArgumentNullException.ThrowIfNull(faults);
        var parts = new List<BlendPart>();
        foreach (var (line, cells) in SemicolonLines.Of(Parts))
        {
            var where = $"Flours, line {line}";
            if (cells.Length != 3)
            {
                faults.Add($"{where}: write flour; share in %; its own value.");
            }
            else if (SemicolonLines.Number(where, "the share", cells[1], faults) is { } share && SemicolonLines.Number(where, "the value", cells[2], faults) is { } value)
            {
                parts.Add(new(cells[0], share / 100, value));
            }
        }

        faults.AddRange(faults.Count == 0 ? BlendPart.Faults(Property ?? "", parts) : []);
        return parts;
    }

    /// <summary>Keeps what was measured; every fault where it cannot be.</summary>
    public IReadOnlyList<string> Keep(Mill mill, string? by, string nameless)
    {
        var faults = new List<string>();
        var parts = Read(faults);
        var measured = Bins.TypedNumber.Read("What was measured", Measured, faults, 0, BlendPart.Most, demanded: true);
        faults.AddRange(string.IsNullOrWhiteSpace(by) ? [nameless] : []);
        return faults.Count > 0 ? faults : MeasuredBlends.Keep(mill, new MeasuredBlend((Code ?? "").Trim(), Property ?? "", parts, measured!.Value), by!).Faults;
    }
}
