using System.Globalization;
using Evengrist.Laboratory.Lots;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>A decision as it was typed.</summary>
public sealed class LotForm
{
    /// <summary>The verdicts a person chooses from, and what each does.</summary>
    internal static IReadOnlyList<(LotVerdict Value, string Says)> Verdicts { get; } =
        [(LotVerdict.Release, "Release: it may go"), (LotVerdict.Hold, "Hold: nothing of it leaves"), (LotVerdict.Rework, "Rework: stays on hold until it is fed back"), (LotVerdict.Downgrade, "Downgrade: it may go as another flour")];

    /// <summary>The verdict by name.</summary>
    public string? Verdict { get; set; }

    /// <summary>Which flour a downgraded lot goes as.</summary>
    public string? As { get; set; }

    /// <summary>Why.</summary>
    public string? Reason { get; set; }

    /// <summary>When, mill time.</summary>
    public string? At { get; set; }

    /// <summary>How many decisions were seen.</summary>
    public string? Seen { get; set; }

    /// <summary>The entry; null with every fault where a field cannot be read.</summary>
    internal DecideLot? Entry(string lot, string specification, Func<string?, Instant?> read, out IReadOnlyList<string> faults)
    {
        var (at, isVerdict, isCount) = (read(At), Enum.TryParse<LotVerdict>(Verdict, out var verdict) && Enum.IsDefined(verdict), int.TryParse(Seen, NumberStyles.None, CultureInfo.InvariantCulture, out var seen));
        faults =
        [
            .. isVerdict && verdict != LotVerdict.None ? Array.Empty<string>() : ["Choose what is decided: release, hold, rework or downgrade."],
            .. at is null ? [$"“{At}” is no date and time. Write it like 2026-01-14T10:40."] : Array.Empty<string>(),
        ];
        return faults.Count > 0 ? null : new DecideLot(lot, verdict, Reason ?? "", at!.Value) { As = As ?? "", Specification = specification, Seen = isCount ? seen : null };
    }
}
