using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Packing.Codes;
using Evengrist.Plant;
using Evengrist.Plant.Prints.Labels;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>Which pallets are to be labelled, and the labels of pallets and bags.</summary>
public static class LabelPick
{
    /// <summary>Most pallets labelled at once.</summary>
    public const int Most = 60;

    /// <summary>Codes typed, parted by blanks, commas or line ends; each once.</summary>
    public static IReadOnlyList<string> Typed(string? text) => [.. (text ?? "").Split([' ', ',', ';', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries).Distinct(StringComparer.OrdinalIgnoreCase).Take(Most)];

    /// <summary>Pallets of a product that were packed on a milling day, the newest first.</summary>
    public static IReadOnlyList<string> Of(Mill mill, string product, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (Products.Find(mill, product) is not { } wanted)
        {
            return [];
        }

        var (rules, settings) = (KeepReleaseRules.Newest(mill).Rules, mill.Settings);
        return mill.Ask(view => new FlourLots(rules, settings.Zone, settings.DayStart).Of(view.Book, day, day).Where(l => l.Flour.Equals(wanted.Flour, StringComparison.OrdinalIgnoreCase)).SelectMany(l => l.Packages)
            .Where(p => p.Place.Kind == PlaceKind.Pallet && p.Place.Name == wanted.PackedAs).OrderByDescending(p => p.PackedAt).ThenByDescending(p => p.Place.Code, StringComparer.Ordinal).Select(p => p.Place.Code).ToArray());
    }

    /// <summary>The label of a bag of a product's lot, or every reason why there is none.</summary>
    public static Parsed<Label> Bag(Mill mill, string product, string lot, LabelSize size, int year)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(lot);
        var (rules, settings) = (KeepReleaseRules.Newest(mill).Rules, mill.Settings);
        var (kept, found) = (Products.Find(mill, product), mill.Ask(view => new FlourLots(rules, settings.Zone, settings.DayStart).Find(view.Book, lot)));
        string[] against =
        [
            .. kept is null or { PackGrams: 0 } ? [$"There is no product “{product}” in packs."] : Array.Empty<string>(),
            .. kept is { Label: null } ? [$"{kept.Code} has no approved label: a named person approves it on the page of the product."] : Array.Empty<string>(),
            .. kept is { PackNumber: null, PackGrams: > 0 } ? [$"{kept.Code} has no trade item number: give it one on the page of the product."] : Array.Empty<string>(),
            .. found is null ? [$"There is no lot {lot} in the ledger."] : Array.Empty<string>(),
            .. found is not null && kept is not null && !found.Flour.Equals(kept.Flour, StringComparison.OrdinalIgnoreCase) ? [$"Lot {found.Code} is of {found.Flour}; {kept.Code} is of {kept.Flour}."] : Array.Empty<string>(),
        ];
        return against.Length > 0 ? Parsing.Failed<Label>([.. against.Select(a => Fault.Told("label", a))])
            : LotCode.TryParse(found!.Code, out var code, out var refusal) ? BagLabel.Draw(new LabelCase(settings.Name + (settings.IsDemonstration ? " (an invented mill)" : ""), kept!.Name, kept.PackNumber!, kept.Pack.Kilograms, code, PackDates.BestBefore(found.Day, kept.ShelfMonths), kept.AllergensBeyondWheat) { Made = found.Day }, null, size, year)
            : Parsing.Failed<Label>(Fault.Told("label", refusal));
    }
}
