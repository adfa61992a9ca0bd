using System.Globalization;
using Evengrist.Packing.Dispatch;
using Evengrist.Plant.Gs1;
using Evengrist.Records;
using Evengrist.Records.Packing;
using Evengrist.Records.Packing.Dispatch;
using NodaTime;

namespace Evengrist.Web.Sights.Dispatch;

/// <summary>An act at the ramp as it was typed or scanned; which fields count hangs on the act.</summary>
public sealed class LoadForm
{
    /// <summary>The acts, by name.</summary>
    internal static IReadOnlyList<string> Acts { get; } = ["scan", "unload", "check", "history", "seal", "unseal", "turn-away", "depart", "return"];

    /// <summary>Which act.</summary>
    public string? Act { get; set; }

    /// <summary>Code of a package, or any scanned text that leads to it.</summary>
    public string? Code { get; set; }

    /// <summary>Why, or what was seen.</summary>
    public string? Reason { get; set; }

    /// <summary>Code of a point of the check list.</summary>
    public string? Point { get; set; }

    /// <summary><c>yes</c> or <c>no</c>: whether the point was found good.</summary>
    public string? Good { get; set; }

    /// <summary>What the trailer carried before.</summary>
    public string? Previous { get; set; }

    /// <summary>Number of the wash ticket.</summary>
    public string? Wash { get; set; }

    /// <summary>Temperature inside, °C.</summary>
    public string? Celsius { get; set; }

    /// <summary>Numbers of the seals, with commas or blanks between.</summary>
    public string? Seals { get; set; }

    /// <summary>When, mill time; now when empty.</summary>
    public string? At { get; set; }

    /// <summary>Does the act.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="number">The load.</param>
    /// <param name="act">Which act.</param>
    /// <param name="by">Who.</param>
    /// <param name="at">When; null where what was typed is no moment.</param>
    internal LoadAnswer Do(Mill mill, string? number, string? act, string? by, Instant? at)
    {
        if (at is not { } when)
        {
            return Stop($"“{At}” is no date and time. Write it like 2026-01-14T10:40.");
        }

        var who = new Act(by, when, Reason);
        return act switch
        {
            "scan" => new ScanPackage(number ?? "", Resolve(mill, Code, when)).In(mill, who),
            "unload" => Change(l => LoadActs.TakeOff(l, Resolve(mill, Code, when), who)),
            "check" when Good is "yes" or "no" => Change(l => LoadActs.Answer(l, Point ?? "", Good == "yes", KeepDispatchRules.Newest(mill).Rules, who)),
            "check" => Stop("Say whether the point is good: yes or no."),
            "history" => Temperature(out var celsius) ? Change(l => LoadActs.Ask(l, Previous ?? "", Wash ?? "", celsius, who)) : Stop($"“{Celsius}” is no temperature in °C."),
            "seal" => Change(l => LoadActs.Seal(l, Numbers(Seals), who)),
            "unseal" => Change(l => LoadActs.Unseal(l, who)),
            "turn-away" => Change(l => LoadActs.TurnAway(l, who)),
            "depart" => new SendOff(number ?? "", Numbers(Seals)).In(mill, who),
            "return" => new TakeBack(number ?? "", Resolve(mill, Code, when)).In(mill, who),
            _ => Stop($"There is no act “{act}” at the ramp. There are: {string.Join(", ", Acts)}."),
        };

        LoadAnswer Change(Func<DispatchLoad, LoadAnswer> then) => DispatchShelf.Change(mill, number, by, then);
    }

    /// <summary>The package a scanned or typed text leads to; the text itself where it leads to none.</summary>
    internal static string Resolve(Mill mill, string? text, Instant at) =>
        ScanReading.Of(text, at.InZone(mill.Settings.Zone).Year).Keys is { } keys && ScannedPlaces.Of(mill, keys, at).Units is [var unit, ..] ? unit.Place.Code : (text ?? "").Trim();

    /// <summary>Numbers with commas or blanks between them.</summary>
    internal static string[] Numbers(string? text) => (text ?? "").Split([',', ';', ' ', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static LoadAnswer Stop(string words) => new(null, [new(FindingWeight.Stop, words)]);

    private bool Temperature(out decimal? celsius)
    {
        var text = (Celsius ?? "").Trim().Replace('−', '-').Replace(',', '.');
        celsius = decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var read) ? read : null;
        return text.Length == 0 || celsius is not null;
    }
}
