namespace Evengrist.Tracing.Bounds;

/// <summary>
/// A quantity of which not all is known: how many grams of it are suspect lies between bounds, and no part of it holds a smaller
/// or a larger share than stated.
/// </summary>
/// <param name="Grams">How much it is, as it lies.</param>
/// <param name="Least">Suspect grams at least.</param>
/// <param name="Most">Suspect grams at most.</param>
/// <param name="Thin">Least suspect share of any part; fraction.</param>
/// <param name="Rich">Greatest suspect share of any part; fraction.</param>
internal readonly record struct Batch(double Grams, double Least, double Most, double Thin, double Rich)
{
    public static Batch Clean(double grams) => new(grams, 0, 0, 0, 0);

    public static Batch Suspect(double grams) => new(grams, grams, grams, 1, 1);

    /// <summary>Nothing is known of it but how much of the suspect there is at all.</summary>
    public static Batch Unknown(double grams, double cap) => new(grams, 0, Math.Min(grams, cap), 0, 1);

    public bool IsClean => Most <= 0;

    /// <summary>Both lie beside each other: any part may be of either.</summary>
    public Batch Beside(in Batch other, double cap)
    {
        if (other.Grams <= 0)
        {
            return this;
        }

        if (Grams <= 0)
        {
            return other;
        }

        return new Batch(Grams + other.Grams, Least + other.Least, Math.Min(Most + other.Most, cap), Math.Min(Thin, other.Thin), Math.Max(Rich, other.Rich)).Tight();
    }

    /// <summary>Both are blended evenly at every moment.</summary>
    public Batch Blended(in Batch other, double cap)
    {
        var grams = Grams + other.Grams;
        return grams <= 0 ? this : new Batch(grams, Least + other.Least, Math.Min(Most + other.Most, cap), (Thin * Grams + other.Thin * other.Grams) / grams, (Rich * Grams + other.Rich * other.Grams) / grams).Tight();
    }

    /// <summary>Some of it, no matter which: what is left may hold anything the bounds allow.</summary>
    public Batch Part(double drawn)
    {
        if (drawn >= Grams)
        {
            return this with { Grams = drawn };
        }

        var rest = Grams - drawn;
        var least = Math.Max(0, Math.Max(Thin * drawn, Least - Rich * rest));
        return new Batch(drawn, least, Math.Max(least, Math.Min(Math.Min(Most, drawn * Rich), Most - Thin * rest)), Thin, Rich);
    }

    /// <summary>An even share of it.</summary>
    public Batch Share(double fraction) => new(Grams * fraction, Least * fraction, Most * fraction, Thin, Rich);

    /// <summary>One even parcel.</summary>
    public Batch Even() => Grams <= 0 ? this : this with { Thin = Math.Min(1, Least / Grams), Rich = Math.Min(1, Most / Grams) };

    private Batch Tight()
    {
        var least = Math.Max(Least, Thin * Grams);
        return this with { Least = least, Most = Math.Max(least, Math.Min(Most, Rich * Grams)) };
    }
}
