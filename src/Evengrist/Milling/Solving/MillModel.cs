using Evengrist.Milling.Grinding;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Sifting;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Solving;

/// <summary>A mill unit made ready to be solved: a flow sheet and a wheat. Page: docs/model/milling.md.</summary>
public sealed class MillModel
{
    private MillModel(FlowSheet sheet, MillWheat wheat, MillParameters parameters, SizeClasses classes)
    {
        (Sheet, Wheat, Parameters, Classes) = (sheet, wheat, parameters, classes);
        Ways = new MillWays(sheet);
        ClothExponent = PartitionCurve.LogisticExponent(parameters.ClothSharpness);
        var children = MillChildren.Of(parameters, classes, wheat.Hardness);
        var branEase = Math.Exp(-parameters.BranTougherPerPoint * (wheat.MoisturePercent - 16));
        Machines = [.. Ways.Passages.Select(p => Machine.Of(p, parameters, classes, children, branEase))];
        Clings = [.. Enumerable.Range(0, Width).Select(k => parameters.Clings[k / classes.Count] is var clings && clings >= 1 ? 1 : clings * Math.Min(1, classes.Middle(k % classes.Count) / 1000))];
    }

    /// <summary>The flow sheet.</summary>
    public FlowSheet Sheet { get; }

    /// <summary>The wheat.</summary>
    public MillWheat Wheat { get; }

    /// <summary>The constants.</summary>
    public MillParameters Parameters { get; }

    /// <summary>The size classes.</summary>
    public SizeClasses Classes { get; }

    internal MillWays Ways { get; }

    internal Machine[] Machines { get; }

    internal double[] Clings { get; }

    internal double ClothExponent { get; }

    internal int Width => MillWheat.PartCount * Classes.Count;

    /// <summary>Makes a mill ready.</summary>
    /// <param name="sheet">The flow sheet.</param>
    /// <param name="wheat">The wheat.</param>
    /// <param name="parameters">The constants; the defaults where null.</param>
    /// <param name="classes">The size classes; fourteen where null.</param>
    /// <exception cref="ArgumentException">The sheet or the wheat has faults.</exception>
    public static MillModel Of(FlowSheet sheet, MillWheat wheat, MillParameters? parameters = null, SizeClasses? classes = null)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(wheat);
        string[] faults = [.. sheet.Faults(), .. wheat.Faults()];
        return faults.Length == 0
            ? new MillModel(sheet, wheat, parameters ?? MillParameters.Default, classes ?? SizeClasses.Fourteen)
            : throw new ArgumentException(string.Join(" ", faults), nameof(sheet));
    }

    /// <summary>Knobs as the flow sheet sets them.</summary>
    internal MillKnobs Knobs() => new(Ways.Passages.Length, Ways.OutletCount, [.. Ways.Ways.Select(w => w.Share)]);

    /// <summary>Room for stock.</summary>
    internal MillState State() => new(Ways.Passages.Length, Ways.OutletCount, Width);

    /// <summary>Wheat behind the rolls of first break, t/h of dry matter by part and size.</summary>
    /// <param name="knobs">Severity of first break and its gap.</param>
    internal double[] Broken(MillKnobs knobs)
    {
        var rolls = Ways.Passages[Ways.First].Rolls!;
        var broken = BrokenWheat.Of(Wheat, rolls with { GapMicrometres = rolls.GapMicrometres / knobs.Nip[Ways.First] }, Classes, knobs.FirstBreak);
        for (var i = 0; i < broken.Length; i++)
        {
            broken[i] *= Wheat.DryTonnesPerHour;
        }

        return broken;
    }
}
