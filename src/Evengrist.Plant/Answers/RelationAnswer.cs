using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Mix.Relations;
using Evengrist.Plant.Cases;
using Evengrist.Quantities;

namespace Evengrist.Plant.Answers;

/// <summary>How one property of a flour follows from the wheat's: what is kept and what the mill's runs say, in plain values.</summary>
public sealed record RelationAnswer(string Flour, string What, RelationKeptAnswer? Kept, RelationFitAnswer? Fit)
{
    /// <summary>In plain values.</summary>
    /// <param name="flour">Code of the flour.</param>
    /// <param name="what">The property.</param>
    /// <param name="kept">What is kept; null where nothing is.</param>
    /// <param name="fit">The newest fit; null where the property is not fitted.</param>
    public static RelationAnswer Of(string flour, Property what, RelationKeptAnswer? kept, RelationFit? fit) => new(flour, MixCase.NameOf(what), kept, fit is null ? null : RelationFitAnswer.Of(fit));
}

/// <summary>A relation as kept: flour = intercept + slope · wheat, ± one standard uncertainty.</summary>
public sealed record RelationKeptAnswer(
    int Version, string By, string Recorded, string? WheatBasis, string? FlourBasis, double Intercept, double Slope, double StandardUncertainty, bool Fitted, string Source, double? LeastWheat, double? MostWheat)
{
    /// <summary>In plain values.</summary>
    public static RelationKeptAnswer Of(int version, string by, NodaTime.Instant recorded, FlourRelation relation)
    {
        ArgumentNullException.ThrowIfNull(relation);
        return new(version, by, recorded.ToString(), Said(relation.WheatBasis), Said(relation.FlourBasis), relation.Intercept, relation.Slope, relation.Uncertainty, relation.IsFitted, relation.Source, relation.LeastWheat, relation.MostWheat);
    }

    private static string? Said(Basis basis) => basis.IsStated ? basis.ToString() : null;
}

/// <summary>A fit, or why there is none; ± for 95 %. The wheat is on 12mb, the flour on 14mb.</summary>
public sealed record RelationFitAnswer(
    int Runs, double? Intercept, double? InterceptPlusMinus, double? Slope, double? SlopePlusMinus, double? Residual, double? StandardUncertainty, double? LeastWheat, double? MostWheat, string? WhyNot, IReadOnlyList<RelationRunAnswer> Points)
{
    /// <summary>In plain values.</summary>
    public static RelationFitAnswer Of(RelationFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        RelationRunAnswer[] points = [.. fit.Points.Select(p => new RelationRunAnswer(p.Sheet, p.At.ToString(), p.Wheat, p.WheatUncertainty, p.Read, p.ReadUncertainty, p.Readings))];
        return fit is RelationFitted line
            ? new(points.Length, line.Line.Offset, line.InterceptBand, line.Line.Slope, line.SlopeBand, line.Residual, line.Uncertainty, line.LeastWheat, line.MostWheat, null, points)
            : new(points.Length, null, null, null, null, null, null, null, null, (fit as RelationNotFitted)?.Reason, points);
    }
}

/// <summary>A run: the wheat as reckoned, the flour as read, each with one standard uncertainty.</summary>
public sealed record RelationRunAnswer(string Sheet, string At, double Wheat, double WheatStandardUncertainty, double Flour, double FlourStandardUncertainty, int Readings);

/// <summary>Every flour of the terms.</summary>
public sealed record RelationsAnswer(IReadOnlyList<RelationAnswer> Relations, string Note)
{
    /// <summary>What is said with it.</summary>
    public const string Said = "A decision aid: a named person keeps a relation.";
}
