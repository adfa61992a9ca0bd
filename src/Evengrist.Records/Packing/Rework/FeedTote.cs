using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;
using Evengrist.Packing.Rework;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Packing.Rework;

/// <summary>Feeds a tote, or a part of it, into a flour bin: one movement, after what stands against it was looked at.</summary>
/// <param name="Tote">The tote.</param>
/// <param name="Bin">The flour bin.</param>
/// <param name="Mass">How much; all of it where null.</param>
/// <param name="Until">When it ended; null for at once.</param>
public sealed record FeedTote(string Tote, string Bin, Mass? Mass = null, Instant? Until = null)
{
    /// <summary>Feeds it: what was said, with no stop and no question unanswered where it was done.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="who">Who, from when on, and why where something is asked.</param>
    public (bool Done, IReadOnlyList<LoadFinding> Findings) In(Mill mill, Act who)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(who);
        var bin = mill.Ask(view => view.Book.Find(Bin ?? ""));
        var seen = ReworkLedger.Find(mill, Tote, who.At);
        string[] faults =
        [
            .. who.By.Length == 0 ? ["Say who you are first: every record carries a name."] : Array.Empty<string>(), .. seen is null ? [$"There is no tote {Tote} with anything in it by then."] : Array.Empty<string>(),
            .. bin is not { Kind: PlaceKind.FlourBin } ? [$"{Bin} is no flour bin."] : bin.Material.Length == 0 ? [$"{bin.Code} does not say which flour it holds."] : Array.Empty<string>(),
            .. Mass is { } mass && mass <= Quantities.Mass.Zero ? ["How much is above zero."] : Array.Empty<string>(), .. seen is { Tote.Grams: 0 } ? [$"{seen.Tote.Code} is empty: all of it was fed."] : Array.Empty<string>(),
        ];
        if (faults.Length > 0)
        {
            return (false, [.. faults.Select(f => new LoadFinding(FindingWeight.Stop, f))]);
        }

        var findings = ReworkModel.Of(seen!.Tote, ReworkLedger.Run(mill, bin!.Material, who.At), KeepReworkRules.Newest(mill).Rules).Findings;
        if (LoadFinding.Bar(findings, who.Reason))
        {
            return (false, findings);
        }

        try
        {
            var fed = Mass ?? Quantities.Mass.FromGrams(seen.Tote.Grams);
            mill.Record([new Move($"{seen.Tote.Code} fed {who.At.ToMicros()}", seen.Tote.Code, bin.Code, fed, who.At, Until) { Note = $"rework {seen.Tote.Code} into {bin.Material}{(who.Reason.Length > 0 ? $": {who.Reason}" : "")}" }], who.By, "rework");
            return (true, findings);
        }
        catch (LedgerRefusal refusal)
        {
            return (false, [.. findings, new(FindingWeight.Stop, refusal.Message)]);
        }
    }
}
