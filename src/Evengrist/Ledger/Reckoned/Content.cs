namespace Evengrist.Ledger.Reckoned;

/// <summary>What is reckoned to lie in one place, and in which order it leaves.</summary>
internal abstract class Content
{
    /// <summary>Less than this is taken for nothing: rounding of reckoned grams, not grain.</summary>
    public const double Nothing = 1e-3;

    /// <summary>Grams in the place.</summary>
    public abstract double Grams { get; }

    /// <summary>Grams that can be drawn before another parcel begins to leave; infinite where what leaves does not change by drawing.</summary>
    public virtual double Alike => double.PositiveInfinity;

    /// <summary>The same where for each gram drawn so many fall in first.</summary>
    public virtual double AlikeFilled(double filledPerDrawn) => Alike;

    /// <summary>Whether it was kept as it lies, so that it must not change any more; a copy may.</summary>
    public bool IsKept { get; private set; }

    /// <summary>Keeps it as it lies.</summary>
    public Content Keep()
    {
        IsKept = true;
        return this;
    }

    /// <summary>Sets grams of a parcel down in the place.</summary>
    public abstract void Fill(int parcel, double grams);

    /// <summary>Takes grams out, at most what is there; appends what was taken, in the order in which it left.</summary>
    public abstract void Draw(double grams, List<Layer> taken);

    /// <summary>Appends what lies in the place, bottom first.</summary>
    public abstract void List(List<Layer> layers);

    /// <summary>A copy that shares nothing that changes, and makes its parcels in another graph.</summary>
    public abstract Content Copy(IParcelMaker maker);

    /// <summary>Gives every parcel in it another number, that of the same parcel in another graph; for copies.</summary>
    public abstract void Renumber(Func<int, int> number);
}
