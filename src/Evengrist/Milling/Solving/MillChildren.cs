using Evengrist.Milling.Grinding;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Solving;

/// <summary>The breakage matrices all passages share.</summary>
internal sealed record MillChildren(Children FlutedEndosperm, Children FlutedBran, Children SmoothEndosperm, Children SmoothBran, Children Finisher)
{
    public static MillChildren Of(MillParameters parameters, SizeClasses classes, double hardness)
    {
        // Softer endosperm falls into finer pieces at once [read as a direction: softer wheat gives more that is fine].
        var fine = Math.Clamp(parameters.SmoothEndosperm.Phi + (parameters.FinePerTenSofter * (parameters.ReferenceHardness - hardness) / 10), 0.05, 0.98);
        return new MillChildren(
            Children.Of(classes, parameters.FlutedEndosperm.Finer), Children.Of(classes, parameters.FlutedBran.Finer), Children.Of(classes, (parameters.SmoothEndosperm with { Phi = fine }).Finer),
            Children.Of(classes, parameters.SmoothBran.Finer), Children.Of(classes, parameters.FinisherPieces.Finer));
    }
}
