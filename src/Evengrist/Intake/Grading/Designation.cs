using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake.Grading;

/// <summary>Writes the grade out as the standard has it.</summary>
/// <remarks>
/// Order: grade, subclass or class, special grades, dockage (7 CFR 810.106, read in an excerpt). That the subclass of red spring, durum and soft white stands in the place
/// of the class name is from memory. Dockage is recorded to 0.1 % (7 CFR 810.104, 2015 edition) and left out where it is none.
/// </remarks>
internal static class Designation
{
    public static string Of(GradeStandard standard, string grade, ClassFinding wheat, IReadOnlyList<SpecialFinding> special, SampleValues values)
    {
        if (!standard.HasDesignation)
        {
            return standard.IsWhole ? grade : $"{grade}, by the parts of the standard that were read";
        }

        var dockage = values.Read(Property.Dockage, "%", default) is { } found ? Recorded.To(found, 1) : 0m;
        var parts = new List<string> { $"{grade} {wheat.Name} wheat" };
        parts.AddRange(special.Select(s => s.Name));
        if (dockage > 0m)
        {
            parts.Add(string.Create(CultureInfo.InvariantCulture, $"dockage {dockage:0.0} %"));
        }

        return string.Join(", ", parts);
    }
}
