using System.Diagnostics.CodeAnalysis;
using NodaTime;

namespace Evengrist.Packing.Lines;

/// <summary>Flour the mill means to make into a bin.</summary>
/// <param name="Bin">Code of the flour bin.</param>
/// <param name="From">Begin.</param>
/// <param name="Until">End.</param>
/// <param name="TonnesPerHour">Rate, above 0.</param>
public sealed record MillCampaign(string Bin, Instant From, Instant Until, double TonnesPerHour);

/// <summary>What the mill means to make in the coming days: what fills the flour bins while the lines empty them.</summary>
/// <param name="Campaigns">Each campaign.</param>
public sealed record MillCampaigns(IReadOnlyList<MillCampaign> Campaigns)
{
    /// <summary>Kind of its paper.</summary>
    public const string PaperKind = "mill-campaigns";

    /// <summary>What the program begins with: nothing.</summary>
    public static MillCampaigns Start { get; } = new([]);

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() => [.. Campaigns.Where(c => string.IsNullOrWhiteSpace(c.Bin) || c.Until <= c.From || c.TonnesPerHour is not (> 0 and <= 500))
        .Select(c => $"A campaign has a bin, ends after it begins and makes above 0 and at most 500 t/h: that into “{c.Bin}” from {c.From} to {c.Until} at {c.TonnesPerHour} t/h does not.")];

    /// <summary>It as JSON.</summary>
    public static string Write(MillCampaigns campaigns) => PackingJson.Write(campaigns);

    /// <summary>Reads it and checks it; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out MillCampaigns? campaigns, out IReadOnlyList<string> faults) => PackingJson.TryRead(json, c => c.Faults(), out campaigns, out faults);
}
