using Evengrist.Intake.Grading;
using Evengrist.Records;
using Evengrist.Records.Intake;

namespace Evengrist.Web.Sights.Grades;

/// <summary>Every standard a sample can be put before: the published ones and the mill's own classes in their newest version.</summary>
public sealed class HeldStandards
{
    private HeldStandards(IReadOnlyList<HouseClass> house) => House = house;

    /// <summary>The mill's own classes.</summary>
    public IReadOnlyList<HouseClass> House { get; }

    /// <summary>All of them, the published ones first.</summary>
    public IReadOnlyList<GradeStandard> All => [.. Standards.All, .. House.Select(h => h.ToStandard())];

    /// <summary>Reads the mill's shelf.</summary>
    public static HeldStandards Of(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return new([.. HouseClasses.Newest(mill).Select(h => h.House)]);
    }

    /// <summary>A standard by its code; null where there is none.</summary>
    public GradeStandard? Find(string? code) => All.FirstOrDefault(s => s.Code.Equals((code ?? "").Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>The mill's own class of a name; null where there is none.</summary>
    public HouseClass? HouseOf(string wheat) => House.FirstOrDefault(h => h.Code.Equals(wheat, StringComparison.OrdinalIgnoreCase));
}
