using System.Globalization;
using Evengrist.Laboratory.Calibration;
using Evengrist.Plant.Imports;
using Evengrist.Plant.Spectra;
using Evengrist.Plant.Tables;

namespace Evengrist.Plant.Cases;

/// <summary>How spectra are to be calibrated, posed in JSON.</summary>
/// <param name="Property">Heading of the column of references.</param>
public sealed record PlsCase(string Property)
{
    /// <summary>The spectra as CSV or JCAMP-DX text; left out where they come in a file of their own.</summary>
    public string? Spectra { get; init; }

    /// <summary>Unit of the references.</summary>
    public string Unit { get; init; } = "%";

    /// <summary>Their basis.</summary>
    public string Basis { get; init; } = "";

    /// <summary>The reference method.</summary>
    public string Method { get; init; } = "";

    /// <summary>What is done to the spectra, in order.</summary>
    public IReadOnlyList<PretreatmentStep> Treatment { get; init; } = [];

    /// <summary>Factors up to which is looked.</summary>
    public int MostFactors { get; init; } = 12;

    /// <summary>Factors to take.</summary>
    public int? Factors { get; init; }

    /// <summary>By which rule they are chosen else.</summary>
    public FactorChoice Choice { get; init; } = FactorChoice.OneStandardError;

    /// <summary>Segments of cross-validation.</summary>
    public int Parts { get; init; } = 10;

    /// <summary>Whether one sample, or group, is left out at a time instead.</summary>
    public bool LeaveOneOut { get; init; }

    /// <summary>Heading of the column that says which samples belong together.</summary>
    public string? Group { get; init; }

    /// <summary>Which samples are kept back.</summary>
    public PosedKeptBack? KeepBack { get; init; }

    /// <summary>Names of samples to leave out.</summary>
    public IReadOnlyList<string> LeaveOut { get; init; } = [];

    /// <summary>First channel that is used.</summary>
    public double? From { get; init; }

    /// <summary>Last channel that is used.</summary>
    public double? To { get; init; }

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        $$"""
        {
          "property": heading of the column of references, "unit"?: "%", "basis"?: "12mb", "method"?,
          "spectra"?: the file as a text, CSV (a row for each sample: id, references, w1100, w1102 …) or JCAMP-DX (a block for each; references as ##$PROTEIN=),
          "treatment"?: [ { "kind": "snv" } | { "kind": "msc" } | { "kind": "savitzkyGolay", "half": neighbours on each side, "degree", "derivative" } ... ],
          "mostFactors"?: 12, "factors"?: how many to take, "choice"?: {{string.Join(" | ", Enum.GetNames<FactorChoice>().Select(n => $"\"{n}\""))}},
          "parts"?: 10 segments, "leaveOneOut"?: true, "group"?: heading of what must stay together (truck, replicates, crop year),
          "keepBack"?: { "column", "is" } or { "every": each how manieth }, "leaveOut"?: [ names of samples ], "from"?, "to"?: channels used
        }
        """,
        """
        { "property": "protein", "basis": "12mb", "mostFactors": 1, "leaveOneOut": true,
          "spectra": "id,protein,w1100,w1200,w1300\na,10.0,0.30,0.41,0.52\nb,11.0,0.31,0.43,0.55\nc,12.1,0.30,0.44,0.57\nd,12.9,0.32,0.47,0.61\ne,11.6,0.31,0.44,0.57\n" }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<PlsCase> Read(Stream stream) => SeasonCase.ReadAs<PlsCase>(stream).Then(posed => posed.Treatment.Any(t => t is null) ? Parsing.Failed<PlsCase>(Fault.AtPath("$.treatment", "null in a list", "a step with its kind")) : Parsing.Got(posed));

    /// <summary>The question it poses of spectra that came in a file of their own, or of its own where there is none.</summary>
    public Parsed<CalibrationSpec> Pose(SpectraTable? file = null) =>
        (file is not null ? Parsing.Got(file) : Spectra is { } text ? SpectraTable.Read(text) : Parsing.Failed<SpectraTable>(Fault.AtPath("$.spectra", "", "the spectra as CSV or JCAMP-DX text")))
        .Then(table => table.Between(From, To)).Then(Samples);

    private Parsed<CalibrationSpec> Samples(SpectraTable table)
    {
        List<Fault> faults = [];
        Known(table, "$.property", Property, faults);
        Known(table, "$.group", Group, faults);
        Known(table, "$.keepBack.column", KeepBack?.Column, faults);
        var names = table.Rows.Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        faults.AddRange(LeaveOut.Where(id => !names.Contains(id)).Select(id => Fault.AtPath("$.leaveOut", id, "the name of a sample of the file")));
        if (KeepBack is { } back && (back.Column is null) == (back.Every is null) || KeepBack is { Every: < 2 })
        {
            faults.Add(Fault.Told("$.keepBack", "Give a column and what stands in it, or every which sample is kept back, 2 or more."));
        }

        if (faults.Count > 0)
        {
            return Parsing.Failed<CalibrationSpec>(faults);
        }

        var left = LeaveOut.ToHashSet(StringComparer.Ordinal);
        List<CalibrationSample> samples = [];
        foreach (var (number, row) in table.Rows.Index().Where(r => !left.Contains(r.Item.Id)))
        {
            var (text, column) = row.Columns.GetValueOrDefault(Property);
            if (Numbers.Of(new Cell(text ?? ""), table.Mark) is not { } reference)
            {
                faults.Add(new Fault(row.Line, column > 0 ? column : null, Property, Fault.Show(text ?? ""), $"the reference as a number; or name {Fault.Show(row.Id)} under leaveOut"));
                continue;
            }

            var kept = KeepBack is { Every: { } every } ? number % every == every - 1 : KeepBack is { Column: { } where } && row.Columns.GetValueOrDefault(where).Text == KeepBack.Is;
            samples.Add(new(row.Id, row.Values, (double)reference, Group is null || row.Columns.GetValueOrDefault(Group).Text is not { Length: > 0 } group ? null : group, kept));
        }

        var spec = new CalibrationSpec(table.Axis, samples, new(Property, Unit, Basis, Method))
        {
            Pretreatment = new(Treatment), MostFactors = MostFactors, Factors = Factors, Choice = Choice, Parts = LeaveOneOut ? null : Parts,
        };
        return faults.Count > 0 ? Parsing.Failed<CalibrationSpec>([.. faults.Take(SpectraTable.MostFaults)])
            : spec.Faults() is { Count: > 0 } wrong ? Parsing.Failed<CalibrationSpec>([.. wrong.Take(SpectraTable.MostFaults).Select(f => Fault.Told("$", f))])
            : Parsing.Got(spec);
    }

    private static void Known(SpectraTable table, string path, string? column, List<Fault> faults)
    {
        if (column is not null && !table.Columns.Contains(column, StringComparer.OrdinalIgnoreCase))
        {
            faults.Add(Fault.AtPath(path, column, table.Columns.Count == 0 ? "a column of the file; it has none beside the spectra" : string.Create(CultureInfo.InvariantCulture, $"one of the file's columns: {string.Join(", ", table.Columns.Take(20).Select(Fault.Show))}")));
        }
    }
}

/// <summary>Which samples are kept back to validate: those with a text in a column, or each so manieth.</summary>
public sealed record PosedKeptBack
{
    /// <summary>Heading of a column.</summary>
    public string? Column { get; init; }

    /// <summary>What stands in it.</summary>
    public string Is { get; init; } = "";

    /// <summary>2 or more: the second of two, the fourth of four.</summary>
    public int? Every { get; init; }
}
