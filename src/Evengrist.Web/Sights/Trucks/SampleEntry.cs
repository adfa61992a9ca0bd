using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Intake;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>A probe sample as far as it can be read.</summary>
public sealed class SampleEntry
{
    private readonly SampleForm form;
    private readonly Typed typed;
    private readonly List<Finding> findings = [];

    private SampleEntry(SampleForm form, Typed typed) => (this.form, this.typed) = (form, typed);

    /// <summary>What the probe showed, one a property.</summary>
    public IReadOnlyList<Finding> Findings => findings;

    /// <summary>One standard uncertainty of the protein.</summary>
    public decimal? ProteinUncertainty { get; private set; }

    /// <summary>The findings as readings, each with how it is read.</summary>
    public IReadOnlyList<TruckReading> Readings => [.. findings.Select(Reading)];

    /// <summary>Reads a form; faults go to what was typed.</summary>
    public static SampleEntry Read(SampleForm form, Typed typed)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(typed);
        var entry = new SampleEntry(form, typed);
        entry.Read();
        return entry;
    }

    private void Read()
    {
        Find("Moisture", Property.Moisture, typed.Number("Moisture", form.Moisture, "%"), "%");
        Find("Dockage", Property.Dockage, typed.Number("Dockage", form.Dockage, "%"), "%");
        var unit = typed.Text(form.TestWeightUnit) is { Length: > 0 } chosen ? chosen : "kg/hL";
        Find("TestWeight", Property.TestWeight, typed.Number("TestWeight", form.TestWeight, unit), unit);
        Find("FallingNumber", Property.FallingNumber, typed.Number("FallingNumber", form.FallingNumber, "s"), "s");
        Share("Protein", Property.Protein, "Protein", form.Protein, "%", form.ProteinBasis);
        Share("Don", Property.Don, "DON", form.Don, "mg/kg", form.DonBasis);
        ProteinUncertainty = typed.Number("ProteinUncertainty", form.ProteinUncertainty, "%");
        if (ProteinUncertainty is < 0m or > 5m)
        {
            typed.Fault("ProteinUncertainty", "One standard uncertainty of protein lies from 0 to 5 %.");
        }
    }

    private void Share(string field, Property what, string words, string? text, string unit, string? basis)
    {
        if (typed.Share(field, words, text, unit, basis) is { } share)
        {
            Find(field, what, share.Value, unit, share.Basis);
        }
    }

    private void Find(string field, Property what, decimal? value, string unit, Basis basis = default)
    {
        if (value is not { } given)
        {
            return;
        }

        var finding = new Finding(what, given, unit, basis);
        if (finding.Fault is { } fault)
        {
            typed.Fault(field, fault);
        }
        else
        {
            findings.Add(finding);
        }
    }

    private TruckReading Reading(Finding found)
    {
        var instrument = found.What switch
        {
            Property.Moisture or Property.Protein => form.Instrument,
            Property.Dockage => form.DockageTester,
            _ => null,
        };
        return new TruckReading(found.What, found.Value, found.Unit, found.Basis, Method(found.What, form.Method),
            (instrument ?? "").Trim(), found.What == Property.Protein ? ProteinUncertainty : null);
    }

    private static string Method(Property what, string? chosen) => what switch
    {
        Property.Moisture or Property.Protein => (chosen ?? "").Trim() is { Length: > 0 } method ? method : "NIR",
        Property.Dockage => "dockage tester",
        Property.TestWeight => "test weight, fixed volume",
        Property.FallingNumber => "falling number",
        _ => "strip test",
    };
}
