using Evengrist.Intake;
using Evengrist.Intake.Deciding;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;
using Evengrist.Records.Intake;
using Evengrist.Web.Sights.Trucks;

namespace Evengrist.Web.Sights.Grades;

/// <summary>A truck before one standard.</summary>
/// <param name="Standard">The standard.</param>
/// <param name="Outcome">What comes of it; null where too little was read to try, or a reading cannot be.</param>
/// <param name="Why">Why there is no outcome; empty where there is.</param>
/// <param name="Address">The page of grades with the truck's findings filled in.</param>
public sealed record TruckGrade(GradeStandard Standard, GradeOutcome? Outcome, string Why, string Address)
{
    // Without one of these nobody has picked a sample, and a list of all that is missing would help no one.
    private static readonly Property[] Picked = [Property.Damaged, Property.ForeignMaterial, Property.ShrunkenAndBroken];

    /// <summary>What was noticed that no grade takes in, for a person to judge.</summary>
    /// <param name="noticed">The words of what was observed on the truck.</param>
    public static IReadOnlyList<string> Ungraded(IReadOnlyList<string> noticed) =>
        [.. noticed.Where(w => w != ObserveLoad.NothingFound && LoadSigns.Find(w) is null or { Graded: GradeObservation.None })];

    /// <summary>The truck before the mill's own class and before the standard it would be shown to inspection under.</summary>
    public static IReadOnlyList<TruckGrade> Of(TruckSight truck, HeldStandards held, IReadOnlyList<string> noticed)
    {
        ArgumentNullException.ThrowIfNull(truck);
        ArgumentNullException.ThrowIfNull(held);
        var findings = truck.Readings.Where(r => r.What is not (Property.GrossWeight or Property.TareWeight)).Select(Finding.Of).ToArray();
        GradeObservation[]? seen = noticed.Count == 0 ? null : [.. noticed.Select(LoadSigns.Find).OfType<LoadSign>().Select(s => s.Graded).Where(g => g != GradeObservation.None).Distinct()];
        var wheat = truck.Truck.Material;
        var house = held.HouseOf(wheat);
        var grades = new List<TruckGrade>();
        if (house is not null)
        {
            grades.Add(Try(house.ToStandard(), "", findings, seen));
        }

        var us = held.Find("us-wheat")!;
        var official = house?.OfficialClass is { Length: > 0 } named ? named : wheat;
        if (us.FindClass(official) is not null)
        {
            grades.Add(seen is { Length: > 0 } || Array.Exists(findings, f => Picked.Contains(f.What)) ? Try(us, official, findings, seen)
                : new(us, null, "No grade factors were picked from this truck's sample.", GradeForm.Address(us, official, findings)));
        }

        return grades;
    }

    private static TruckGrade Try(GradeStandard standard, string wheat, IReadOnlyList<Finding> findings, GradeObservation[]? seen)
    {
        var sample = new GradeSample { Class = wheat, Findings = findings, TakeAsNone = true, Observed = seen };
        var address = GradeForm.Address(standard, wheat, findings) + (seen is null ? "" : "&looked=1") + string.Concat((seen ?? []).Where(standard.Observations.Contains).Select(o => $"&seen={o}"));
        return sample.Faults(standard) is [var fault, ..] ? new(standard, null, fault.Sentence, address) : new(standard, GradeModel.Grade(standard, sample), "", address);
    }
}
