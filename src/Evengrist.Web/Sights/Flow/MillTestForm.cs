using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Quantities;
using Evengrist.Records.Milling;
using Evengrist.Web.Sights.Season;
using NodaTime;

namespace Evengrist.Web.Sights.Flow;

/// <summary>A mill test as a person enters or corrects it; nothing typed is lost.</summary>
public sealed class MillTestForm
{
    /// <summary>Reads the fields.</summary>
    /// <param name="typed">What was typed; nothing where the form was not sent.</param>
    /// <param name="sheet">The newest flow sheet of the unit.</param>
    /// <param name="before">What the fields begin with: the test that is corrected, or the newest one for its wheat; null where there is none.</param>
    /// <param name="corrects">Whether <paramref name="before"/> is corrected: unit and time then stay.</param>
    /// <param name="read">Reads a moment of the mill's clock.</param>
    /// <param name="now">The moment offered.</param>
    public MillTestForm(Func<string, string?> typed, KeptFlowSheet sheet, MillTestPaper? before, bool corrects, Func<string?, Instant?> read, string now)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(read);
        Fields = new TypedFields(typed);
        var (old, wheat) = (corrects ? before : null, before?.Wheat);
        var taken = old is null ? read(Fields.Text("taken", now)) : old.TakenAt;
        var (by, version, remark) = (Fields.Text("by", old?.TakenBy ?? ""), Fields.Needed("sheet", "Version of the flow sheet", old?.SheetVersion ?? sheet.Version), Fields.Text("remark", old?.Remark ?? ""));
        var (flow, moisture, ash, protein) = (Fields.Needed("flow", "Wheat to first break", wheat?.TonnesPerHour), Fields.Needed("moisture", "Moisture at first break", wheat?.MoisturePercent), Fields.Needed("ash", "Ash of the wheat", wheat?.AshPercent), Fields.Needed("protein", "Protein of the wheat", wheat?.ProteinPercent));
        var (hardness, number) = (Fields.Needed("hardness", "Hardness index", wheat?.Hardness ?? 65), Fields.Needed("fn", "Falling number", wheat?.FallingNumber ?? 350));
        var (wheatBasis, basis) = (Read("wheat-basis", "Basis of the wheat", wheat?.Basis ?? Basis.Dry), Read("basis", "Basis of the streams", before?.Basis ?? Basis.At14));
        var releases = TypedLines.Of(Fields, "releases", "Release tests", "B1 29.5", 1, 1, TypedLines.Text(old?.Releases.Select(r => (r.Key, (double?[])[r.Value])) ?? []));
        var sieves = TypedLines.Of(Fields, "sieves", "Sieve analyses", "B1 1000 52", 2, 2, TypedLines.Text(old?.Sieves.Select(s => (s.Passage, (double?[])[s.ApertureMicrometres, s.ThroughPercent])) ?? []));
        var streams = TypedLines.Of(Fields, "streams", "Streams", "1M 14.2 0.37 11.0", 1, 3, TypedLines.Text(old?.Streams.Select(s => (s.Product, (double?[])[s.YieldPercent, s.AshPercent, s.ProteinPercent])) ?? []));
        var gaps = TypedLines.Of(Fields, "gaps", "Gaps", "B1 480", 1, 1, TypedLines.Text(old?.Set.GapMicrometres.Select(g => (g.Key, (double?[])[g.Value])) ?? []));
        var airs = TypedLines.Of(Fields, "airs", "Air of purifiers", "P1 0.9", 1, 1, TypedLines.Text(old?.Set.AirMetresPerSecond.Select(g => (g.Key, (double?[])[g.Value])) ?? []));
        var cloths = TypedLines.Of(Fields, "cloths", "Cloths", "B1 1120 1000", 2, 2, TypedLines.Text(old?.Set.Cloths.Select(c => (c.Passage, (double?[])[c.FromMicrometres, c.ToMicrometres])) ?? []));
        if (taken is null)
        {
            Fields.Fault($"Taken at: a day and time such as 2025-09-22T09:00 is needed; read “{Fields["taken"]}”.");
        }

        if (version is not (>= 1 and <= 100_000) || version != Math.Floor(version))
        {
            Fields.Fault($"Version of the flow sheet: 1 to {sheet.Version} are possible; read “{Fields["sheet"]}”.");
        }

        foreach (var (words, twice) in Twice(("Release tests", releases), ("Gaps", gaps), ("Air of purifiers", airs)))
        {
            Fields.Fault($"{words}: {twice} stands there twice; give it once, the mean of repeats.");
        }

        if (Fields.Faults.Count > 0)
        {
            return;
        }

        Paper = new MillTestPaper(sheet.Unit, taken!.Value, by, (int)version, new PosedWheat(flow, moisture, ash, protein, wheatBasis) { Hardness = hardness, FallingNumber = number, ThicknessMillimetres = wheat?.ThicknessMillimetres ?? 2.9, BranPercent = wheat?.BranPercent ?? 15 })
        {
            Basis = basis, Remark = remark,
            Releases = Map(releases), Sieves = [.. sieves.Select(s => new SieveReading(s.Name, s.Numbers[0]!.Value, s.Numbers[1]!.Value))],
            Streams = [.. streams.Select(s => new PosedStream(s.Name, s.Numbers[0]!.Value) { AshPercent = s.Numbers[1], ProteinPercent = s.Numbers[2] })],
            Set = new SheetChange { GapMicrometres = Map(gaps), AirMetresPerSecond = Map(airs), Cloths = [.. cloths.Select(c => new ClothChange(c.Name, c.Numbers[0]!.Value, c.Numbers[1]!.Value))], Outlets = old?.Set.Outlets ?? [] },
        };
    }

    /// <summary>The fields.</summary>
    public TypedFields Fields { get; }

    /// <summary>The test; null where something cannot be read.</summary>
    public MillTestPaper? Paper { get; }

    private Basis Read(string key, string words, Basis otherwise)
    {
        if (Basis.TryParse(Fields.Text(key, otherwise.ToString()), out var basis))
        {
            return basis;
        }

        Fields.Fault($"{words}: dry, 12mb or 14mb are possible; read “{Fields[key]}”.");
        return otherwise;
    }

    private static Dictionary<string, double> Map(IEnumerable<(string Name, double?[] Numbers)> lines) => lines.ToDictionary(l => l.Name, l => l.Numbers[0]!.Value, StringComparer.Ordinal);

    private static IEnumerable<(string Words, string Name)> Twice(params (string Words, IReadOnlyList<(string Name, double?[] Numbers)> Lines)[] fields) =>
        fields.SelectMany(f => f.Lines.GroupBy(l => l.Name, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => (f.Words, g.Key)));
}
