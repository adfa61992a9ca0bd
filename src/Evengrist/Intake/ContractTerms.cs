using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Intake;

/// <summary>What was agreed with a supplier: base price, base moisture, what is deducted, and the scales. Data, kept as JSON; a version once used never changes.</summary>
/// <remarks>Model: docs/model/settlement.md.</remarks>
public sealed record ContractTerms
{
    /// <summary>What people call the contract.</summary>
    public required string Code { get; init; }

    /// <summary>From 1; new terms are a new version.</summary>
    public required int Version { get; init; }

    /// <summary>A longer name, or the supplier; may be empty.</summary>
    public string Name { get; init; } = "";

    /// <summary>Base price for a bushel or a tonne; above zero.</summary>
    public required Price Base { get; init; }

    /// <summary>Whether the wheat is durum, whose test weight has its own equation.</summary>
    public bool Durum { get; init; }

    /// <summary>Whether dockage is taken off the mass.</summary>
    public required bool DeductDockage { get; init; }

    /// <summary>Decimals at which dockage is recorded, in per cent; 1 for wheat (7 CFR 810.104).</summary>
    public int DockageDecimals { get; init; } = 1;

    /// <summary>Whether wheat moister than the base is paid as if dried to it with all dry matter kept.</summary>
    public required bool DryMatterShrink { get; init; }

    /// <summary>Moisture that the base price is for; wheat drier than that gains nothing.</summary>
    public required Moisture BaseMoisture { get; init; }

    /// <summary>Decimals at which moisture is recorded, in per cent.</summary>
    public int MoistureDecimals { get; init; } = 1;

    /// <summary>Premiums, discounts and mass deductions; may be empty.</summary>
    public IReadOnlyList<ContractScale> Scales { get; init; } = [];

    /// <summary>What is taken off the price for what was smelt or seen and is no number, in the currency and unit of the base price; null for nothing.</summary>
    public IReadOnlyList<ObservedCharge>? Observed { get; init; }

    /// <summary>First milling day on which the version is in force; null for always.</summary>
    public LocalDate? From { get; init; }

    /// <summary>Last milling day on which it is in force; null for no end.</summary>
    public LocalDate? Until { get; init; }

    /// <summary><c>F02-HRW v1</c>.</summary>
    public string Title => $"{Code} v{Version}";

    /// <summary>Whether the version is in force on a milling day.</summary>
    public bool InForceOn(LocalDate day) => (From is not { } from || day >= from) && (Until is not { } until || day <= until);

    /// <summary>Properties a load must show before it can be settled.</summary>
    public IReadOnlyList<Property> Needed() => Scales.Where(s => s.NotReadCountsAs is null).Select(s => s.Factor)
        .Concat(DeductDockage ? [Property.Dockage] : [])
        .Concat(DryMatterShrink ? [Property.Moisture] : [])
        .Distinct().Order().ToList();

    /// <summary>Whether the pay hangs on a property.</summary>
    public bool GoesBy(Property what) => Scales.Any(s => s.Factor == what) || (DeductDockage && what == Property.Dockage) || (DryMatterShrink && what == Property.Moisture);

    /// <summary>Every fault of the terms as data, each a sentence; empty where there is none.</summary>
    public IReadOnlyList<string> Faults() => TermsCheck.Of(this).ToList();
}
