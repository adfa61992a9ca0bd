namespace Evengrist.Ledger.Reckoned;

/// <summary>Holds next to nothing: what flows in during a stretch leaves blended in the same stretch.</summary>
/// <remarks>As long as the same parcels flow in at the same rates the mixture stays the same parcel, so that a steady hour is one parcel.</remarks>
internal sealed class JunctionContent : Content
{
    private const double SameShare = 1e-9;
    private readonly int place;
    private readonly IParcelMaker maker;
    private readonly List<Layer> parts;
    private readonly List<Layer> before = [];
    private double beforeGrams;
    private int mixture;
    private double grams;
    private bool stirred;

    public JunctionContent(int place, IParcelMaker maker)
        : this(place, maker, [])
    {
    }

    private JunctionContent(int place, IParcelMaker maker, List<Layer> parts)
    {
        this.place = place;
        this.maker = maker;
        this.parts = parts;
        mixture = -1;
    }

    public override double Grams => grams;

    public override void Fill(int parcel, double added)
    {
        if (stirred)
        {
            // Left over from the stretch before: a rounding of grams, or a place that does hold something after all.
            parts.Clear();
            parts.Add(new Layer(mixture, grams));
            stirred = false;
        }

        grams += added;
        parts.Add(parcel, added);
    }

    public override void Draw(double wanted, List<Layer> taken)
    {
        if (grams <= 0)
        {
            return;
        }

        if (!stirred)
        {
            Stir();
        }

        var drawn = Math.Min(wanted, grams);
        taken.Add(new Layer(mixture, drawn));
        grams -= drawn;
        if (grams <= Nothing)
        {
            grams = 0;
            parts.Clear();
            stirred = false;
        }
    }

    public override void List(List<Layer> into)
    {
        if (stirred)
        {
            into.Add(new Layer(mixture, grams));
        }
        else
        {
            into.AddRange(parts);
        }
    }

    /// <summary>The next mixture becomes a parcel of its own, even if it is like the last one.</summary>
    public void Forget() => before.Clear();

    public override Content Copy(IParcelMaker other)
    {
        var copy = new JunctionContent(place, other, [.. parts]) { beforeGrams = beforeGrams, mixture = mixture, grams = grams, stirred = stirred };
        copy.before.AddRange(before);
        return copy;
    }

    public override void Renumber(Func<int, int> number)
    {
        Forget();
        parts.Renumber(number);
        mixture = stirred ? number(mixture) : -1;
    }

    private void Stir()
    {
        stirred = true;
        if (parts.Count == 1)
        {
            mixture = parts[0].Parcel;
            before.Clear();
            return;
        }

        if (IsAsBefore())
        {
            maker.Extend(mixture, grams);
            return;
        }

        mixture = maker.Mix(place, parts, grams);
        before.Clear();
        before.AddRange(parts);
        beforeGrams = grams;
    }

    private bool IsAsBefore()
    {
        if (before.Count != parts.Count)
        {
            return false;
        }

        for (var i = 0; i < parts.Count; i++)
        {
            if (parts[i].Parcel != before[i].Parcel || Math.Abs(parts[i].Grams / grams - before[i].Grams / beforeGrams) > SameShare)
            {
                return false;
            }
        }

        return true;
    }
}
