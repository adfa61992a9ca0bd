using Evengrist.Plant.Cases;
using Evengrist.Streams;

namespace Evengrist.Plant.Answers;

/// <summary>Flour streams from the least ash to the most, added up; where flour of an ash ends; what runs together into which flour.</summary>
/// <param name="Basis">Moisture basis of ash and protein.</param>
/// <param name="Points">The curve.</param>
/// <param name="Straight">All streams together.</param>
/// <param name="Cuts">Where flour of an ash ends.</param>
/// <param name="Products">What the products come to.</param>
/// <param name="Left">What is in no product; null where nothing is left over, or none was given.</param>
/// <param name="Identity">The rule that <see cref="StreamSumAnswer.MayBeCalledFlour"/> goes by.</param>
public sealed record StreamsCurveAnswer(
    string Basis, IReadOnlyList<StreamPointAnswer> Points, StreamSumAnswer Straight, IReadOnlyList<StreamCutAnswer> Cuts, IReadOnlyList<StreamSumAnswer> Products, StreamSumAnswer? Left, string Identity)
{
    /// <summary>Answers a case.</summary>
    public static StreamsCurveAnswer Of(StreamsCurveCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        var (table, curve) = (posed.Table, AshCurve.Of(posed.Table));
        var used = posed.Products.SelectMany(p => p.Streams).ToHashSet(StringComparer.Ordinal);
        MillStream[] left = posed.Products.Count == 0 ? [] : [.. table.Streams.Where(s => !used.Contains(s.Code))];
        StreamSumAnswer Sum(string code, StreamSum sum) => new(code, sum.Yield, 100 * sum.Yield / curve.Straight.Yield, sum.AshPercent, sum.ProteinPercent, FlourIdentity.Keeps(sum, table.Basis));
        return new StreamsCurveAnswer(
            table.Basis.ToString(),
            [.. curve.Points.Select(p => new StreamPointAnswer(p.Stream.Code, p.Stream.Yield, p.Stream.AshPercent, p.Stream.ProteinPercent, p.Together.Yield, 100 * p.ShareOfFlour, p.Together.AshPercent, p.Together.ProteinPercent))],
            Sum("straight", curve.Straight),
            [.. posed.CutAt.Select(a => curve.At(a) is { } cut ? new StreamCutAnswer(a, cut.Flour.Yield, 100 * cut.Flour.Yield / curve.Straight.Yield, cut.Flour.ProteinPercent, cut.Divided?.Code, cut.DividedYield) : new StreamCutAnswer(a, 0, 0, null, null, 0))],
            [.. posed.Products.Select(p => Sum(p.Code, StreamSum.Of(table.Streams.Where(s => p.Streams.Contains(s.Code)))))],
            left.Length > 0 ? Sum("left over", StreamSum.Of(left)) : null, FlourIdentity.Source);
    }
}

/// <summary>A stream on the curve, with the sum up to and with it.</summary>
public sealed record StreamPointAnswer(string Stream, double Yield, double AshPercent, double? ProteinPercent, double TogetherYield, double OfFlourPercent, double TogetherAshPercent, double? TogetherProteinPercent);

/// <summary>Streams run together; whether the rule of identity lets them be called flour, null where protein was not read.</summary>
public sealed record StreamSumAnswer(string Code, double Yield, double OfFlourPercent, double AshPercent, double? ProteinPercent, bool? MayBeCalledFlour);

/// <summary>Where flour of an ash ends: yield 0 where even the first stream has more; no stream divided where all flour keeps it.</summary>
public sealed record StreamCutAnswer(double AshPercent, double Yield, double OfFlourPercent, double? ProteinPercent, string? Divided, double DividedYield);
