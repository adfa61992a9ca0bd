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
    private readonly WorkShelf works = new();

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
        return PlanOf(YearQuestion.Of(mill, terms, at), () => SeasonShelf.SpecOf(mill, terms, at));
    }

    /// <summary>The plan of another year that a question stands for: at once where it was asked before.</summary>
    public YearPlan PlanOf(YearQuestion question, SeasonSpec spec) => PlanOf(question, () => (spec, []));

    private YearPlan PlanOf(YearQuestion question, Func<(SeasonSpec Spec, IReadOnlyList<string> Remarks)> read)
    {
        lock (planning)
        {
            if (Known(question) is { } known)
            {
                return known;
            }

            var (spec, remarks) = read();
            var plan = new YearPlan(spec, remarks, SeasonPlanner.Linear(spec));
            Keep(question, plan);
            return plan;
        }
    }

    /// <summary>The work on a question about a year: begun where nobody asked it yet, or where it was stopped and is asked again.</summary>
    /// <param name="question">The year.</param>
    /// <param name="asked">What is asked of it, in full.</param>
    /// <param name="begin">Begins the work.</param>
    /// <param name="again">Whether what was stopped is begun anew.</param>
    public LongWork<TOutcome> WorkOn<TOutcome>(YearQuestion question, string asked, Func<LongWork<TOutcome>> begin, bool again = false)
        where TOutcome : class => works.WorkOn(question, asked, begin, again);

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
    public void Dispose()
    {
        plans.ForEach(p => p.Plan.Stop());
        works.Dispose();
    }
}
