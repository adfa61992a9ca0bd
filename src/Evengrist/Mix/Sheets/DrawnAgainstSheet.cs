using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Mix.Sheets;

/// <summary>What a gate gave in the time of a sheet.</summary>
/// <param name="Bin">The bin.</param>
/// <param name="Tonnes">Weighed, t.</param>
/// <param name="Hours">Hours in which it gave wheat.</param>
public sealed record GateDraw(string Bin, double Tonnes, double Hours);

/// <summary>A gate: set and drawn.</summary>
/// <param name="Bin">The bin.</param>
/// <param name="SetPercent">Share that was set, per cent; 0 for a bin that is not on the sheet.</param>
/// <param name="DrawnPercent">Share that was drawn, per cent.</param>
/// <param name="DrawnUncertainty">One standard uncertainty of the share drawn from the weighers alone, points.</param>
/// <param name="SetTonnes">Set for the hours in which wheat was drawn, t.</param>
/// <param name="DrawnTonnes">Drawn, t.</param>
public sealed record DrawnGate(string Bin, double SetPercent, double DrawnPercent, double DrawnUncertainty, double SetTonnes, double DrawnTonnes)
{
    /// <summary>Drawn less set, points of the mix.</summary>
    public double Points => DrawnPercent - SetPercent;

    /// <summary>Drawn less set, t.</summary>
    public double Tonnes => DrawnTonnes - SetTonnes;

    /// <summary>Whether the difference is more than the weighers' ± explains.</summary>
    public bool IsBeyondWeighers => Math.Abs(Points) > 2 * DrawnUncertainty;
}

/// <summary>A property of the wheat: on the sheet, and by the shares that were really drawn, from the same values of the bins.</summary>
/// <param name="What">The property.</param>
/// <param name="Basis">Its basis.</param>
/// <param name="Sheet">Expected on the sheet.</param>
/// <param name="SheetUncertainty">One standard uncertainty of it.</param>
/// <param name="Drawn">Expected of what was drawn.</param>
/// <param name="DrawnUncertainty">One standard uncertainty of it.</param>
public sealed record DrawnQuality(Property What, Basis Basis, double Sheet, double SheetUncertainty, double Drawn, double DrawnUncertainty);

/// <summary>What was set on a sheet beside what was drawn. Page: docs/model/mix.md.</summary>
/// <param name="Gates">Every gate that was set or gave wheat, those of the sheet first.</param>
/// <param name="Hours">Hours in which any gate gave wheat.</param>
/// <param name="Qualities">Expected quality; empty where a bin that gave wheat is not on the sheet.</param>
/// <param name="Remarks">What cannot be told, each a sentence.</param>
public sealed record DrawnAgainstSheet(IReadOnlyList<DrawnGate> Gates, double Hours, IReadOnlyList<DrawnQuality> Qualities, IReadOnlyList<string> Remarks)
{
    /// <summary>Relative standard uncertainty of a weigher where the mill states none: a belt scale in fair order [memory].</summary>
    public const double UsualWeigher = 0.0025;

    /// <summary>Drawn in all, t.</summary>
    public double DrawnTonnes => Gates.Sum(g => g.DrawnTonnes);

    /// <summary>Set in all for the hours drawn, t.</summary>
    public double SetTonnes => Gates.Sum(g => g.SetTonnes);

    /// <summary>Compares them; null where nothing was drawn.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="draws">What each gate gave, each bin once.</param>
    /// <param name="hours">Hours in which any gate gave wheat, above 0 where anything was drawn.</param>
    /// <param name="weigher">Relative standard uncertainty of each gate's weigher by itself, 0 or more.</param>
    public static DrawnAgainstSheet? Of(MixSheet sheet, IReadOnlyList<GateDraw> draws, double hours, double weigher = UsualWeigher)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(draws);
        var total = draws.Sum(d => d.Tonnes);
        if (!(total > 0))
        {
            return null;
        }

        var shares = draws.ToDictionary(d => d.Bin, d => d.Tonnes / total, StringComparer.OrdinalIgnoreCase);
        var squares = shares.Values.Sum(s => s * s);

        // d(share i) = share i · [(1 − share i)·e i − Σ share j · e j], each weigher with an error e of its own.
        double Uncertainty(double share) => weigher * share * Math.Sqrt(((1 - share) * (1 - share)) + squares - (share * share));
        DrawnGate Row(string bin, double set)
        {
            var share = shares.GetValueOrDefault(bin);
            return new DrawnGate(bin, set, 100 * share, 100 * Uncertainty(share), set / 100 * sheet.TonnesPerHour * hours, share * total);
        }

        var others = draws.Where(d => d.Tonnes > 0 && !sheet.Gates.Any(g => g.Bin.Equals(d.Bin, StringComparison.OrdinalIgnoreCase))).OrderBy(d => d.Bin, StringComparer.OrdinalIgnoreCase).ToArray();
        return new DrawnAgainstSheet(
            [.. sheet.Gates.Select(g => Row(g.Bin, g.SharePercent)), .. others.Select(o => Row(o.Bin, 0))], hours, others.Length > 0 ? [] : [.. QualitiesOf(sheet, shares)],
            [.. others.Select(o => FormattableString.Invariant($"{o.Bin} gave {o.Tonnes:0.0} t and is not on the sheet: what it was made of was not kept there, so the quality of what was drawn is not reckoned."))]);
    }

    private static IEnumerable<DrawnQuality> QualitiesOf(MixSheet sheet, Dictionary<string, double> shares)
    {
        (MixBin, double)[] parts = [.. sheet.Gates.Select(g => (g.AsBin(), shares.GetValueOrDefault(g.Bin)))];
        foreach (var expected in sheet.Expected.Where(e => e.On == LimitOn.Wheat && BlendRules.Of(e.What) is not null))
        {
            if (MixBlend.WheatOf(parts, expected.What, expected.Basis) is { } drawn)
            {
                yield return new DrawnQuality(expected.What, expected.Basis, expected.Value, expected.StandardUncertainty, drawn.Value, drawn.StandardUncertainty);
            }
        }
    }
}
