using System.Globalization;
using Evengrist.Quantities;

namespace Evengrist.Intake.Sampling;

/// <summary>The edges of a contract scale near a value: where another effect, a refusal or the end of the table begins.</summary>
/// <remarks>
/// A scale looks recorded values up, so a step that begins at 13.0 counts from a true value of 12.95 on where one decimal is recorded (half up,
/// 7 CFR 810.104): that value is the edge. Steps with the same effect on both sides are no edge, for nothing hangs on them. Model: docs/model/sampling.md.
/// </remarks>
public static class ScaleEdges
{
    private const int MostBeyond = 200;

    /// <summary>Edges within reach of a value, rising.</summary>
    /// <param name="scale">The scale.</param>
    /// <param name="value">The value, in the scale's unit and basis.</param>
    /// <param name="reach">How far to look on either side, at least 0.</param>
    public static IReadOnlyList<Edge> Near(ContractScale scale, decimal value, decimal reach)
    {
        ArgumentNullException.ThrowIfNull(scale);
        ArgumentOutOfRangeException.ThrowIfNegative(reach);
        var unit = Unit(scale.RecordedDecimals);
        return [.. Candidates(scale, value, reach).SelectMany(c => new[] { Up(c, unit), Down(c, unit) + unit }).Distinct().Order()
            .Where(r => Math.Abs(r - unit / 2 - value) <= reach)
            .Select(r => (At: r, Below: scale.Ask(r - unit), Above: scale.Ask(r)))
            .Where(e => !Same(e.Below, e.Above))
            .Select(e => new Edge((double)(e.At - unit / 2), string.Create(CultureInfo.InvariantCulture, $"step {e.At}"), Words(scale, e.Below), Words(scale, e.Above)))];
    }

    // Where the answer may change: steps, half-ways between them, limits, ends, and steps counted beyond the table.
    private static IEnumerable<decimal> Candidates(ContractScale scale, decimal value, decimal reach)
    {
        var from = scale.Table.Select(s => s.From).ToArray();
        IEnumerable<decimal> middles = from.Zip(from.Skip(1), (a, b) => (a + b) / 2);
        decimal?[] limits = [scale.End, scale.RejectAbove, scale.RejectBelow];
        return [.. from, .. middles, .. limits.OfType<decimal>(), .. Beyond(scale.Above, from[^1], value, reach), .. Beyond(scale.Below, from[0], value, reach)];
    }

    private static IEnumerable<decimal> Beyond(Beyond beyond, decimal end, decimal value, decimal reach)
    {
        if (beyond is not { Rule: BeyondRule.PerStep, StepSize: > 0m })
        {
            return [];
        }

        var first = Math.Floor((value - reach - end) / beyond.StepSize) - 1;
        var count = (int)Math.Min(MostBeyond, Math.Ceiling(2 * reach / beyond.StepSize) + 3);
        return Enumerable.Range(0, count).SelectMany(i => new[] { end + (first + i) * beyond.StepSize, end + (first + i + 0.5m) * beyond.StepSize });
    }

    private static bool Same(ScaleAnswer below, ScaleAnswer above) => (below, above) switch
    {
        (ScaleEffectOf a, ScaleEffectOf b) => a.Effect == b.Effect,
        _ => below.GetType() == above.GetType(),
    };

    private static string Words(ContractScale scale, ScaleAnswer answer) => answer switch
    {
        ScaleEffectOf e when scale.Effect == ScaleEffect.AddsToPrice => $"{Shown.Digits(e.Effect, Math.Max(2, (int)e.Effect.Scale))} {scale.Currency}/{(scale.Per == PriceUnit.Bushel ? "bu" : "t")}",
        ScaleEffectOf e => $"{e.Effect.ToString(CultureInfo.InvariantCulture)} % of the mass",
        ScaleRejects => "not taken",
        _ => "nothing agreed",
    };

    private static decimal Unit(int decimals) => 1m / (decimal)Math.Pow(10, decimals);

    private static decimal Up(decimal value, decimal unit) => Math.Ceiling(value / unit) * unit;

    private static decimal Down(decimal value, decimal unit) => Math.Floor(value / unit) * unit;
}
