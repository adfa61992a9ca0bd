using System.Text.Json;
using Evengrist.Milling.Learning;
using NodaTime;

namespace Evengrist.Plant.Answers;

/// <summary>Kept mill tests.</summary>
public sealed record MillTestsAnswer(IReadOnlyList<KeptMillTestAnswer> Tests);

/// <summary>A kept mill test: what it is called, its version, who kept it and when, and the test as it is kept and can be sent again.</summary>
public sealed record KeptMillTestAnswer(string Code, int Version, string By, string Recorded, JsonElement Test)
{
    /// <summary>A kept test in plain values.</summary>
    public static KeptMillTestAnswer Of(string code, int version, string by, Instant recorded, MillTestPaper paper)
    {
        ArgumentNullException.ThrowIfNull(paper);
        using var read = JsonDocument.Parse(paper.ToJson());
        return new KeptMillTestAnswer(code, version, by, $"{recorded}", read.RootElement.Clone());
    }
}
