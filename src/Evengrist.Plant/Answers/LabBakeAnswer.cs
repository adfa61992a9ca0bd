using Evengrist.Laboratory.Bake;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>Answers about a bake; what was not asked is null.</summary>
/// <param name="Weigh">What to weigh, g.</param>
/// <param name="Pairs">Trial less control, pair by pair.</param>
/// <param name="Trial">Every flour against the control, bakers and doughs taken out.</param>
/// <param name="Tasting">Whether tasters tell two breads apart.</param>
/// <param name="Ranks">Whether ranked breads differ.</param>
/// <param name="Blend">A guess of a blend's dough property; never a fact.</param>
public sealed record LabBakeAnswer(BakeWeights? Weigh, PairedBake? Pairs, BakeTrial? Trial, TastingAnswer? Tasting, RankTest? Ranks, BlendGuess? Blend)
{
    /// <summary>Answers a case, or says why it cannot.</summary>
    public static Reply<LabBakeAnswer> To(LabBakeCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        (BakeTrial? Trial, IReadOnlyList<string> Faults) judged = posed.Trial is { } t ? BakeTrial.Of(t.Loaves, t.Control) : (null, []);
        return judged.Faults.Count > 0 ? new(null, judged.Faults) : new(new(
            posed.Weigh is { } w ? w.Formula.For(w.FlourGrams14, w.Moisture) : null, posed.Pairs is { } p ? PairedBake.Of(p.Control, p.Trial) : null, judged.Trial,
            posed.Tasting is { } a ? TastingAnswer.Of(a) : null, posed.Ranks.Count > 0 ? RankTest.Of(posed.Ranks) : null,
            posed.Blend is { } b ? BlendGuess.Of([.. b.Parts.Select(x => (x.Share, x.Value))], [.. b.Known.Select(k => (k.Guessed, k.Measured))]) : null), []);
    }
}

/// <summary>Whether tasters tell two breads apart.</summary>
/// <param name="P">Chance of so many right answers by guessing.</param>
/// <param name="LeastRight5">Fewest right answers at 5 %; null where not even all are enough.</param>
/// <param name="LeastRight1">The same at 1 %.</param>
/// <param name="Distance">Sensory distance d′ of a triangle; null for pairs, or where all were right.</param>
public sealed record TastingAnswer(double P, int? LeastRight5, int? LeastRight1, double? Distance)
{
    /// <summary>Judges answers.</summary>
    public static TastingAnswer Of(PosedTasting a)
    {
        ArgumentNullException.ThrowIfNull(a);
        var (chance, sides) = (a.Kind == TastingKind.Triangle ? Discrimination.TriangleChance : Discrimination.PairChance, a.Kind == TastingKind.PairsTwoSided ? 2 : 1);
        var right = sides == 2 ? Math.Max(a.Right, a.Tests - a.Right) : a.Right;
        return new(Math.Min(1, sides * Discrimination.P(a.Tests, right, chance)), Discrimination.LeastRight(a.Tests, chance, 0.05 / sides), Discrimination.LeastRight(a.Tests, chance, 0.01 / sides),
            a.Kind == TastingKind.Triangle ? Discrimination.TriangleDistance((double)a.Right / a.Tests) : null);
    }
}
