using Evengrist.Milling.Learning;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Stock;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>What a mill's tests say of it.</summary>
/// <param name="Figures">How many measured figures it was tuned on.</param>
/// <param name="Rounds">Rounds it took.</param>
/// <param name="Scatter">By kind of figure: how far they lie from the tuned model against what they were said to; what is not there lies no further.</param>
/// <param name="Factors">What was found, the best known against before first.</param>
/// <param name="Compared">Measured figures beside the model's, the worst first.</param>
/// <param name="CannotTell">What the tests cannot tell apart, and what would; in words.</param>
/// <param name="Next">Release tests by how much surer they would make the yield of all flour, the best first.</param>
/// <param name="Remarks">What must be said with it.</param>
public sealed record MillFitAnswer(int Figures, int Rounds, IReadOnlyDictionary<string, double> Scatter, IReadOnlyList<TuneAnswer> Factors, IReadOnlyList<ComparedFigure> Compared, IReadOnlyList<string> CannotTell, IReadOnlyList<NextTest> Next, IReadOnlyList<string> Remarks)
{
    /// <summary>Tunes to a case's tests, or says why not.</summary>
    public static Reply<MillFitAnswer> To(MillSolveCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        return To(posed.MillTests, posed.FlowSheet, posed.Wheat.Of());
    }

    /// <summary>Tunes to tests, or says why not.</summary>
    /// <param name="tests">The tests.</param>
    /// <param name="sheet">The flow sheet that is asked about.</param>
    /// <param name="wheat">The wheat that is asked about.</param>
    public static Reply<MillFitAnswer> To(IReadOnlyList<MillTest> tests, FlowSheet sheet, MillWheat wheat)
    {
        return MillFit.Of(tests) switch
        {
            MillTuned tuned => new Reply<MillFitAnswer>(Of(tuned, sheet, wheat), []),
            MillNotTuned not => new Reply<MillFitAnswer>(null, not.Reasons),
            var other => throw new InvalidOperationException($"Tuning ended as {other.GetType().Name}."),
        };
    }

    /// <summary>The mill tuned to a case's tests, untuned where it has none; or why it cannot be.</summary>
    internal static Reply<MillTuning> Tuning(MillSolveCase posed) => posed.Tests.Count == 0 ? new Reply<MillTuning>(MillTuning.None(posed.FlowSheet), []) : MillFit.Of(posed.MillTests) switch
    {
        MillTuned tuned => new Reply<MillTuning>(tuned.Tuning, []),
        MillNotTuned not => new Reply<MillTuning>(null, not.Reasons),
        var other => throw new InvalidOperationException($"Tuning ended as {other.GetType().Name}."),
    };

    /// <summary>On what a mill was tuned, or that it is not, in words.</summary>
    internal static string TunedOrNot(MillTuning tuning) => tuning.IsTuned ? Words(tuning) : "not tuned: enter a release test or a stream survey";

    /// <summary>On what a mill was tuned, in words.</summary>
    public static string Words(MillTuning tuning)
    {
        ArgumentNullException.ThrowIfNull(tuning);
        return $"tuned on {tuning.Figures} measured figures" + (tuning.Scatter.Count == 0 ? ", which lie no further off than they were said to"
            : "; further off than they were said to: " + string.Join(", ", tuning.Scatter.Select(s => FormattableString.Invariant($"{s.Key} {s.Value:0.0} times"))));
    }

    /// <summary>What two things confused are, in a sentence.</summary>
    public static string Words(Confused pair)
    {
        ArgumentNullException.ThrowIfNull(pair);
        return $"The tests cannot tell {Words(pair.One)} from {Words(pair.Other)}" + (pair.Tells is { } passage ? $": take a release test at {passage}." : ".");
    }

    /// <summary>What can be found, in words.</summary>
    public static string Words(TuneKey key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return key.Kind switch
        {
            TuneKind.Nip => $"how hard {key.Where} nips",
            TuneKind.Bran => $"how readily bran breaks at {key.Where}",
            TuneKind.Cut => $"what cloth {key.Outlet} of {key.Where} lets through",
            TuneKind.Air => $"the air of {key.Where}",
            TuneKind.FirstBreak => "how kernels break at first break",
            TuneKind.Ash => $"the ash of {Part(key.Where)}",
            _ => $"the protein of {Part(key.Where)}",
        };

        static string Part(string name) => name switch { "InnerEndosperm" => "the inner endosperm", "MiddleEndosperm" => "the middle endosperm", "OuterEndosperm" => "the outer endosperm", _ => name.ToLowerInvariant() };
    }

    private static MillFitAnswer Of(MillTuned tuned, FlowSheet sheet, MillWheat wheat) => new(
        tuned.Tuning.Figures, tuned.Rounds, tuned.Tuning.Scatter.ToDictionary(s => $"{s.Key}", s => s.Value),
        [.. tuned.Tuning.Keys.Select(k => (Key: k, Found: tuned.Tuning.Of(k))).OrderBy(x => x.Found.Uncertainty / x.Found.Before).Select(x => new TuneAnswer(
            $"{x.Key.Kind}", x.Key.Where, x.Key.Kind is TuneKind.Cut ? x.Key.Outlet : null, x.Found.Factor, 200 * x.Found.Uncertainty, 200 * x.Found.Before))],
        [.. tuned.Compared.OrderByDescending(c => Math.Abs(c.Deviation))],
        [.. Confused.Of(sheet, wheat, tuned.Tuning).Select(Words)], [.. NextTest.Of(sheet, wheat, tuned.Tuning).Take(5)],
        ["A factor holds what the model leaves out too: it is no measurement of wear by itself.", MillSolveAnswer.Caution]);
}

/// <summary>A factor on the model found by tuning.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Where">Passage, or part of the kernel.</param>
/// <param name="Outlet">Outlet of the cloth, from 0; null for the rest.</param>
/// <param name="Factor">The factor; 1 as the model has it without data.</param>
/// <param name="PlusMinusPercent">Its ±, k = 2, per cent of it.</param>
/// <param name="BeforePercent">The same before data.</param>
public sealed record TuneAnswer(string Kind, string Where, int? Outlet, double Factor, double PlusMinusPercent, double BeforePercent);
