using Evengrist.Laboratory.Charts;

namespace Evengrist.Laboratory.Rings;

/// <summary>How a mill stands beside others.</summary>
/// <param name="Figures">As its laboratory reports it.</param>
/// <param name="Reported">Capability by those.</param>
/// <param name="Bias">How its laboratory reads; null where it took part in no ring test.</param>
/// <param name="Flour">Capability of the flour, the laboratory's bias taken out; null where flour and laboratory cannot be told apart.</param>
public sealed record MillStanding(MillFigures Figures, Capability Reported, LaboratoryBias? Bias, Capability? Flour)
{
    private const double TwoSided95 = 1.959964;

    /// <summary>Confidence limits of the flour's Cpk (95 %): those of so many results, widened by what is not known of the laboratory's bias [ours, to the first order]; null where one of both is not known.</summary>
    public (double Lower, double Upper)? FlourBounds => Flour is { } flour && Bias?.Deviation is { } unsure ? Around(flour.Cpk, double.Hypot(flour.CpkBounds.Upper - flour.Cpk, TwoSided95 * unsure / (3 * Figures.Deviation))) : null;

    /// <summary>Share outside the limits as reported.</summary>
    public double ShareOut => Reported.ShareAbove + Reported.ShareBelow;

    /// <summary>What has to be known of it, in a sentence; empty where nothing has.</summary>
    public string Remark => Bias switch
    {
        null => "no ring test: flour and laboratory cannot be told apart",
        { Bias: null } => $"{Bias.Against}: flour and laboratory cannot be told apart",
        { IsBeyondChance: true } => FormattableString.Invariant($"its laboratory reads {Math.Abs(Bias.Bias.Value):0.00} {(Bias.Bias > 0 ? "high" : "low")} against {Bias.Against}: look at the laboratory before the flour"),
        { IsBeyondChance: null } => "too few results to say whether its laboratory is off",
        _ => "",
    };

    private static (double Lower, double Upper) Around(double middle, double half) => (middle - half, middle + half);
}
