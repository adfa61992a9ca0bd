using Evengrist.Laboratory.Lots;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>Instruments that were found to have read wrong: papers by instrument, property and beginning; a correction is the next version.</summary>
public static class InstrumentsFoundWrong
{
    /// <summary>Every finding in its newest version.</summary>
    public static IReadOnlyList<FoundWrong> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(FoundWrong.Kind).NewestOfEach().Read<FoundWrong>(FoundWrong.TryRead).Select(p => p.Value)];
    }

    /// <summary>Keeps a finding; every fault where it cannot be, and then nothing is kept.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="span">The instrument and its span.</param>
    /// <param name="by">Who found it: one of those who may decide of lots.</param>
    /// <param name="at">When.</param>
    public static IReadOnlyList<string> Keep(Mill mill, WrongSpan span, string by, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(span);
        var rules = KeepReleaseRules.Newest(mill).Rules;
        string[] faults =
        [
            .. span.Fault is { } fault ? [fault] : Array.Empty<string>(),
            .. string.IsNullOrWhiteSpace(by) ? ["Say who you are first: every record carries a name."] : rules.MayDecide(by) ? Array.Empty<string>() : [rules.Refusal(by, "decide of lots")],
        ];
        if (faults.Length == 0)
        {
            var found = new FoundWrong(span, by.Trim(), at);
            mill.Papers(FoundWrong.Kind).KeepNext(found.Code, found.ToJson(), found.By);
        }

        return faults;
    }
}
