using static Evengrist.Season.SeasonCheck;

namespace Evengrist.Season;

/// <summary>Checks most gates, least shares and campaigns.</summary>
internal static class MixRuleCheck
{
    public static IEnumerable<string> Of(PlanTally tally)
    {
        foreach (var flour in tally.Spec.Flours)
        {
            var unit = tally.Spec.Units.First(u => u.Code == flour.Unit);
            for (var t = 0; t < tally.Periods; t++)
            {
                var uses = tally.UsesOf[(flour.Code, t)].ToArray();
                var all = uses.Sum(u => u.Tonnes);
                if (flour.MostGates is { } most && uses.Length > most)
                {
                    yield return $"{flour.Code}, period {t}: {uses.Length} gates, at most {most}.";
                }

                foreach (var use in uses.Where(u => !NotAbove(flour.LeastShare * all, u.Tonnes)))
                {
                    yield return $"{flour.Code}, period {t}: {use.Wheat} makes up {use.Tonnes / all:0.######}, at least {flour.LeastShare:0.######} is needed.";
                }

                if (all > 0 && unit.LeastCampaignHours is { } hours && !NotAbove(hours, all / unit.TonnesPerHour))
                {
                    yield return $"{flour.Code}, period {t}: milled for {all / unit.TonnesPerHour:0.######} h, at least {hours:0.######} h.";
                }
            }
        }
    }
}
