using System.Globalization;
using MathNet.Numerics.Distributions;

namespace Evengrist.Streams.Dividing;

/// <summary>Judges shares against what was wanted, by its own arithmetic; what each stream has to spare for a chance is taken from where the solver takes it too. Page: docs/model/divide.md.</summary>
public static class DivideCheck
{
    private const double Tolerance = 1e-6;

    /// <summary>Everything that the shares break by more than a millionth, each a sentence; empty where they keep all.</summary>
    /// <param name="spec">What was wanted.</param>
    /// <param name="shares">For each stream the share of it that goes to each place.</param>
    public static IReadOnlyList<string> Broken(DivideSpec spec, IReadOnlyList<double[]> shares)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(shares);
        return [.. shares.SelectMany((row, s) => OfStream(spec, spec.Table.Streams[s], row)), .. spec.Flours.SelectMany((flour, f) => OfFlour(spec, flour, [.. shares.Select((row, s) => (spec.Table.Streams[s], spec.Table.Streams[s].Yield * row[f]))]))];
    }

    private static IEnumerable<string> OfStream(DivideSpec spec, MillStream stream, double[] shares)
    {
        if (!(Math.Abs(shares.Sum() - 1) <= Tolerance) || shares.Any(s => !(s >= -Tolerance)))
        {
            yield return Say($"The shares of {stream.Code} sum to {shares.Sum()}.");
        }

        if (spec.Valves.FirstOrDefault(v => v.Stream == stream.Code) is not { Splits: true, Locked: null } && shares.Any(s => s is > Tolerance and < 1 - Tolerance))
        {
            yield return $"{stream.Code} is divided, and its valve sends it whole.";
        }

        for (var p = 0; p < shares.Length; p++)
        {
            var (valve, code) = (spec.Valves.FirstOrDefault(v => v.Stream == stream.Code), p < spec.Flours.Count ? spec.Flours[p].Code : spec.Rest.Code);
            if (shares[p] > Tolerance && (valve?.Locked is { } locked ? locked != code : p < spec.Flours.Count && valve?.May?.Contains(code) == false))
            {
                yield return $"{stream.Code} goes to {code}, where it may not.";
            }
        }
    }

    private static IEnumerable<string> OfFlour(DivideSpec spec, FlourWish flour, (MillStream Stream, double Amount)[] parts)
    {
        var yield = parts.Sum(p => p.Amount);
        if (yield < flour.LeastYield - Tolerance || yield > flour.MostYield + Tolerance)
        {
            yield return Say($"{flour.Code} is {yield} % of the wheat, outside its limits.");
        }

        if (yield <= Tolerance)
        {
            yield break;
        }

        double Mean(Func<MillStream, double?> of) => parts.Where(p => p.Amount > 0).Sum(p => p.Amount * of(p.Stream)!.Value) / yield;
        foreach (var limit in flour.Limits)
        {
            var value = limit.What switch
            {
                StreamProperty.Ash => Mean(s => s.AshPercent),
                StreamProperty.Protein => Mean(s => s.ProteinPercent),
                StreamProperty.FallingNumber => 50 + (6000 / Mean(s => 6000 / (s.FallingNumberSeconds - 50))),
                _ => Mean(s => s.StarchDamagePercent),
            };
            var slack = Tolerance * Math.Max(1, Math.Abs(value));
            if (value < limit.Least - slack || value > limit.Most + slack)
            {
                yield return Say($"{flour.Code} has {limit.What.Words()} {value}, outside its limits.");
            }
        }

        if (spec.Sure is { } sure && flour.Ends(spec.Table.Basis).Any(e => !Keeps(e)))
        {
            yield return Say($"{flour.Code} does not keep its limits to {100 * sure} %.");
        }

        bool Keeps(LimitEnd end)
        {
            var spare = parts.Sum(p => p.Amount > 0 ? p.Amount * end.Spare(p.Stream) : 0);
            var variance = parts.Sum(p => p.Amount > 0 ? Math.Pow(p.Amount * end.Unsure(p.Stream, spec.Table.Methods), 2) + Math.Pow(p.Amount * spec.Table.Methods.YieldShare * end.Spare(p.Stream), 2) : 0);
            return spare - (Normal.InvCDF(0, 1, spec.Sure!.Value) * Math.Sqrt(variance)) >= -Tolerance * Math.Max(1, Math.Sqrt(variance));
        }

        if (flour.CalledFlour && Mean(s => s.AshPercent) > (Mean(s => s.ProteinPercent) / 20) + (0.35 * (1 - ((double)spec.Table.Basis.MoisturePercent / 100))) + Tolerance)
        {
            yield return $"{flour.Code} has too much ash to be called flour.";
        }
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
