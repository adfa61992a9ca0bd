using System.Globalization;
using Evengrist.Packing.Dispatch;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Packing.Rework;
using Evengrist.Web.Sights.Dispatch;
using NodaTime;

namespace Evengrist.Web.Sights.Rework;

/// <summary>An act with a tote as it was typed; which fields count hangs on the act.</summary>
public sealed class ReworkForm
{
    /// <summary>The acts, by name.</summary>
    internal static IReadOnlyList<string> Acts { get; } = ["fill", "feed", "strike"];

    /// <summary>Which act.</summary>
    public string? Act { get; set; }

    /// <summary>Code of the tote.</summary>
    public string? Tote { get; set; }

    /// <summary>Packages that go into it, with commas or blanks between.</summary>
    public string? Packages { get; set; }

    /// <summary>Allergens a person knows to be in it, with commas between.</summary>
    public string? Allergens { get; set; }

    /// <summary>Why.</summary>
    public string? Reason { get; set; }

    /// <summary>The flour bin it is fed into.</summary>
    public string? Bin { get; set; }

    /// <summary>How much, kg; all of it when empty.</summary>
    public string? Kilograms { get; set; }

    /// <summary>When, or from when on, mill time; now when empty.</summary>
    public string? At { get; set; }

    /// <summary>Until when it is fed, mill time; at once when empty.</summary>
    public string? Until { get; set; }

    /// <summary>Does it.</summary>
    internal (bool Done, IReadOnlyList<LoadFinding> Findings) Do(Mill mill, string? act, string? by, Func<string?, Instant?> read, Instant now)
    {
        Instant? at = string.IsNullOrWhiteSpace(At) ? now : read(At), until = string.IsNullOrWhiteSpace(Until) ? null : read(Until);
        decimal? kilograms = decimal.TryParse((Kilograms ?? "").Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var typed) ? typed : null;
        string[] faults =
        [
            .. at is null ? [$"“{At}” is no date and time. Write it like 2026-01-14T10:40."] : Array.Empty<string>(), .. until is null && !string.IsNullOrWhiteSpace(Until) ? [$"“{Until}” is no date and time. Write it like 2026-01-14T10:40."] : Array.Empty<string>(),
            .. !string.IsNullOrWhiteSpace(Kilograms) && kilograms is not (> 0 and <= 100_000) ? [$"“{Kilograms}” is no mass above 0 to 100,000 kg."] : Array.Empty<string>(), .. Acts.Contains(act) ? Array.Empty<string>() : [$"There is no act “{act}” with rework. There are: {string.Join(", ", Acts)}."],
        ];
        if (faults.Length > 0)
        {
            return (false, Stops(faults));
        }

        var who = new Act(by, at!.Value, Reason);
        if (act == "feed")
        {
            return new FeedTote(Tote ?? "", Bin ?? "", kilograms is { } kg ? Mass.FromKilograms(kg) : null, until).In(mill, who);
        }

        var refused = act == "strike" ? FillTote.Strike(mill, Tote ?? "", who)
            : new FillTote(Tote ?? "", [.. LoadForm.Numbers(Packages).Select(p => LoadForm.Resolve(mill, p, who.At))]) { Allergens = [.. (Allergens ?? "").Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)] }.In(mill, who);
        return (refused.Count == 0, Stops(refused));
    }

    private static LoadFinding[] Stops(IReadOnlyList<string> faults) => [.. faults.Select(f => new LoadFinding(FindingWeight.Stop, f))];
}
