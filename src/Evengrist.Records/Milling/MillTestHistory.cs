using Evengrist.Milling.Drift;
using Evengrist.Milling.Learning;
using Evengrist.Milling.Sheet;
using NodaTime;

namespace Evengrist.Records.Milling;

/// <summary>The tests of a unit that its mill model is tuned to.</summary>
/// <param name="Unit">The unit.</param>
/// <param name="Sheet">Its newest flow sheet.</param>
/// <param name="Tests">Its tests that stand, the first taken first.</param>
/// <param name="LeftOut">What was left out and why, each a sentence.</param>
public sealed record MillTestHistory(string Unit, FlowSheet Sheet, IReadOnlyList<DatedTest> Tests, IReadOnlyList<string> LeftOut)
{
    /// <summary>What it was gathered from, in versions: the same where nothing has changed.</summary>
    public string Mark { get; private init; } = "";

    /// <summary>The tests alone.</summary>
    public IReadOnlyList<MillTest> MillTests => [.. Tests.Select(t => t.Test)];

    /// <summary>The tests of a unit taken by a moment; null where no flow sheet of it is kept.</summary>
    /// <remarks>Those taken with other passages, cloths or first break are left out: what they tell is of another mill.</remarks>
    public static MillTestHistory? Of(Mill mill, string unit, Instant until)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (FlowSheets.Versions(mill, unit) is not { Count: > 0 } sheets)
        {
            return null;
        }

        var (newest, keys) = (sheets[^1].Sheet, MillTuning.None(sheets[^1].Sheet).Keys);
        var fits = sheets.ToDictionary(s => s.Version, s => MillTuning.None(s.Sheet).Keys.SequenceEqual(keys));
        KeptMillTest[] kept = [.. Milling.MillTests.Newest(mill).Where(t => t.Stands && t.Paper.Unit == unit && t.Paper.TakenAt <= until).OrderBy(t => t.Paper.TakenAt)];
        return new MillTestHistory(
            unit, newest,
            [.. kept.Where(t => fits.GetValueOrDefault(t.Paper.SheetVersion)).Select(t => new DatedTest(t.Paper.TakenAt, t.Paper.On(t.Code, sheets.First(s => s.Version == t.Paper.SheetVersion).Sheet)))],
            [.. kept.Where(t => !fits.GetValueOrDefault(t.Paper.SheetVersion)).Select(t => $"{t.Code} is left out: flow sheet version {t.Paper.SheetVersion} had other passages, cloths or first break than version {sheets[^1].Version}.")])
        {
            Mark = $"{unit} {sheets[^1].Version}: {string.Join(' ', kept.Select(t => $"{t.Code}/{t.Version}"))}",
        };
    }
}
