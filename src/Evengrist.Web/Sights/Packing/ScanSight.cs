using Evengrist.Plant.Answers;
using Evengrist.Plant.Gs1;
using Evengrist.Records;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>One scanned or typed text: what it says, where it leads, and when it was scanned before.</summary>
/// <param name="Text">The text.</param>
/// <param name="Reading">What it says.</param>
/// <param name="Answer">The other ways to write it; null where it is no text of GS1.</param>
/// <param name="Places">Where it leads; null where it cannot be read.</param>
/// <param name="Product">The product whose trade item number it says; empty where none.</param>
/// <param name="Earlier">Kept scans of the same pallet before this one.</param>
/// <param name="AgainAt">The line of the same paste on which the same pallet stands already; 0 where it does not.</param>
public sealed record ScanSight(string Text, ScanReading Reading, Gs1Answer? Answer, ScannedPlaces? Places, string Product, IReadOnlyList<UnitScan> Earlier, int AgainAt)
{
    /// <summary>Most texts read at once.</summary>
    public const int Most = 200;

    /// <summary>Reads texts, one on each line. A separator may be typed as <c>&lt;GS&gt;</c>.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="text">The lines.</param>
    /// <param name="asOf">The moment looked at.</param>
    /// <param name="year">This year, for the century of dates.</param>
    /// <param name="keep">Who keeps the scans and when; null where they are only looked at.</param>
    public static IReadOnlyList<ScanSight> Of(Mill mill, string? text, Instant asOf, int year, (string By, Instant At)? keep = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var (sights, seen) = (new List<ScanSight>(), new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase));
        var (products, prefix) = (Products.Newest(mill), KeepUnitNumbering.Newest(mill).Numbering.Prefix.Length);
        foreach (var line in (text ?? "").Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Take(Most))
        {
            var reading = ScanReading.Of(line.Replace("<GS>", "\u001d", StringComparison.Ordinal), year);
            var places = reading.Keys is { } keys ? ScannedPlaces.Of(mill, keys, asOf) : null;
            var unit = places?.Units is [var one, ..] ? one.Place.Code : null;
            sights.Add(new(line, reading, reading.Elements is { } elements ? Gs1Answer.Of(elements, prefix is >= 6 and <= 12 ? prefix : null, year) : null, places,
                reading.Keys?.Item is { } item ? products.Select(p => p.Product).FirstOrDefault(p => p.PackNumber == item || p.CaseNumber == item) is { } product ? $"{product.Code}, {product.Name}" : "" : "",
                unit is null ? [] : UnitScan.Of(mill, unit), unit is not null && seen.TryGetValue(unit, out var before) ? before : 0));
            if (unit is not null)
            {
                seen.TryAdd(unit, sights.Count);
                if (keep is { } by)
                {
                    UnitScan.Keep(mill, unit, new UnitScan(by.At, by.By, line));
                }
            }
        }

        return sights;
    }
}
