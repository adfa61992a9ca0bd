using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Numerics;

namespace Evengrist.Mix.Relations;

/// <summary>How a flour follows from its wheat by the mill's own runs, as far as that can be told.</summary>
/// <param name="Flour">Code of the flour.</param>
/// <param name="What">The property.</param>
/// <param name="Points">Runs looked at.</param>
public abstract record RelationFit(string Flour, Property What, IReadOnlyList<RelationPoint> Points);

/// <summary>No line can be laid.</summary>
/// <param name="Flour">Code of the flour.</param>
/// <param name="What">The property.</param>
/// <param name="Points">Runs there were.</param>
/// <param name="Reason">Why, in a sentence that says what is missing.</param>
public sealed record RelationNotFitted(string Flour, Property What, IReadOnlyList<RelationPoint> Points, string Reason) : RelationFit(Flour, What, Points);

/// <summary>A line: flour = intercept + slope · wheat.</summary>
/// <param name="Flour">Code of the flour.</param>
/// <param name="What">The property.</param>
/// <param name="Points">Runs it rests on, by time.</param>
/// <param name="Line">The line; its offset is the intercept.</param>
/// <param name="Widening">By how much the line's errors are widened to the scatter that was seen, 1 or more.</param>
/// <param name="Coverage">Standard uncertainties that hold 95 %: Student's t of points − 2.</param>
/// <param name="Residual">Standard deviation of a run's flour about the line, √(Σ(read − line)²/(points − 2)); the wheat's own errors are in it.</param>
public sealed record RelationFitted(string Flour, Property What, IReadOnlyList<RelationPoint> Points, LineFit Line, double Widening, double Coverage, double Residual) : RelationFit(Flour, What, Points)
{
    /// <summary>± of the slope, 95 %.</summary>
    public double SlopeBand => Coverage * Widening * Line.SlopeError;

    /// <summary>± of the intercept, 95 %.</summary>
    public double InterceptBand => Coverage * Widening * Line.OffsetError;

    /// <summary>The least wheat value among the runs.</summary>
    public double LeastWheat => Points.Min(p => p.Wheat);

    /// <summary>The most.</summary>
    public double MostWheat => Points.Max(p => p.Wheat);

    /// <summary>One standard uncertainty of the line itself at a wheat's value.</summary>
    public double ErrorAt(double wheat) => Widening * Line.ErrorAt(wheat);

    /// <summary>One standard uncertainty of a run's flour: the residual, and the line's own error at that end of its range where it is larger.</summary>
    public double Uncertainty => Math.Sqrt((Residual * Residual) + Math.Pow(Math.Max(ErrorAt(LeastWheat), ErrorAt(MostWheat)), 2));

    /// <summary>As a relation that can be kept: figures to four decimals, with the range it holds in.</summary>
    /// <param name="zone">The mill's time zone, for the days of its source.</param>
    public FlourRelation Relation(NodaTime.DateTimeZone zone)
    {
        string Day(NodaTime.Instant at) => at.InZone(zone).Date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);
        return new FlourRelation(
            What, RelationPoint.WheatBasis, RelationPoint.FlourBasis, Math.Round(Line.Offset, 4), Math.Round(Line.Slope, 4), Math.Round(Uncertainty, 4), true,
            string.Create(CultureInfo.InvariantCulture, $"{Points.Count} runs of {Day(Points.Min(p => p.At))} to {Day(Points.Max(p => p.At))}, slope ± {SlopeBand:0.###}, intercept ± {InterceptBand:0.###}"))
        {
            LeastWheat = Math.Round(LeastWheat, 4), MostWheat = Math.Round(MostWheat, 4),
        };
    }
}
