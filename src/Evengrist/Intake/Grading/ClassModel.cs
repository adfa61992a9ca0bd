using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake.Grading;

/// <summary>Determines class and subclass.</summary>
/// <remarks>
/// Shares are recorded to the whole per cent before they are compared (7 CFR 810.104). Mixed: less than 90 % of one class and more than 10 % of one other or of
/// others together (7 CFR 810.2202), 2015 edition. Model: docs/model/grades.md.
/// </remarks>
public static class ClassModel
{
    /// <summary>Name of wheat of several classes.</summary>
    public const string Mixed = "Mixed";

    private const decimal LeastOfOne = 90m;
    private const decimal MostOfOthers = 10m;

    /// <summary>The class and subclass of a sample that has no <see cref="GradeSample.Faults"/>.</summary>
    public static ClassFinding Of(GradeStandard standard, GradeSample sample, SampleValues values)
    {
        var how = new List<string>();
        var wheat = Leading(standard, sample)!;
        var named = standard.FindClass(sample.Class)?.Subclass?.Name ?? "";
        var mixed = IsMixed(standard, sample, values, wheat, how);
        if (mixed || wheat.Subclasses.Count == 0)
        {
            return new(wheat, "", mixed, how, []);
        }

        var (subclass, missing) = SubclassOf(wheat, values, how);
        if (subclass.Length == 0 && named.Length > 0)
        {
            how.Add($"{named}, as said; what the subclass rests on was not given.");
            return new(wheat, named, false, how, []);
        }

        if (named.Length > 0 && subclass != named)
        {
            how.Add($"Said to be {named}; what was found makes it {subclass}.");
        }

        return new(wheat, subclass, false, how, missing);
    }

    /// <summary>The class whose limits hold: the one said, or the largest of the composition; null where it cannot be told.</summary>
    public static WheatClass? Leading(GradeStandard standard, GradeSample sample)
    {
        ArgumentNullException.ThrowIfNull(standard);
        ArgumentNullException.ThrowIfNull(sample);
        if (sample.Composition.Count > 0)
        {
            return standard.FindClass(sample.Composition.MaxBy(c => c.Percent)!.Class)?.Class;
        }

        return sample.Class.Length == 0 && standard.Classes is [var only] ? only
            : standard.FindClass(IsCalledMixed(sample.Class) ? sample.Leading : sample.Class)?.Class;
    }

    internal static bool IsCalledMixed(string text) => text.Trim().Equals(Mixed, StringComparison.OrdinalIgnoreCase);

    private static bool IsMixed(GradeStandard standard, GradeSample sample, SampleValues values, WheatClass wheat, List<string> how)
    {
        if (!standard.HasMixed)
        {
            return false;
        }

        if (sample.Composition.Count > 0)
        {
            var largest = Recorded.To(sample.Composition.Max(c => c.Percent), 0);
            var others = Recorded.To(values.Read(Property.OtherClasses, "%", default)!.Value, 0);
            var mixed = largest < LeastOfOne && others > MostOfOthers;
            how.Add(Invariant($"{wheat.Name} makes up {largest} % and other classes {others} %, recorded to the whole per cent: {(mixed ? "less than 90 % of one class and more than 10 % of others is mixed wheat" : "no mixed wheat")}."));
            Edge(mixed, values.Read(Property.OtherClasses, "%", default)!.Value, how);
            return mixed;
        }

        if (IsCalledMixed(sample.Class))
        {
            how.Add($"Mixed, as said; {wheat.Name} predominates and gives the limits.");
            return true;
        }

        if (wheat.Name == UsWheatClasses.Unclassed || values.Read(Property.OtherClasses, "%", default) is not { } found)
        {
            return false;
        }

        var toMixed = Recorded.To(found, 0) > MostOfOthers;
        if (toMixed)
        {
            how.Add(Invariant($"Other classes of {Recorded.To(found, 0)} %, recorded to the whole per cent, are more than 10 %: it is mixed wheat, in which {wheat.Name} predominates."));
        }

        Edge(toMixed, found, how);
        return toMixed;
    }

    private static void Edge(bool mixed, decimal others, List<string> how)
    {
        if (!mixed && Recorded.To(others, 1) > MostOfOthers)
        {
            how.Add(Invariant($"Other classes of {Recorded.To(others, 1)} % are 10 % when recorded as a class and above the table's 10.0 % as a factor; the text read does not say which goes first. The class is kept and the factor decides."));
        }
    }

    private static (string Subclass, IReadOnlyList<string> Missing) SubclassOf(WheatClass wheat, SampleValues values, List<string> how)
    {
        foreach (var subclass in wheat.Subclasses)
        {
            var held = subclass.Conditions.Select(c => c.Holds(values)).ToArray();
            if (held.All(h => h == true))
            {
                how.Add($"{subclass.Name}: {string.Join(" and ", subclass.Conditions)}, recorded to the whole per cent.");
                return (subclass.Name, []);
            }

            if (held.All(h => h != false))
            {
                return ("", [.. subclass.Conditions.Where(c => c.Holds(values) is null).Select(c => c.What.Words()).Distinct()]);
            }
        }

        return ("", [.. wheat.Subclasses.SelectMany(s => s.Conditions).Select(c => c.What.Words()).Distinct()]);
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
