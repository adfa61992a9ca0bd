using Evengrist.Numerics.Reconciling;

namespace Evengrist.Milling.Balance;

/// <summary>Parts what is unexplained: evaporation as reconciled, and by how much each weigher is off. They add up to it exactly.</summary>
internal static class LossModel
{
    /// <summary>The balance the parts are taken from: without the measurements named as wrong, as long as the rest tells of them and not all could be the one.</summary>
    public static Balanced? Of(GrossErrorOutcome check) => check switch
    {
        GrossErrorsNamed { Suspects: var suspects, Rest: var rest } when suspects.All(s => s.Bias is not null && (s.Alike.Count == 0 || rest.Freedom > 0)) => rest,
        _ => check.First as Balanced,
    };

    public static IReadOnlyList<LossPart> Parts(BalanceSpec spec, Balanced balance)
    {
        var values = balance.Values;
        (int At, double Sign, LossKind Kind, Weighed Mass)[] weighers =
        [
            (BalanceQuestion.Screenings, -1, LossKind.Cleaning, spec.Screenings), (BalanceQuestion.Wheat, 1, LossKind.Weigher, spec.Dirty), (BalanceQuestion.Water, 1, LossKind.Weigher, spec.Water),
            (BalanceQuestion.Rise, -1, LossKind.TemperBins, spec.TemperRise), .. spec.Products.Select((p, i) => (BalanceQuestion.Mass(i), -1.0, LossKind.Weigher, p.Mass)),
        ];
        var air = values[BalanceQuestion.Evaporation];
        return
        [
            new LossPart("evaporation", LossKind.Evaporation, air.Value, air.StandardUncertainty ?? 0),
            .. weighers.Where(w => w.Mass != new Weighed(0, 0)).Select(w => new LossPart(values[w.At].Unknown.Name, w.Kind, w.Sign * (w.Mass.Tonnes - values[w.At].Value), Uncertainty(values[w.At], w.Mass.StandardUncertainty))),
        ];
    }

    // Of measured less adjusted, √(σ² − u²); of measured less what the others say, where it was set aside, √(σ² + u²).
    private static double Uncertainty(Adjusted value, double sigma)
    {
        var own = value.StandardUncertainty ?? sigma;
        return Math.Sqrt(Math.Max(0, (sigma * sigma) + ((value.Unknown.IsMeasured ? -1 : 1) * own * own)));
    }
}
