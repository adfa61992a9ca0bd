using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Season;

/// <summary>Faults as they are found.</summary>
internal sealed class FaultList
{
    public List<SeasonFault> Found { get; } = [];

    public void Add(string where, string what) => Found.Add(new SeasonFault(where, what));

    /// <summary>Notes a number that lies outside its range or is none; gives whether it is good.</summary>
    public bool Number(string where, double value, double least, double most = double.MaxValue, bool above = false)
    {
        if (double.IsFinite(value) && value >= least && value <= most && !(above && value == least))
        {
            return true;
        }

        var range = most == double.MaxValue ? $"a number {(above ? "above" : "of at least")} {Shown(least)} is needed" : $"a number {(above ? "above" : "from")} {Shown(least)} {(above ? "and at most" : "to")} {Shown(most)} is needed";
        Add(where, $"it is {Shown(value)}; {range}.");
        return false;
    }

    public void Codes(string of, IEnumerable<string> codes)
    {
        foreach (var group in codes.GroupBy(c => c, StringComparer.Ordinal))
        {
            if (string.IsNullOrWhiteSpace(group.Key))
            {
                Add(of, "one has no code; give it one.");
            }
            else if (group.Count() > 1)
            {
                Add($"{of} {group.Key}", $"the code stands {group.Count()} times; each needs its own.");
            }
        }
    }

    public void Quality(string where, SeasonQuality quality)
    {
        foreach (var (what, value) in quality.Values)
        {
            var at = $"{where}, {NameOf(what)}";
            if (Known(at, what) && Number(at, value.Value, LeastOf(what), what == Property.FallingNumber ? 1000 : double.MaxValue))
            {
                Number($"{at}, spread", value.Spread, 0);
                Basis(at, what, value.Basis);
            }
        }
    }

    public bool Known(string where, Property what)
    {
        if (Enum.IsDefined(what) && what != Property.None && SeasonScale.Averages(what))
        {
            return true;
        }

        Add(where, Enum.IsDefined(what) && what != Property.None ? "this property does not average in a mix; a plan cannot limit it." : "there is no such property.");
        return false;
    }

    public void Basis(string where, Property what, Basis basis)
    {
        if (what.NeedsBasis() != basis.IsStated)
        {
            Add(where, basis.IsStated ? "it has no moisture basis; leave the basis out." : "its moisture basis is missing: dry, 12mb, 14mb or another.");
        }
    }

    // Where the scale of the blend is a reciprocal, zero cannot be.
    public static double LeastOf(Property what) => what switch { Property.FallingNumber => 60, Property.ThousandKernelWeight => 1, _ => 0 };

    public static string NameOf(Property what) => Enum.IsDefined(what) && what != Property.None ? what.Words() : $"property {(int)what}";

    public static string Shown(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
