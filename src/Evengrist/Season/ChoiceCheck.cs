using static Evengrist.Season.SeasonCheck;

namespace Evengrist.Season;

/// <summary>Checks that what people have decided is kept.</summary>
internal static class ChoiceCheck
{
    public static IEnumerable<string> Of(PlanTally tally)
    {
        foreach (var choice in tally.Spec.Choices)
        {
            var (value, per) = choice switch
            {
                UseChoice use => (tally.UsesOf[(use.Flour, use.Period)].Where(u => u.Wheat == use.Wheat).Sum(u => u.Tonnes), 1.0),
                BuyChoice buy => (tally.Bought(buy.Offer, buy.Period), 1.0),
                ShareChoice share => (tally.UsesOf[(share.Flour, share.Period)].Where(u => u.Wheat == share.Wheat).Sum(u => u.Tonnes), tally.UsesOf[(share.Flour, share.Period)].Sum(u => u.Tonnes)),
                _ => throw new ArgumentException($"No such choice: {choice.GetType().Name}.", nameof(tally)),
            };
            if (!NotAbove(choice.Least * per, value) || !NotAbove(value, choice.Most * Math.Max(per, 1e-300)))
            {
                yield return $"{choice}: it is {value / Math.Max(per, 1e-300):0.######}.";
            }
        }
    }
}
