using Evengrist.Bins.BestBin;
using Evengrist.Planning.Season;
using Evengrist.Records;
using Evengrist.Records.Season;
using Evengrist.Season;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Web.Sights.Season;

/// <summary>Plans that were asked for, the newest kept at hand, and the work on plans that can be milled.</summary>
public sealed class YearDesk : IDisposable
{
    private const int Kept = 12;
    private readonly Lock planning = new();
    private readonly Lock gate = new(); // never held while the mill is asked: a page may come here in the midst of a question to it
    private readonly List<(YearQuestion Question, YearPlan Plan)> plans = [];

    /// <summary>What a load is worth to the year, by the newest linear plan of the mill's terms that is at hand and begins at most a week before; null where there is none.</summary>
    public TruckYear? WorthOf(Mill mill, TruckLoad load, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (SeasonShelf.TermsOf(mill) is not { } kept)
        {
            return null;
        }

        var terms = kept.Terms.ToJson();
        YearPlan? newest;
        lock (gate)
        {
            newest = plans.Where(p => p.Question.Terms == terms && p.Question.At <= at && at - p.Question.At < Duration.FromDays(7)).OrderByDescending(p => p.Question.At).Select(p => p.Plan).FirstOrDefault();
        }

        return newest?.Linear is SeasonPlanned linear ? TruckYear.Of(linear.Plan, kept.Terms, load) : null;
    }

    /// <summary>The plan of a mill's terms from a moment on: at once where it was asked before, else planned now, under a second for the usual year.</summary>
    public YearPlan PlanOf(Mill mill, SeasonTerms terms, Instant at)
    {
        var question = YearQuestion.Of(mill, terms, at);
        lock (planning)
        {
            if (Known(question) is { } known)
            {
                return known;
            }

            var (spec, remarks) = SeasonShelf.SpecOf(mill, terms, at);
            var plan = new YearPlan(spec, remarks, SeasonPlanner.Linear(spec));
            Keep(question, plan);
            return plan;
        }
    }

    private YearPlan? Known(YearQuestion question)
    {
        lock (gate)
        {
            return plans.Find(p => p.Question == question).Plan;
        }
    }

    private void Keep(YearQuestion question, YearPlan plan)
    {
        lock (gate)
        {
            plans.Add((question, plan));
            if (plans.Count > Kept)
            {
                plans[0].Plan.Stop();
                plans.RemoveAt(0);
            }
        }
    }

    /// <summary>Stops what is still being planned.</summary>
    public void Dispose() => plans.ForEach(p => p.Plan.Stop());
}
