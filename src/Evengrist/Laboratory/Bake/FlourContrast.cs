using Evengrist.Numerics.Mixed;
using MathNet.Numerics.Distributions;

namespace Evengrist.Laboratory.Bake;

/// <summary>One loaf of a trial.</summary>
/// <param name="Flour">Which flour.</param>
/// <param name="Baker">Who baked it.</param>
/// <param name="Dough">Which dough it came from; a dough is one baker's, of one flour.</param>
/// <param name="Value">The measure.</param>
public sealed record TrialLoaf(string Flour, string Baker, string Dough, double Value);

/// <summary>A flour against the control, bakers and doughs taken out as random effects.</summary>
/// <param name="Flour">The flour.</param>
/// <param name="Difference">From the control, in the unit of the measure.</param>
/// <param name="StandardError">Of the difference.</param>
/// <param name="P">Two-sided, by the normal: optimistic where there are few doughs.</param>
public sealed record FlourContrast(string Flour, double Difference, double StandardError, double P);

/// <summary>A bake trial over several bakers and doughs.</summary>
/// <param name="ControlMean">The control, mean over bakers.</param>
/// <param name="Contrasts">Every other flour against it.</param>
/// <param name="BakerDeviation">Standard deviation between bakers; null where there is one alone.</param>
/// <param name="DoughDeviation">Between doughs of one flour and baker; null where no dough gave two loaves, or each baker made one dough of all.</param>
/// <param name="LoafDeviation">Between loaves of one dough.</param>
public sealed record BakeTrial(double ControlMean, IReadOnlyList<FlourContrast> Contrasts, double? BakerDeviation, double? DoughDeviation, double LoafDeviation)
{
    /// <summary>Judges a trial by restricted likelihood.</summary>
    /// <param name="loaves">The loaves.</param>
    /// <param name="control">The control flour.</param>
    /// <returns>The trial, or why it cannot be judged.</returns>
    public static (BakeTrial? Trial, IReadOnlyList<string> Faults) Of(IReadOnlyList<TrialLoaf> loaves, string control)
    {
        ArgumentNullException.ThrowIfNull(loaves);
        string[] flours = [control, .. loaves.Select(l => l.Flour).Distinct().Where(f => f != control).Order(StringComparer.Ordinal)];
        int[] bakers = Numbers(loaves, l => l.Baker), doughs = Numbers(loaves, l => l.Dough);
        var (hasBakers, hasDoughs) = (bakers.Distinct().Count() > 1, Repeats(doughs) && !Same(doughs, bakers));
        string[] faults =
        [
            .. loaves.All(l => l.Flour != control) ? [$"No loaf is of the control \"{control}\": bake it beside in the same session."] : Array.Empty<string>(),
            .. flours.Length < 2 ? ["There is no flour beside the control."] : Array.Empty<string>(),
            .. loaves.GroupBy(l => l.Dough).Where(g => g.Select(l => (l.Flour, l.Baker)).Distinct().Count() > 1).Select(g => $"Dough {g.Key} is of two flours or bakers; give each dough its own name."),
            .. hasBakers && !Repeats(bakers) ? ["Each baker baked one loaf: baker and loaf cannot be told apart."] : Array.Empty<string>(),
            .. hasBakers || hasDoughs ? Array.Empty<string>() : ["One baker, and no dough of two loaves: there is nothing to take out. Judge the pairs instead."],
        ];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        IReadOnlyList<IReadOnlyList<int>> groups = [.. hasBakers ? [bakers] : Array.Empty<int[]>(), .. hasDoughs ? [doughs] : Array.Empty<int[]>()];
        var spec = new MixedSpec([.. loaves.Select(l => l.Value)], [.. loaves.Select(l => (IReadOnlyList<double>)[1, .. flours.Skip(1).Select(f => l.Flour == f ? 1.0 : 0)])], groups);
        if (spec.Faults() is { Count: > 0 } wrong)
        {
            return (null, wrong);
        }

        return MixedModel.Fit(spec) is not { } fit
            ? (null, ["The loaves do not vary at all: nothing can be judged."])
            : (new BakeTrial(
                fit.Coefficients[0], [.. flours.Skip(1).Select((f, i) => new FlourContrast(f, fit.Coefficients[i + 1], fit.StandardErrors[i + 1], 2 * Normal.CDF(0, 1, -Math.Abs(fit.Coefficients[i + 1] / fit.StandardErrors[i + 1]))))],
                hasBakers ? Math.Sqrt(fit.Variances[0]) : null, hasDoughs ? Math.Sqrt(fit.Variances[^1]) : null, Math.Sqrt(fit.Residual)), []);
    }

    private static int[] Numbers(IReadOnlyList<TrialLoaf> loaves, Func<TrialLoaf, string> of)
    {
        string[] names = [.. loaves.Select(of).Distinct()];
        return [.. loaves.Select(l => Array.IndexOf(names, of(l)))];
    }

    private static bool Repeats(int[] groups) => groups.Distinct().Count() is > 1 and var count && count < groups.Length;

    private static bool Same(int[] one, int[] other) => one.SequenceEqual(other);
}
