using Evengrist.Ledger;

namespace Evengrist.Laboratory.Samples;

/// <summary>A sample taken for the laboratory: the particulars of a happening of the kind <see cref="HappeningKind.Sampled"/>. The sample is the place and the moment; its readings carry both.</summary>
/// <param name="Code">Number on the jar, typed or scanned; 1 to 40 characters.</param>
/// <param name="Line">Code of the line of the sampling plan it was taken by; empty for one out of turn.</param>
/// <param name="Tests">What it is meant for.</param>
/// <param name="Remark">In the taker's words; may be empty.</param>
public sealed record LabSample(string Code, string Line, IReadOnlyList<SampleTest> Tests, string Remark = "")
{
    /// <summary>Longest code.</summary>
    public const int LongestCode = 40;

    // Samples of trucks are of another form; parsing each of a year's to find that out would take long.
    private const string Begins = "{\"code\":";

    /// <summary>In words: <c>Sample S-1 taken for protein by NIR, ash by NIR</c>.</summary>
    public string Words => $"Sample {Code} taken for {string.Join(", ", Tests.Select(t => t.Words))}{(Remark.Length > 0 ? ": " + Remark : "")}";

    /// <summary>The happening's text: words for people, then the particulars.</summary>
    public string Text => Happening.TextOf(Words, LabJson.WriteShort(this));

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Code.Trim() != Code || Code.Length is 0 or > LongestCode || Code.Any(char.IsControl) ? [$"A sample has a number of 1 to {LongestCode} characters without space at either end."] : Array.Empty<string>(),
        .. SampleTest.Faults($"Sample {Code}", Tests),
    ];

    /// <summary>Reads the particulars of a happening; null where it is no sample of the laboratory.</summary>
    public static LabSample? Of(Happening happening)
    {
        ArgumentNullException.ThrowIfNull(happening);
        return happening.Kind == HappeningKind.Sampled && happening.Particulars.StartsWith(Begins, StringComparison.Ordinal)
            && LabJson.TryRead<LabSample>(happening.Particulars, s => s.Faults(), out var sample, out _) ? sample : null;
    }
}
