namespace Evengrist.Web.Sights;

/// <summary>Long work that was begun, the newest kept at hand, so that a page looked at again finds it.</summary>
public sealed class WorkShelf : IDisposable
{
    private const int Kept = 12;
    private readonly Lock gate = new();
    private readonly List<(object Question, string Asked, LongWork Work)> works = [];

    /// <summary>The work on a question: begun where nobody asked it yet, or where it was stopped and is asked again.</summary>
    /// <param name="question">What it is about; equal where nothing has changed.</param>
    /// <param name="asked">What is asked of it, in full.</param>
    /// <param name="begin">Begins the work.</param>
    /// <param name="again">Whether what was stopped is begun anew.</param>
    public LongWork<TOutcome> WorkOn<TOutcome>(object question, string asked, Func<LongWork<TOutcome>> begin, bool again = false)
        where TOutcome : class
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(begin);
        lock (gate)
        {
            var at = works.FindIndex(w => w.Question.Equals(question) && w.Asked == asked && w.Work is LongWork<TOutcome>);
            if (at >= 0 && !(again && works[at].Work is { IsRunning: false, IsStopping: true }))
            {
                return (LongWork<TOutcome>)works[at].Work;
            }

            if (at >= 0)
            {
                works.RemoveAt(at);
            }

            var work = begin();
            works.Add((question, asked, work));
            if (works.Count > Kept)
            {
                works[0].Work.Stop();
                works.RemoveAt(0);
            }

            return work;
        }
    }

    /// <summary>Stops what still goes on.</summary>
    public void Dispose() => works.ForEach(w => w.Work.Stop());
}
