using Evengrist.Milling.Draws;
using Evengrist.Milling.OnPaper;
using Evengrist.Quantities;

namespace Evengrist.Plant.Answers;

/// <summary>Mills drawn as the one there is may be, each solved whole: what that says of yield, ash, protein and money, beside the first-order ±.</summary>
/// <param name="Samples">Mills that were drawn and solved.</param>
/// <param name="Unsolved">Mills drawn that could not be solved; they count in no figure.</param>
/// <param name="Seed">The same seed gives the same figures.</param>
/// <param name="IsWhole">Whether all asked for were drawn; otherwise it was stopped, and the first ones count.</param>
/// <param name="Seconds">Time it took.</param>
/// <param name="Products">As it is set: by product, then the sets asked for, then all flour.</param>
/// <param name="Change">What the settings tried would change, of the same mill before and after; null where none were.</param>
/// <param name="MoneyPerDay">Change of what the products bring in 24 h; null where nothing was tried or no price given.</param>
/// <param name="Differing">Figures of which draws and first order say something else, in words, those of a change and of all flour first.</param>
public sealed record MillDrawsAnswer(
    int Samples, int Unsolved, long Seed, bool IsWhole, double Seconds, IReadOnlyList<DrawnProductAnswer> Products, IReadOnlyList<DrawnProductAnswer>? Change, DrawnAnswer? MoneyPerDay, IReadOnlyList<string> Differing)
{
    /// <summary>Whether draws and first order say the same, and which of them holds where they do not; a sentence.</summary>
    public string Beside => Differing.Count == 0
        ? "Draws and first-order ± say the same of every figure."
        : $"Draws and first-order ± differ in {Differing.Count} {(Differing.Count == 1 ? "figure" : "figures")}: {string.Join("; ", Differing.Take(8))}{(Differing.Count > 8 ? "; and more" : "")}. There the mill bends within its ±: go by the draws.";

    /// <summary>Draws in plain values.</summary>
    /// <param name="drawn">The draws.</param>
    /// <param name="trial">The same, first order.</param>
    /// <param name="basis">Moisture basis of ash and protein.</param>
    public static MillDrawsAnswer Of(MillsDrawn drawn, MillTrial trial, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(drawn);
        ArgumentNullException.ThrowIfNull(trial);
        var (draws, now) = (drawn.Draws, trial.Now ?? throw new ArgumentException("The trial has no answer.", nameof(trial)));
        DrawnProductAnswer[] products = [.. draws.Now.Products.Zip(now.Products.Append(now.Flour), (d, f) => DrawnProductAnswer.Of(d, f, draws.Draws, basis))];
        DrawnProductAnswer[]? changed = draws.Change is { } change && trial.Change is { } first ? [.. change.Products.Zip(first.Products.Append(first.Flour), (d, f) => DrawnProductAnswer.Of(d, f, draws.Draws, basis))] : null;
        var money = draws.MoneyPerDay is { } m && trial.Change?.MoneyPerDay is { } estimate ? DrawnAnswer.Of(m, estimate, draws.Draws, 1) : null;
        string[] differ =
        [
            .. money is { Differs: true } ? ["change of money"] : Array.Empty<string>(),
            .. (changed ?? []).Reverse().SelectMany(p => p.Differing).Select(d => $"change of {d}"), .. products.Reverse().SelectMany(p => p.Differing).Select(d => $"{d} as it is set"),
        ];
        return new MillDrawsAnswer(draws.Draws, draws.Unsolved, draws.Spec.Seed, drawn.IsWhole, Math.Round(drawn.Took.TotalSeconds, 3), products, changed, money, differ);
    }
}

/// <summary>A figure of draws: mean, standard deviation, what 5, 50 and 95 % of the mills lie below; the first-order forecast of it (± is k = 2), and whether both differ by more than chance and so much that it matters.</summary>
public sealed record DrawnAnswer(double Mean, double StandardDeviation, double P5, double P50, double P95, PlusMinus FirstOrder, bool Differs)
{
    internal static DrawnAnswer? Of(DrawnFigure? drawn, Estimate first, int draws, double factor) => drawn is null ? null : new DrawnAnswer(
        drawn.Mean * factor, drawn.StandardDeviation * factor, drawn.Low * factor, drawn.Median * factor, drawn.High * factor, PlusMinus.Of(first, factor), new DrawnBeside(drawn, first, draws).Differ);
}

/// <summary>Products as drawn: yield, per cent of the wheat to first break; ash and protein on the answer's basis; null where nothing flows.</summary>
public sealed record DrawnProductAnswer(string Name, DrawnAnswer? YieldPercent, DrawnAnswer? AshPercent, DrawnAnswer? ProteinPercent)
{
    /// <summary>Figures in which draws and first order differ.</summary>
    internal IEnumerable<string> Differing => new[] { ("yield", YieldPercent), ("ash", AshPercent), ("protein", ProteinPercent) }.Where(f => f.Item2 is { Differs: true }).Select(f => $"{f.Item1} of {Name}");

    internal static DrawnProductAnswer Of(DrawnSet drawn, SetForecast first, int draws, Basis basis) => new(
        drawn.Name, DrawnAnswer.Of(drawn.YieldPercent, first.YieldPercent, draws, 1), DrawnAnswer.Of(drawn.AshPercentDry, first.AshPercentDry, draws, 1 / basis.ToDry), DrawnAnswer.Of(drawn.ProteinPercentDry, first.ProteinPercentDry, draws, 1 / basis.ToDry));
}
