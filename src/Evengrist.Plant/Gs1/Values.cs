using System.Globalization;
using Evengrist.Plant.Gs1.Table;

namespace Evengrist.Plant.Gs1;

/// <summary>Holds a value against the parts of its identifier.</summary>
internal static class Values
{
    /// <summary>What is wrong with a value; nothing where it is right.</summary>
    public static IReadOnlyList<ValueFault> Faults(ApplicationIdentifier identifier, string value, int year)
    {
        var faults = new List<ValueFault>();
        var at = 0;
        foreach (var part in identifier.Parts)
        {
            var left = value.Length - at;
            if (left == 0 && part.MayLack)
            {
                return faults;
            }

            if (left < part.Least)
            {
                faults.Add(new ValueFault(0, value, $"{Lengths(identifier)} of {identifier.Words}"));
                return faults;
            }

            var taken = value.Substring(at, Math.Min(left, part.Most));
            if (CharacterSets.FirstOther(part.Set, taken) is >= 0 and var other)
            {
                faults.Add(new ValueFault(at + other, taken[other..], $"{identifier.Words} of {CharacterSets.Words(part.Set)} alone"));
            }
            else
            {
                faults.AddRange(part.Checks.Select(c => c.Expected(taken, year)).OfType<string>().Take(1).Select(e => new ValueFault(at, taken, e)));
            }

            at += taken.Length;
        }

        if (at < value.Length)
        {
            faults.Add(new ValueFault(at, value[at..], $"{Lengths(identifier)} of {identifier.Words}{(identifier.IsPredefined ? "" : "; a separator may be missing before what follows it")}"));
        }

        return faults;
    }

    private static string Lengths(ApplicationIdentifier identifier) => string.Create(
        CultureInfo.InvariantCulture, $"{(identifier.Least == identifier.Most ? "" : identifier.Parts.Count == 1 ? $"{identifier.Least} to " : "at most ")}{identifier.Most} characters");
}
