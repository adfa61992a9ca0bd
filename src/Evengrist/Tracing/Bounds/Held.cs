using Evengrist.Ledger;

namespace Evengrist.Tracing.Bounds;

/// <summary>What is known of the suspect in one place.</summary>
internal abstract class Held
{
    /// <summary>All that lies in it.</summary>
    public abstract Batch All { get; }

    /// <summary>How much lies in it.</summary>
    public virtual double Grams => All.Grams;

    /// <summary>Whether it holds none of the suspect but crumbs.</summary>
    public virtual bool IsClean(double crumbs) => All.Most <= crumbs;

    /// <summary>Everything that came in since it was first suspect: grams and suspect grams.</summary>
    public Batch Come { get; private set; }

    /// <summary>Whether what it holds may leave in any order, so that what one flow took is also bounded by all it drew from.</summary>
    public virtual bool IsAnyOrder => false;

    /// <summary>What comes in during a stretch and what goes out in the same.</summary>
    /// <param name="into">All that comes in.</param>
    /// <param name="draws">Grams drawn by each flow; together at most what lies there with what comes in.</param>
    /// <param name="outs">What each draws.</param>
    /// <param name="cap">All the suspect there is, at most.</param>
    public void Exchange(in Batch into, ReadOnlySpan<double> draws, Span<Batch> outs, double cap)
    {
        Come = new Batch(Come.Grams + into.Grams, Come.Least + into.Least, Come.Most + into.Most, 0, 1);
        Pass(into, draws, outs, cap);
    }

    protected abstract void Pass(in Batch into, ReadOnlySpan<double> draws, Span<Batch> outs, double cap);

    protected static double Sum(ReadOnlySpan<double> draws)
    {
        double sum = 0;
        foreach (var draw in draws)
        {
            sum += draw;
        }

        return sum;
    }

    public static Held Of(Place place, double clean, bool throughUnknown) => place.Kind.Role() switch
    {
        PlaceRole.Junction => new JunctionHeld(clean),
        PlaceRole.Unit => new UnitHeld(clean),
        PlaceRole.Through when !throughUnknown => new ThroughHeld(clean, place.Stirred.Grams),
        _ => new StoreHeld(clean),
    };
}
