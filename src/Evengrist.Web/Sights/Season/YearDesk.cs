using Evengrist.Planning.Season;
using Evengrist.Records;
using Evengrist.Records.Season;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Web.Sights.Season;

/// <summary>Plans that were asked for, the newest kept at hand.</summary>
public sealed class YearDesk
{
    private const int Kept = 12;
    private readonly Lock gate = new();
    private readonly List<(YearQuestion Question, YearPlan Plan)> plans = [];

    /// <summary>The plan of a mill's terms from a moment on: at once where it was asked before, else planned now, under a second for the usual year.</summary>
    public YearPlan PlanOf(Mill mill, SeasonTerms terms, Instant at)
    {
        var question = YearQuestion.Of(mill, terms, at);
        lock (gate)
        {
            if (plans.Find(p => p.Question == question).Plan is { } known)
            {
                return known;
            }

            var (spec, remarks) = SeasonShelf.SpecOf(mill, terms, at);
            var plan = new YearPlan(spec, remarks, SeasonPlanner.Linear(spec));
            plans.Add((question, plan));
            if (plans.Count > Kept)
            {
                plans.RemoveAt(0);
            }

            return plan;
        }
    }
}
