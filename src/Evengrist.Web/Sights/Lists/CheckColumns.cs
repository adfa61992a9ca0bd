using Evengrist.Numerics.Reconciling;
using Evengrist.Quantities.Lists;

namespace Evengrist.Web.Sights.Lists;

/// <summary>Measurements beside their reconciled values, as every balance shows them and as the columns of a list.</summary>
public static class CheckColumns
{
    /// <summary>What the constraints know of a quantity, in words.</summary>
    public static string Words(this Standing standing) => standing switch
    {
        Standing.Redundant => "checked by the others",
        Standing.NotRedundant => "checked by nothing",
        Standing.Observable => "found from the others",
        _ => "not to be found",
    };

    /// <summary>Whether a quantity of a mill's balance is a share, by its name.</summary>
    public static bool IsShareOfMill(string name) => name.StartsWith("moisture", StringComparison.Ordinal) || name.StartsWith("share", StringComparison.Ordinal);

    /// <summary>Whether a quantity of a survey held against weighers is a share, by its name.</summary>
    public static bool IsShareOfSurvey(string name) => name.StartsWith("ash of ", StringComparison.Ordinal) || name.StartsWith("protein of ", StringComparison.Ordinal);

    /// <summary>What stands in such a table.</summary>
    public static IEnumerable<Adjusted> Rows(GrossErrorOutcome check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return check.First is Balanced all ? all.Values.Where(v => v.Unknown.StandardUncertainty is not 0) : [];
    }

    /// <summary>The columns: shares in per cent, all else in one unit.</summary>
    public static ListOf<Adjusted> Of(Func<string, bool> isShare, ListUnit unit)
    {
        ListUnit In(Adjusted value) => isShare(value.Unknown.Name) ? ListUnit.Percent : unit;
        double Times(Adjusted value) => isShare(value.Unknown.Name) ? 100 : 1;
        return new ListOf<Adjusted>().Text("what", v => v.Unknown.Name).Text("unit", v => In(v).Symbol).Text("UN/ECE code of the unit", v => In(v).Code)
            .Number("measured", ListOrigin.Seen, null, v => v.Unknown.IsMeasured ? (decimal)(Times(v) * v.Unknown.Value) : null).Number("one standard uncertainty of it", ListOrigin.Stated, null, v => v.Unknown.StandardUncertainty is { } u ? (decimal)(Times(v) * u) : null)
            .Reckoned("reconciled", null, v => v.Standing == Standing.NotObservable ? null : Times(v) * v.Value).Reckoned("one standard uncertainty of the reconciled", null, v => Times(v) * v.StandardUncertainty).Reckoned("z", null, v => v.Z).Text("standing", v => v.Standing.Words());
    }
}
