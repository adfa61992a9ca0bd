using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Intake.Sampling;

/// <summary>The particulars of a sample that was taken from a load.</summary>
/// <param name="Pattern">Code of the rule it was taken by, see <see cref="ProbePatterns"/>.</param>
/// <param name="Cuts">Probes or cuts taken, 1 to 1000.</param>
/// <param name="CompositeGrams">The composite, g; above 0, at most 100 kg.</param>
/// <param name="RetainedId">Number on the retained part; empty where nothing was kept.</param>
/// <param name="Shelf">Where it stands; empty where nothing was kept.</param>
/// <param name="KeepUntil">The last day it must be kept, <c>2026-01-05</c>; empty where nothing was kept.</param>
public sealed record SampleTaken(string Pattern, int Cuts, int CompositeGrams, string RetainedId = "", string Shelf = "", string KeepUntil = "")
{
    /// <summary>Whether a part was kept.</summary>
    public bool IsRetained => RetainedId.Length > 0;

    /// <summary>The last day the retained part must be kept; null where none was kept.</summary>
    public LocalDate? LastDay => LocalDatePattern.Iso.Parse(KeepUntil) is { Success: true } day ? day.Value : null;

    /// <summary>What cannot be, each a sentence; empty where all can.</summary>
    public IReadOnlyList<string> Faults() => [.. new[]
    {
        ProbePatterns.Find(Pattern) is null ? $"There is no rule \"{Pattern}\": choose {string.Join(", ", ProbePatterns.All.Select(p => p.Code))}." : null,
        Cuts is >= 1 and <= 1000 ? null : "1 to 1000 probes or cuts are taken.",
        CompositeGrams is >= 1 and <= 100_000 ? null : "A composite weighs 1 g to 100 kg.",
        IsRetained && string.IsNullOrWhiteSpace(Shelf) ? "Say on which shelf the retained sample stands." : null,
        IsRetained && LastDay is null ? "Say until when the retained sample is kept, like 2026-01-05." : null,
        !IsRetained && (Shelf.Length > 0 || KeepUntil.Length > 0) ? "Give the retained sample a number, or leave shelf and date out." : null,
    }.OfType<string>()];

    /// <summary>In words, for people: one line.</summary>
    public string Words
    {
        get
        {
            var rule = ProbePatterns.Find(Pattern);
            var what = rule?.Spread == PointSpread.Stream ? "cuts" : "probes";
            var kept = IsRetained ? $"; kept as {RetainedId} on shelf {Shelf} until {KeepUntil}" : "; nothing kept";
            return $"Sampled by {rule?.Name ?? Pattern}: {Cuts} {what}, {Shown.Digits(CompositeGrams / 1000m, 2)} kg{kept}.";
        }
    }

    /// <summary>As the text of a <see cref="HappeningKind.Sampled"/>: the words, and the particulars as JSON.</summary>
    public string Text => Happening.TextOf(Words, SamplingJson.Write(this));

    /// <summary>The sample a happening tells of; null where it is another kind or its particulars cannot be read.</summary>
    public static SampleTaken? Of(Happening happening)
    {
        ArgumentNullException.ThrowIfNull(happening);
        return happening.Kind == HappeningKind.Sampled && SamplingJson.Read<SampleTaken>(happening.Particulars).Read is { } taken && taken.Faults().Count == 0 ? taken : null;
    }
}
