namespace Evengrist.Intake.Carrying;

/// <summary>How much of the last grain a route gives to the next load: a share that falls off with every tonne that passes.</summary>
/// <remarks>
/// The defaults are not a fit to wheat: they pass through the upper bounds published for a receiving pit and leg at 47 t/h with corn
/// (Trans. ASAE 46(6):1625-1631: at most 1 % after 38 s, at most 0.5 % within the first tonne). Model: docs/model/carry-over.md.
/// </remarks>
public sealed record CarryOverSpec
{
    /// <summary>Kilograms found in boot and pit in the published trial.</summary>
    public const double PublishedResidue = 120;

    /// <summary>Share of the last grain in the first of what passes, fraction; 0 ≤ share ≤ 1.</summary>
    public double FirstShare { get; init; } = 0.02;

    /// <summary>Tonnes over which the share falls to 1/e, at the published residue; above 0.</summary>
    public double Length { get; init; } = 0.716;

    /// <summary>Kilograms that stay in the boot of this site's leg when it runs empty; above 0. Scales the length.</summary>
    public double BootResidue { get; init; } = PublishedResidue;

    /// <summary>Whether the residue was measured on the site; otherwise every answer says that it was not.</summary>
    public bool IsMeasured { get; init; }

    /// <summary>Tonnes over which the share falls to 1/e on this site.</summary>
    internal double SiteLength => Length * BootResidue / PublishedResidue;

    /// <summary>Every fault, each a sentence; empty where there is none.</summary>
    public IReadOnlyList<string> Faults()
    {
        var faults = new List<string>();
        if (FirstShare is not (>= 0 and <= 1))
        {
            faults.Add("The share of the last grain in the first of the load lies from 0 to 1.");
        }

        if (!(Length > 0) || !(BootResidue > 0) || double.IsInfinity(Length) || double.IsInfinity(BootResidue))
        {
            faults.Add("The length in tonnes and the residue of the boot in kilograms lie above 0.");
        }

        return faults;
    }
}
