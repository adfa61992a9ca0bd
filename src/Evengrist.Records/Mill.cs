using Evengrist.Ledger;
using Evengrist.Records.Browsing;
using Evengrist.Records.Engines;
using Evengrist.Records.Opening;
using NodaTime;

namespace Evengrist.Records;

/// <summary>A mill's facts: on disk, and in memory as a <see cref="Book"/>. Safe for use by several threads; one is served at a time.</summary>
public sealed class Mill : IDisposable
{
    private readonly Lock gate = new();
    private readonly Book book = new();
    private readonly Engine engine;
    private readonly IClock clock;
    private readonly Reckonings reckonings;
    private readonly MillView view;
    private readonly SettingsShelf settings;

    internal Mill(Engine engine, IClock clock)
    {
        (this.engine, this.clock) = (engine, clock);
        reckonings = new Reckonings(book);
        view = new MillView(book, reckonings);
        settings = new SettingsShelf(engine, gate);
        Contracts = Papers("contract");
    }

    /// <summary>Name, zone, milling day and the like: the only things that are changed in place.</summary>
    public MillSettings Settings => settings.Get();

    /// <summary>Contracts by code and version.</summary>
    public PaperShelf Contracts { get; }

    /// <summary>Papers of a kind: <c>contract</c>, <c>certificate</c>, <c>bin-shape</c>; the rooms name theirs.</summary>
    public PaperShelf Papers(string kind) => new(kind, engine, gate, clock);

    /// <summary>Opens the mill, brings its tables up to date, and reads every fact.</summary>
    /// <exception cref="MillCannotOpen">It cannot; the message says why and what to do, and nothing was changed.</exception>
    public static Mill Open(MillOptions options, IClock clock, Action<MillProgress>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(clock);
        return Doors.Open(options, progress, engine =>
        {
            var mill = new Mill(engine, clock);
            mill.CatchUp(progress);
            return mill;
        });
    }

    /// <summary>
    /// Records a batch: all of it or nothing, safe on disk when this returns. A draft whose key the source has used before for
    /// the same content is not recorded again.
    /// </summary>
    /// <param name="drafts">In the order of recording.</param>
    /// <param name="by">Who records them.</param>
    /// <param name="source">Where they come from; keys are unique within it.</param>
    /// <param name="recorded">When they are recorded; now by default.</param>
    /// <exception cref="LedgerRefusal">A rule is broken, or a key was used for other content; nothing was recorded.</exception>
    public Receipt Record(IReadOnlyList<Draft> drafts, string by, string source, Instant? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(drafts);
        return Record(_ => drafts, by, source, recorded);
    }

    /// <summary>Records a batch that is made from what the mill holds at that very moment, with nothing else recorded in between.</summary>
    /// <param name="drafting">Makes the drafts; must not record anything itself.</param>
    /// <param name="by">Who records them.</param>
    /// <param name="source">Where they come from; keys are unique within it.</param>
    /// <param name="recorded">When they are recorded; now by default.</param>
    /// <param name="provided">Looks, before anything new is recorded, whether it may be, and throws where not; what was recorded before is not asked about again.</param>
    /// <exception cref="LedgerRefusal">A rule is broken, or a key was used for other content; nothing was recorded.</exception>
    public Receipt Record(Func<MillView, IReadOnlyList<Draft>> drafting, string by, string source, Instant? recorded = null, Action<MillView>? provided = null)
    {
        ArgumentNullException.ThrowIfNull(drafting);
        lock (gate)
        {
            engine.Begin();
            try
            {
                if (engine.MayBeBehind())
                {
                    Loading.CatchUp(engine, book);
                }

                return new Recording(engine, book, by, source, recorded ?? clock.GetCurrentInstant()).Record(drafting(view), () => provided?.Invoke(view));
            }
            finally
            {
                // After a commit there is nothing to roll back; after anything else nothing must stay.
                engine.Rollback();
            }
        }
    }

    /// <summary>Positions of the drafts that the source has not recorded yet, rising; nothing is recorded.</summary>
    /// <param name="drafts">What would be recorded.</param>
    /// <param name="source">Where they come from.</param>
    /// <exception cref="LedgerRefusal">A key was used before for other content.</exception>
    public IReadOnlyList<int> NewAmong(IReadOnlyList<Draft> drafts, string source)
    {
        ArgumentNullException.ThrowIfNull(drafts);
        lock (gate)
        {
            CatchUp();
            return new KnownKeys(engine, book, source).NewAmong(drafts);
        }
    }

    /// <summary>Changes the settings.</summary>
    /// <exception cref="ArgumentException">One of them cannot be.</exception>
    public void Set(MillSettings changed) => settings.Set(changed);

    /// <summary>Asks a question of a view that does not change while it is asked.</summary>
    public T Ask<T>(Func<MillView, T> question)
    {
        ArgumentNullException.ThrowIfNull(question);
        lock (gate)
        {
            CatchUp();
            return question(view);
        }
    }

    /// <summary>Looks facts up with who recorded them, newest first, a page at a time.</summary>
    public FactPage Facts(FactFilter filter)
    {
        ArgumentNullException.ThrowIfNull(filter);
        lock (gate)
        {
            CatchUp();
            return new FactQuery(engine, book, filter).Page();
        }
    }

    /// <summary>Reckons everything the mill holds under every hypothesis, so that the first question need not wait; others wait meanwhile.</summary>
    public void Warm()
    {
        lock (gate)
        {
            CatchUp();
            reckonings.Warm();
        }
    }

    /// <summary>Closes the mill; every fact is on disk already.</summary>
    public void Dispose()
    {
        lock (gate)
        {
            engine.Dispose();
        }
    }

    private void CatchUp(Action<MillProgress>? progress = null)
    {
        if (!engine.MayBeBehind() || engine.Last() == book.Last.Value)
        {
            return;
        }

        engine.Begin();
        try
        {
            Loading.CatchUp(engine, book, progress);
        }
        finally
        {
            engine.Rollback();
        }
    }
}
