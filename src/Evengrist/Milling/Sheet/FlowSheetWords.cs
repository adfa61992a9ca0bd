using System.Globalization;

namespace Evengrist.Milling.Sheet;

/// <summary>The words for what stands in a flow sheet.</summary>
public static class FlowSheetWords
{
    /// <summary>Every kind a passage can be, in the order of the milling.</summary>
    public static IReadOnlyList<PassageKind> PassageKinds { get; } = [.. Enum.GetValues<PassageKind>().Where(k => k != PassageKind.None)];

    /// <summary>Every way flutes can meet; first none, which is right for smooth rolls.</summary>
    public static IReadOnlyList<Disposition> Dispositions { get; } = Enum.GetValues<Disposition>();

    /// <summary>The kind in words.</summary>
    public static string Words(this PassageKind kind) => kind switch
    {
        PassageKind.Break => "break",
        PassageKind.Sizing => "sizing",
        PassageKind.Reduction => "reduction",
        PassageKind.Purifying => "purifier",
        PassageKind.Finishing => "finisher",
        PassageKind.Grading => "grader",
        _ => "not said",
    };

    /// <summary>The disposition in words.</summary>
    public static string Words(this Disposition disposition) => disposition switch
    {
        Disposition.SharpToSharp => "sharp to sharp",
        Disposition.SharpToDull => "sharp to dull",
        Disposition.DullToSharp => "dull to sharp",
        Disposition.DullToDull => "dull to dull",
        _ => "smooth",
    };

    /// <summary>The kind in words.</summary>
    public static string Words(this ProductKind kind) => kind switch
    {
        ProductKind.Flour => "flour",
        ProductKind.Bran => "bran",
        ProductKind.Wheatfeed => "wheatfeed",
        ProductKind.Germ => "germ",
        _ => "not said",
    };

    /// <summary>What an outlet of a passage carries, as "overs of 1120 µm".</summary>
    /// <param name="passage">The passage.</param>
    /// <param name="outlet">Its place among <see cref="Passage.Outlets"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The passage has no such outlet.</exception>
    public static string Outlet(this Passage passage, int outlet)
    {
        ArgumentNullException.ThrowIfNull(passage);
        var cloth = passage.Lifted.Count > 0 ? outlet - 1 : outlet;
        ArgumentOutOfRangeException.ThrowIfLessThan(outlet, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(cloth, passage.Cloths.Count, nameof(outlet));
        return cloth < 0 ? "what the air lifts" : cloth == passage.Cloths.Count ? "the rest" : passage.Cloths[cloth].Words;
    }

    /// <summary>A number of a sheet as it is read: no more decimals than it has, at most six.</summary>
    public static string Number(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);
}
