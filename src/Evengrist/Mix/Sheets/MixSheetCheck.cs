using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Mix.Sheets;

/// <summary>Finds every fault of a mix sheet. Page: docs/model/mix.md.</summary>
public static class MixSheetCheck
{
    private const double SumTolerance = 0.05;
    private const int LongestText = 400;
    private const double LongestHours = 31 * 24;

    /// <summary>What is wrong with the sheet by itself, each a sentence that says what to do; empty where nothing is.</summary>
    public static IReadOnlyList<string> Faults(MixSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return [.. OfHead(sheet), .. OfGates(sheet), .. OfKept(sheet)];
    }

    /// <summary>What is wrong with it beside the mill: lines and bins that are not there, and time that another sheet has.</summary>
    /// <param name="code">Its own code; a new version of itself is no clash.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="bins">Codes of the wheat bins.</param>
    /// <param name="lines">Codes of the mix lines.</param>
    /// <param name="others">The newest versions of all sheets.</param>
    /// <param name="say">How a moment is written.</param>
    public static IReadOnlyList<string> Against(string code, MixSheet sheet, IReadOnlyCollection<string> bins, IReadOnlyCollection<string> lines, IEnumerable<(string Code, MixSheet Sheet)> others, Func<Instant, string> say)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(say);
        string[] clashes = sheet.Stands
            ? [.. others.Where(o => o.Code != code && o.Sheet.Stands && Same(o.Sheet.Line, sheet.Line) && o.Sheet.From < sheet.Until && sheet.From < o.Sheet.Until)
                .Select(o => $"{sheet.Line} has a sheet for that time: {o.Code}, from {say(o.Sheet.From)} to {say(o.Sheet.Until)}. Correct that one, or begin after it.")]
            : [];
        return
        [
            .. lines.Any(l => Same(l, sheet.Line)) ? Array.Empty<string>() : [$"There is no mix line {sheet.Line}{(lines.Count > 0 ? $": there is {string.Join(", ", lines)}" : "")}."],
            .. sheet.Gates.Where(g => !bins.Any(b => Same(b, g.Bin))).Select(g => $"There is no bin {g.Bin}: look for a typing error."),
            .. clashes,
        ];
    }

    private static IEnumerable<string> OfHead(MixSheet sheet)
    {
        if (string.IsNullOrWhiteSpace(sheet.SetBy))
        {
            yield return "Say who set the mix: a sheet carries a name.";
        }

        if (string.IsNullOrWhiteSpace(sheet.Line) || string.IsNullOrWhiteSpace(sheet.Flour))
        {
            yield return "Say which mix line and which flour it is for.";
        }

        if (sheet.Until <= sheet.From)
        {
            yield return "The sheet ends before it begins: the end has to lie after the beginning.";
        }
        else if (sheet.Hours > LongestHours)
        {
            yield return FormattableString.Invariant($"A sheet holds for at most 31 days; this one for {sheet.Hours / 24:0}.");
        }

        if (!(sheet.TonnesPerHour > 0 && sheet.TonnesPerHour <= 10_000))
        {
            yield return FormattableString.Invariant($"The rate of the mix lies above 0 and up to 10 000 t/h; got {sheet.TonnesPerHour}.");
        }

        foreach (var (name, text) in new[] { ("reason", sheet.Reason), ("reason for withdrawing it", sheet.Withdrawn) })
        {
            if (text.Length > LongestText || text.Any(char.IsControl))
            {
                yield return $"The {name} is one line of at most {LongestText} characters.";
            }
        }

        if (sheet.StepPercent is { } step && !(step > 0 && step <= 100))
        {
            yield return FormattableString.Invariant($"The step of the gates lies above 0 and up to 100 %; got {step}.");
        }
    }

    private static IEnumerable<string> OfGates(MixSheet sheet)
    {
        if (sheet.Gates.Count == 0)
        {
            yield return "No gate is open: give at least one share.";
            yield break;
        }

        foreach (var gate in sheet.Gates)
        {
            if (!(gate.SharePercent > 0 && gate.SharePercent <= 100 + SumTolerance))
            {
                yield return FormattableString.Invariant($"The share of {gate.Bin} lies above 0 and up to 100 %; got {gate.SharePercent}. Leave a shut gate out.");
            }

            if (gate.DialTonnesPerHour is { } dial && !(dial >= 0 && dial <= 10_000))
            {
                yield return FormattableString.Invariant($"The gate of {gate.Bin} is set to 0 t/h or more; got {dial}.");
            }

            if (!(gate.MoisturePercent is >= 0 and <= 60))
            {
                yield return FormattableString.Invariant($"The moisture of {gate.Bin} lies from 0 to 60 %; got {gate.MoisturePercent}.");
            }

            foreach (var value in gate.Values.Where(v => v.What == Property.None || !Enum.IsDefined(v.What) || !double.IsFinite(v.Value) || !(v.OwnUncertainty >= 0) || !(v.InstrumentUncertainty >= 0) || v.What.NeedsBasis() != v.Basis.IsStated || v.What == Property.FallingNumber && v.Value <= 50))
            {
                yield return $"{value.What.Words()} of {gate.Bin} is no value of a wheat, or its moisture basis is missing.";
            }
        }

        foreach (var twice in sheet.Gates.GroupBy(g => g.Bin, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1))
        {
            yield return $"{twice.Key} stands there {twice.Count()} times: give each gate once.";
        }

        if (sheet.Gates.Sum(g => g.SharePercent) is var sum && !(Math.Abs(sum - 100) <= SumTolerance))
        {
            yield return FormattableString.Invariant($"The shares add up to {sum:0.##} %, not to 100 %.");
        }
    }

    private static IEnumerable<string> OfKept(MixSheet sheet)
    {
        if (sheet.IsOffBest && string.IsNullOrWhiteSpace(sheet.Reason))
        {
            yield return "The gates differ from the best mix that was found: say why.";
        }

        if (sheet.Limits.Any(l => l.Least > l.Most))
        {
            yield return "A limit of the sheet has its least above its most.";
        }
    }

    private static bool Same(string left, string right) => left.Equals(right, StringComparison.OrdinalIgnoreCase);
}
