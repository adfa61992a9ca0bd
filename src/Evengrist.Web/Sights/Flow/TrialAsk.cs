using System.Globalization;
using Evengrist.Milling.Draws;
using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Milling.Sheet;
using Evengrist.Quantities;
using Evengrist.Records.Milling;
using Evengrist.Records.Streams;
using Evengrist.Web.Sights.Season;

namespace Evengrist.Web.Sights.Flow;

/// <summary>A trial of a mill unit on paper, as a person typed it.</summary>
public sealed class TrialAsk
{
    /// <summary>Reads the fields.</summary>
    /// <param name="typed">What was typed; nothing where the form was not sent.</param>
    /// <param name="sheet">The unit's flow sheet.</param>
    /// <param name="survey">Its newest stream survey; null where none is kept.</param>
    /// <param name="history">Its kept mill tests; null where none are.</param>
    public TrialAsk(Func<string, string?> typed, FlowSheet sheet, KeptSurvey? survey, MillTestHistory? history = null)
    {
        (Fields, Sheet) = (new TypedFields(typed), sheet);
        var flow = Fields.Needed("flow", "Wheat to first break", survey?.Survey.WheatTonnesPerHour ?? (sheet.TonnesPerDay is { } day ? Math.Round(day / 24, 2) : 10));
        var (moisture, ash, protein) = (Fields.Needed("moisture", "Moisture at first break", 16), Fields.Needed("ash", "Ash of the wheat", 1.7), Fields.Needed("protein", "Protein of the wheat", 14.4));
        var (hardness, number) = (Fields.Needed("hardness", "Hardness index", 65), Fields.Needed("fn", "Falling number", 380));
        Basis = Basis.TryParse(Fields.Text("basis", "dry"), out var basis) ? basis : Basis.Dry;
        var posed = new PosedWheat(flow, moisture, ash, protein, Basis) { Hardness = hardness, FallingNumber = number };
        Note(Fields.Faults.Count > 0 ? [] : posed.Faults());
        OtherWheat = Other(posed);
        Note(Fields.Faults.Count > 0 ? [] : (OtherWheat?.Faults() ?? []).Select(f => $"Wheat tried: {f}"));
        var cloths = Lines("cloths", "Cloths", "B1 1120 1000", 3).Select(l => new ClothChange(l.Name, l.Numbers[0], l.Numbers[1])).ToArray();
        var releases = Lines("releases", "Release tests", "B1 29.5", 2).Select(l => new ReleaseReading(l.Name, l.Numbers[0])).ToArray();
        Change = new SheetChange
        {
            GapMicrometres = Set(sheet.Passages.Where(p => p.Rolls is not null), GapField, "Gap"), AirMetresPerSecond = Set(sheet.Passages.Where(p => p.AirMetresPerSecond is not null), AirField, "Air"),
            Cloths = cloths, Outlets = Spouts(),
        };
        Note(Fields.Faults.Count > 0 ? [] : Change.Faults(sheet));
        string[] patent = [.. Fields.Text("patent", "").Split((char[])[' ', ',', ';', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries)];
        Note(patent.Where(c => sheet.Products.All(p => p.Code != c)).Select(c => $"Streams together: there is no product {c} on the flow sheet."));
        Sets = patent.Length > 0 ? [new ProductSet("the streams together", patent)] : [];
        var (flour, feed) = (Fields.Number("flour", "Price of flour"), Fields.Number("feed", "Price of feed"));
        Prices = flour is null && feed is null ? null : sheet.Products.ToDictionary(p => p.Code, p => (decimal)((p.Kind is ProductKind.Flour ? flour : feed) ?? 0));
        var draws = Fields.Number("draws", "Mills drawn");
        Note(draws is { } asked && DrawsSpec.FaultOf(asked) is { } few ? [few] : []);
        IsHistoryAsked = Fields.Text("tests", "no") == "yes";
        var surveyed = Fields.Text("survey", "yes") != "no";
        if (Fields.Faults.Count > 0)
        {
            return;
        }

        (Wheat, Draws) = (posed, (int?)draws);
        StreamReading[] streams = survey is null || !surveyed ? [] :
            [.. survey.Survey.Table.Streams.Where(s => sheet.Products.Any(p => p.Code == s.Code)).Select(s => new StreamReading(s.Code, s.Yield, s.AshPercent * survey.Survey.Table.Basis.ToDry, s.ProteinPercent * survey.Survey.Table.Basis.ToDry))];
        Tests = [.. IsHistoryAsked ? history?.MillTests ?? [] : [], .. streams.Length + releases.Length == 0 ? Array.Empty<MillTest>() : [new MillTest("now", sheet, posed.Of()) { Streams = streams, Releases = releases }]];
        Note(Tests.SelectMany(t => t.Faults()));
    }

    /// <summary>The fields.</summary>
    public TypedFields Fields { get; }

    /// <summary>The flow sheet as it is set.</summary>
    public FlowSheet Sheet { get; }

    /// <summary>Basis of ash and protein.</summary>
    public Basis Basis { get; }

    /// <summary>The wheat; null where something cannot be read.</summary>
    public PosedWheat? Wheat { get; private set; }

    /// <summary>What was measured of the mill as it is set.</summary>
    public IReadOnlyList<MillTest> Tests { get; private set; } = [];

    /// <summary>Whether the mill is to be tuned to its kept tests.</summary>
    public bool IsHistoryAsked { get; }

    /// <summary>What its tests were gathered from: the same where nothing has changed.</summary>
    public string MarkOf(MillTestHistory? history) => string.Join('|', [IsHistoryAsked ? history?.Mark ?? "" : "", .. Tests.Where(t => t.Name == "now").Select(t => $"{Wheat} {string.Join(' ', t.Streams)} {string.Join(' ', t.Releases)}")]);

    /// <summary>The settings tried.</summary>
    public SheetChange Change { get; }

    /// <summary>Streams looked at together.</summary>
    public IReadOnlyList<ProductSet> Sets { get; }

    /// <summary>Price of each product, money a tonne; null where none was given.</summary>
    public IReadOnlyDictionary<string, decimal>? Prices { get; }

    /// <summary>How many mills are to be drawn; null for none.</summary>
    public int? Draws { get; private set; }

    /// <summary>Whether anything is tried.</summary>
    public bool Tries => Change.GapMicrometres.Count + Change.AirMetresPerSecond.Count + Change.Cloths.Count + Change.Outlets.Count > 0;

    /// <summary>The wheat tried; null for the same.</summary>
    public PosedWheat? OtherWheat { get; }

    /// <summary>Name of the field for a passage's gap.</summary>
    public static string GapField(Passage passage) => $"gap-{passage?.Code}";

    /// <summary>Name of the field for a purifier's air.</summary>
    public static string AirField(Passage passage) => $"air-{passage?.Code}";

    // What is left empty stays as the wheat at first break.
    private PosedWheat? Other(PosedWheat wheat)
    {
        double? Tried(string key, string words) => Fields.Number($"then-{key}", $"{words} tried");
        var (flow, moisture, ash, protein) = (Tried("flow", "Flow"), Tried("moisture", "Moisture"), Tried("ash", "Ash"), Tried("protein", "Protein"));
        var (hardness, number) = (Tried("hardness", "Hardness"), Tried("fn", "Falling number"));
        return (flow ?? moisture ?? ash ?? protein ?? hardness ?? number) is null ? null
            : new PosedWheat(flow ?? wheat.TonnesPerHour, moisture ?? wheat.MoisturePercent, ash ?? wheat.AshPercent, protein ?? wheat.ProteinPercent, Basis) { Hardness = hardness ?? wheat.Hardness, FallingNumber = number ?? wheat.FallingNumber };
    }

    private Dictionary<string, double> Set(IEnumerable<Passage> passages, Func<Passage, string> field, string words)
        => passages.Select(p => (p.Code, Number: Fields.Number(field(p), $"{words} of {p.Code}"))).Where(p => p.Number is not null).ToDictionary(p => p.Code, p => p.Number!.Value, StringComparer.Ordinal);

    private List<OutletChange> Spouts()
    {
        List<OutletChange> changes = [];
        foreach (var line in Fields.Text("spouts", "").Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var parts = line.Split((char[])[' ', '\t'], 3, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            if (parts.Length < 3 || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var outlet))
            {
                Fields.Fault($"Spouts: a line with passage, number of the outlet and where it goes is needed, as “B1 2 B3”; read “{line}”.");
            }
            else if (SpoutText.TryRead(parts[2], out var to, out var fault))
            {
                changes.Add(new OutletChange(parts[0], outlet, to));
            }
            else
            {
                Fields.Fault($"Spouts: {line}: {fault}.");
            }
        }

        return changes;
    }

    private void Note(IEnumerable<string> faults)
    {
        foreach (var fault in faults)
        {
            Fields.Fault(fault);
        }
    }

    private List<(string Name, double[] Numbers)> Lines(string key, string words, string example, int cells)
    {
        List<(string, double[])> lines = [];
        foreach (var line in Fields.Text(key, "").Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var parts = line.Split((char[])[' ', '\t', ',', ';'], StringSplitOptions.RemoveEmptyEntries);
            var numbers = parts.Skip(1).Select(p => double.TryParse(p, NumberStyles.Float, CultureInfo.InvariantCulture, out var n) ? n : double.NaN).ToArray();
            if (parts.Length == cells && numbers.All(double.IsFinite))
            {
                lines.Add((parts[0], numbers));
            }
            else
            {
                Fields.Fault($"{words}: a line such as “{example}” is needed; read “{line}”.");
            }
        }

        return lines;
    }
}
