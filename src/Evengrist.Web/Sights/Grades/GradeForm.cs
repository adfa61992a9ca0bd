using System.Globalization;
using Evengrist.Intake;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;
using Evengrist.Web.Sights.Trucks;

namespace Evengrist.Web.Sights.Grades;

/// <summary>What was typed on the page of grades, read from its address, and what comes of it.</summary>
public sealed class GradeForm
{
    private readonly IReadOnlyDictionary<string, string> fields;

    private GradeForm(GradeStandard standard, IReadOnlyDictionary<string, string> fields) => (Standard, this.fields) = (standard, fields);

    /// <summary>The standard.</summary>
    public GradeStandard Standard { get; }

    /// <summary>What was typed and cannot be.</summary>
    public Typed Typed { get; } = new();

    /// <summary>What is wrong with the sample as a whole, each a sentence.</summary>
    public IReadOnlyList<string> Faults { get; private set; } = [];

    /// <summary>The grade, or why there is none; null where nothing was asked or something is wrong.</summary>
    public GradeOutcome? Outcome { get; private set; }

    /// <summary>Whether anything was asked.</summary>
    public bool IsAsked => fields.Keys.Any(k => k.StartsWith(Prefix, StringComparison.Ordinal)) || this["class"].Length > 0;

    /// <summary>The properties that have a field, in the order of the standard; dockage where the standard writes it out.</summary>
    public IReadOnlyList<Property> Properties => [.. Standard.Properties, .. Standard.HasDesignation ? [Property.Dockage] : Array.Empty<Property>()];

    private const string Prefix = "f-";

    /// <summary>What was typed in a field; empty for nothing.</summary>
    public string this[string field] => fields.GetValueOrDefault(field, "").Trim();

    /// <summary>Name of the field of a property.</summary>
    public static string Field(Property what) => Prefix + what;

    /// <summary>The unit a property is typed in here, its moisture basis after it where it has one.</summary>
    public string UnitOf(Property what) => Standard.Factors.FirstOrDefault(f => f.What == what) is { } row
        ? row.Unit + (row.MoistureBasis.IsStated ? " " + row.MoistureBasis : "") : Readings.UnitsOf(what)[0];

    /// <summary>The unit test weight is typed in.</summary>
    public string TestWeightUnit => Readings.UnitsOf(Property.TestWeight).Contains(this["tw"]) ? this["tw"] : UnitOf(Property.TestWeight);

    /// <summary>Whether an observation was ticked.</summary>
    public bool Has(GradeObservation observed) => this["seen"].Split(',').Contains(observed.ToString());

    /// <summary>Reads the fields of an address.</summary>
    public static GradeForm Read(GradeStandard standard, IEnumerable<KeyValuePair<string, string>> query)
    {
        var form = new GradeForm(standard, query.GroupBy(q => q.Key).ToDictionary(g => g.Key, g => g.Last().Value));
        if (form.IsAsked)
        {
            form.Grade();
        }

        return form;
    }

    /// <summary>The address that puts findings before a standard on the page of grades, counts and odours not looked for taken as none.</summary>
    public static string Address(GradeStandard standard, string wheat, IEnumerable<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(standard);
        var asked = findings.Where(f => standard.Properties.Contains(f.What) || f.What == Property.Dockage).ToArray();
        var parts = asked.Select(f => $"{Field(f.What)}={Uri.EscapeDataString(f.Value.ToString(CultureInfo.InvariantCulture) + (f.Basis.IsStated ? $" {f.Unit} {f.Basis}" : ""))}")
            .Concat(asked.Where(f => f.What == Property.TestWeight).Select(f => $"tw={Uri.EscapeDataString(f.Unit)}"));
        return $"/intake/grades?standard={Uri.EscapeDataString(standard.Code)}&class={Uri.EscapeDataString(wheat)}&none=1&{string.Join('&', parts)}";
    }

    private void Grade()
    {
        var sample = new GradeSample
        {
            Class = this["class"],
            Leading = this["class"].Equals(ClassModel.Mixed, StringComparison.OrdinalIgnoreCase) ? this["leading"] : "",
            Findings = [.. Properties.Select(FindingOf).OfType<Finding>()],
            Observed = this["looked"].Length > 0 || this["seen"].Length > 0 ? [.. Standard.Observations.Where(Has)] : null,
            TakeAsNone = this["none"].Length > 0,
            Sums = this["sums"] == "unrounded" ? SumPolicy.UnroundedSum : SumPolicy.RecordedParts,
        };
        if (Typed.Faults.Count > 0)
        {
            return;
        }

        Faults = [.. sample.Faults(Standard).Select(f => f.Sentence)];
        Outcome = Faults.Count == 0 ? GradeModel.Grade(Standard, sample) : null;
    }

    private Finding? FindingOf(Property what)
    {
        var (field, text) = (Field(what), this[Field(what)]);
        var unit = what == Property.TestWeight ? TestWeightUnit : Readings.UnitsOf(what)[0];
        Finding? finding = null;
        if (what.NeedsBasis())
        {
            var row = Standard.Factors.First(f => f.What == what);
            finding = Typed.Share(field, what.Words(), text, unit, text.Contains('%', StringComparison.Ordinal) ? null : row.MoistureBasis.ToString()) is { } share ? new(what, share.Value, unit, share.Basis) : null;
        }
        else if (Typed.Number(field, text, unit) is { } value)
        {
            finding = new(what, value, unit);
        }

        if (finding?.Fault is { } fault)
        {
            Typed.Fault(field, fault);
            return null;
        }

        return finding;
    }
}
