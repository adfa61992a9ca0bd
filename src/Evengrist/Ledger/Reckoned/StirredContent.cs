namespace Evengrist.Ledger.Reckoned;

/// <summary>Stirred: all that lies in the place is one mixture, and that is what leaves.</summary>
/// <remarks>A new parcel is made for the mixture only when something is drawn after something was set down.</remarks>
internal sealed class StirredContent : Content
{
    private readonly int place;
    private readonly IParcelMaker maker;
    private readonly List<Layer> parts;
    private double grams;

    public StirredContent(int place, IParcelMaker maker)
        : this(place, maker, [], 0)
    {
    }

    private StirredContent(int place, IParcelMaker maker, List<Layer> parts, double grams)
    {
        this.place = place;
        this.maker = maker;
        this.parts = parts;
        this.grams = grams;
    }

    public override double Grams => grams;

    public override void Fill(int parcel, double added)
    {
        grams += added;
        parts.Add(parcel, added);
    }

    public override void Draw(double wanted, List<Layer> taken)
    {
        if (grams <= 0)
        {
            return;
        }

        var mixture = Stir();
        var drawn = Math.Min(wanted, grams);
        taken.Add(new Layer(mixture, drawn));
        grams -= drawn;
        if (grams <= Nothing)
        {
            grams = 0;
            parts.Clear();
        }
        else
        {
            parts[0] = new Layer(mixture, grams);
        }
    }

    public override void List(List<Layer> into) => into.AddRange(parts);

    public override Content Copy(IParcelMaker other) => new StirredContent(place, other, [.. parts], grams);

    public override void Renumber(Func<int, int> number) => parts.Renumber(number);

    private int Stir()
    {
        if (parts.Count == 1)
        {
            return parts[0].Parcel;
        }

        var mixture = maker.Mix(place, parts, grams);
        parts.Clear();
        parts.Add(new Layer(mixture, grams));
        return mixture;
    }
}
