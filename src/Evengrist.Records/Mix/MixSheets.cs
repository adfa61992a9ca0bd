using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Mix.Sheets;
using NodaTime;

namespace Evengrist.Records.Mix;

/// <summary>The mix sheets a mill keeps: papers by version, nothing lost.</summary>
public static class MixSheets
{
    /// <summary>Keeps a sheet, or a new version of one; every fault where it cannot be, and then nothing is kept.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="sheet">The sheet; where it brings no expected values they are reckoned from its own gates.</param>
    /// <param name="code">The code of the sheet it corrects; null for a new one.</param>
    /// <param name="by">Who records it.</param>
    public static (KeptSheet? Kept, IReadOnlyList<string> Faults) Keep(Mill mill, MixSheet sheet, string? code, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(sheet);
        var zone = mill.Settings.Zone;
        var all = Newest(mill);
        if (code is not null && all.All(k => k.Code != code))
        {
            return (null, [$"There is no sheet {code} to correct."]);
        }

        var name = code ?? CodeOf(sheet, zone);
        if (code is null && all.FirstOrDefault(k => k.Code == name) is { } there)
        {
            return (null, [$"The sheet {there.Code} is kept already: correct that one."]);
        }

        var (bins, lines) = mill.Ask(view => (Codes(view, PlaceKind.Bin), Codes(view, PlaceKind.MixLine)));
        string[] faults =
        [
            .. string.IsNullOrWhiteSpace(by) ? ["Say who you are first: every record carries a name."] : Array.Empty<string>(),
            .. MixSheetCheck.Faults(sheet), .. MixSheetCheck.Against(name, sheet, bins, lines, all.Select(k => (k.Code, k.Sheet)), at => Say(at, zone)),
        ];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        var whole = sheet.Expected.Count > 0 ? sheet : sheet with { Expected = sheet.ExpectedOfGates() };
        var version = mill.Papers(MixSheet.Kind).KeepNext(name, MixSheetJson.Write(whole), by);
        return (Read(mill.Papers(MixSheet.Kind).Find(name, version)!), []);
    }

    /// <summary>The code of a new sheet: mix line and beginning by the mill's clock.</summary>
    public static string CodeOf(MixSheet sheet, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(zone);
        return $"{sheet.Line} {Say(sheet.From, zone)}";
    }

    /// <summary>The newest version of every sheet, the newest time first.</summary>
    public static IReadOnlyList<KeptSheet> Newest(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(MixSheet.Kind).NewestOfEach().Select(Read).OfType<KeptSheet>().OrderByDescending(k => k.Sheet.From).ThenBy(k => k.Code, StringComparer.Ordinal)];
    }

    /// <summary>All versions of a sheet, the first first; empty where there is none.</summary>
    public static IReadOnlyList<KeptSheet> Versions(Mill mill, string code)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(MixSheet.Kind).All().Where(p => p.Code == code).Select(Read).OfType<KeptSheet>()];
    }

    private static string[] Codes(MillView view, PlaceKind kind) => [.. view.Book.OfKind(kind).Select(p => p.Code)];

    private static KeptSheet? Read(Paper paper) => MixSheetJson.TryRead(paper.Json, out var sheet, out _) ? new KeptSheet(paper.Code, paper.Version, paper.By, paper.Recorded, sheet) : null;

    private static string Say(Instant at, DateTimeZone zone) => at.InZone(zone).LocalDateTime.ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
