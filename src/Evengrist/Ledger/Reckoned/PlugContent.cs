namespace Evengrist.Ledger.Reckoned;

/// <summary>First in, first out.</summary>
internal sealed class PlugContent : Content
{
    private Layer[] layers;
    private int head;
    private int count;
    private double grams;

    public PlugContent() => layers = new Layer[4];

    private PlugContent(PlugContent other)
    {
        layers = new Layer[Math.Max(4, other.count)];
        for (var i = 0; i < other.count; i++)
        {
            layers[i] = other.At(i);
        }

        count = other.count;
        grams = other.grams;
    }

    public override double Grams => grams;

    public override double Alike => count > 1 ? At(0).Grams : double.PositiveInfinity;

    public override void Fill(int parcel, double added)
    {
        grams += added;
        if (count > 0 && At(count - 1) is var last && last.Parcel == parcel)
        {
            At(count - 1) = last with { Grams = last.Grams + added };
            return;
        }

        if (count == layers.Length)
        {
            Grow();
        }

        count++;
        At(count - 1) = new Layer(parcel, added);
    }

    public override void Draw(double wanted, List<Layer> taken)
    {
        while (count > 0 && wanted > 0)
        {
            ref var bottom = ref At(0);
            if (bottom.Grams > wanted + Nothing)
            {
                bottom = bottom with { Grams = bottom.Grams - wanted };
                grams -= wanted;
                taken.Add(new Layer(bottom.Parcel, wanted));
                return;
            }

            taken.Add(bottom);
            wanted -= bottom.Grams;
            grams -= bottom.Grams;
            head = (head + 1) % layers.Length;
            count--;
        }

        if (count == 0)
        {
            grams = 0;
        }
    }

    public override void List(List<Layer> into)
    {
        for (var i = 0; i < count; i++)
        {
            into.Add(At(i));
        }
    }

    public override Content Copy(IParcelMaker maker) => new PlugContent(this);

    public override void Renumber(Func<int, int> number)
    {
        for (var i = 0; i < count; i++)
        {
            ref var layer = ref At(i);
            layer = layer with { Parcel = number(layer.Parcel) };
        }
    }

    private ref Layer At(int i) => ref layers[(head + i) % layers.Length];

    private void Grow()
    {
        var larger = new Layer[layers.Length * 2];
        for (var i = 0; i < count; i++)
        {
            larger[i] = At(i);
        }

        (layers, head) = (larger, 0);
    }
}
