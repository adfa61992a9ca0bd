using Evengrist.Milling.Response;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Solving;
using Evengrist.Milling.Stock;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Learning;

/// <summary>A mill with what tuning found put in.</summary>
internal static class TunedMill
{
    /// <summary>The mill made ready; its knobs turned by the factors, the parts of its wheat by theirs.</summary>
    public static MillRun Of(FlowSheet sheet, MillWheat wheat, IReadOnlyList<TuneKey> keys, Vector<double> values, MillParameters? parameters = null)
    {
        var run = new MillRun(MillModel.Of(sheet, Wheat(wheat, keys, values), parameters));
        for (var i = 0; i < keys.Count; i++)
        {
            if (KnobOf(run.Model, keys[i]) is { } knob)
            {
                run.Knobs = KnobPush.Turned(run.Knobs, knob, values[i]);
            }
        }

        return run;
    }

    /// <summary>The knob of a key in a mill; null for a part of the kernel.</summary>
    public static Knob? KnobOf(MillModel model, TuneKey key)
    {
        var passage = Array.FindIndex(model.Ways.Passages, p => p.Code == key.Where);
        return key.Kind switch
        {
            TuneKind.Nip => new Knob(KnobKind.Nip, passage),
            TuneKind.Bran => new Knob(KnobKind.Bran, passage),
            TuneKind.Cut => new Knob(KnobKind.Cut, model.Ways.FirstOutlet[passage] + key.Outlet),
            TuneKind.Tear => new Knob(KnobKind.Tear, model.Ways.FirstOutlet[passage] + key.Outlet),
            TuneKind.Air => new Knob(KnobKind.Air, passage),
            TuneKind.FirstBreak => new Knob(KnobKind.FirstBreak, 0),
            _ => null,
        };
    }

    /// <summary>The part of the kernel of a key; null for a knob.</summary>
    public static KernelPart? PartOf(TuneKey key) => key.Kind is TuneKind.Ash or TuneKind.Protein ? Enum.Parse<KernelPart>(key.Where) : null;

    private static MillWheat Wheat(MillWheat wheat, IReadOnlyList<TuneKey> keys, Vector<double> values)
    {
        PartAssay[] parts = [.. wheat.Parts];
        for (var i = 0; i < keys.Count; i++)
        {
            if (PartOf(keys[i]) is { } part)
            {
                var (assay, factor) = (parts[(int)part], Math.Exp(values[i]));
                parts[(int)part] = keys[i].Kind is TuneKind.Ash ? assay with { AshPercentDry = assay.AshPercentDry * factor } : assay with { ProteinPercentDry = assay.ProteinPercentDry * factor };
            }
        }

        return wheat with { Parts = parts };
    }
}
