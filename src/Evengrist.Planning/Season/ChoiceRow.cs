using Evengrist.Planning.Solving;
using Evengrist.Season;

namespace Evengrist.Planning.Season;

/// <summary>What a person has decided, as rows.</summary>
internal static class ChoiceRow
{
    /// <summary>The choice in words and the sums it bounds below and above.</summary>
    public static (string Words, (IReadOnlyList<(int Column, double By)> Least, IReadOnlyList<(int Column, double By)> Most) Terms) Of(SeasonModel model, SeasonChoice choice)
    {
        var flours = model.Spec.Flours;
        string From(int period) => FormattableString.Invariant($"from {model.Spec.Periods[period].Start:uuuu-MM-dd}");
        switch (choice)
        {
            case UseChoice use:
                var column = model.Use[Wheat(model, use.Wheat), Flour(model, use.Flour), use.Period];
                return ($"{Between(choice, "t")} of {use.Wheat} into {use.Flour}, {From(use.Period)}", Same([(column, 1)]));
            case BuyChoice buy:
                var o = model.Spec.Offers.ToList().FindIndex(x => x.Code == buy.Offer);
                return ($"{Between(choice, "t")} of {buy.Offer} bought, {From(buy.Period)}", Same([.. model.Spec.Offers[o].Tiers.Select((_, tier) => (model.Buy[o][tier, buy.Period], 1.0))]));
            case ShareChoice share:
                var (k, f) = (Wheat(model, share.Wheat), Flour(model, share.Flour));
                (int, double)[] Share(double of) => [.. Enumerable.Range(0, model.Wheats.Length).Select(i => (model.Use[i, f, share.Period], (i == k ? 1.0 : 0) - of))];
                return ($"a share of {Between(choice, "")} of {share.Wheat} in {flours[f].Code}, {From(share.Period)}", (Share(choice.Least), Share(choice.Most)));
            default:
                throw new ArgumentException($"No such choice: {choice.GetType().Name}.", nameof(choice));
        }
    }

    /// <summary>Adds the rows; with each, the sign by which it would yield.</summary>
    public static IEnumerable<(int Row, int Sign)> Rows(LinearProblem problem, SeasonChoice choice, (IReadOnlyList<(int Column, double By)> Least, IReadOnlyList<(int Column, double By)> Most) terms)
    {
        var of = choice is ShareChoice;
        if (choice.Least > 0)
        {
            yield return (Row(problem, terms.Least, of ? 0 : choice.Least, double.PositiveInfinity), 1);
        }

        if (choice.Most < (of ? 1 : double.PositiveInfinity))
        {
            yield return (Row(problem, terms.Most, double.NegativeInfinity, of ? 0 : choice.Most), -1);
        }
    }

    private static int Row(LinearProblem problem, IReadOnlyList<(int Column, double By)> terms, double least, double most)
    {
        var row = problem.Row($"choice.{problem.Rows.Count}", least, most);
        foreach (var (column, by) in terms)
        {
            if (column >= 0)
            {
                problem.Put(row, column, by);
            }
        }

        return row;
    }

    private static (IReadOnlyList<(int, double)>, IReadOnlyList<(int, double)>) Same((int, double)[] terms) => (terms, terms);

    private static int Wheat(SeasonModel model, string code) => Array.FindIndex(model.Wheats, w => w.Code == code);

    private static int Flour(SeasonModel model, string code) => model.Spec.Flours.ToList().FindIndex(f => f.Code == code);

    private static string Between(SeasonChoice choice, string unit) => (choice.Least == choice.Most ? FormattableString.Invariant($"{choice.Least:0.###} {unit}")
        : double.IsInfinity(choice.Most) ? FormattableString.Invariant($"at least {choice.Least:0.###} {unit}") : FormattableString.Invariant($"{choice.Least:0.###} to {choice.Most:0.###} {unit}")).TrimEnd();
}
