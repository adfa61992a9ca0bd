namespace Evengrist.Ledger.Reckoned;

/// <summary>Mixtures that only a question makes: negative numbers, taken apart again into real parcels before anyone sees them.</summary>
internal sealed class PosedParcels : IParcelMaker
{
    private readonly List<Layer[]> mixtures = [];

    public void Stretch(long now, long next)
    {
    }

    public int Mix(int place, List<Layer> parts, double grams)
    {
        mixtures.Add([.. parts]);
        return -mixtures.Count;
    }

    public int Origin(int place, int movement, long at, long until, double grams, bool isGrain) => throw new InvalidOperationException("A question takes nothing out of a source.");

    public int Load(int place, int movement, long at, long until, List<Layer> parts, double grams) => Mix(place, parts, grams);

    public void Extend(int parcel, double grams)
    {
    }

    /// <summary>The layers with every posed mixture replaced by its parts; neighbours of one parcel joined.</summary>
    public IReadOnlyList<Layer> Apart(IEnumerable<Layer> layers)
    {
        var real = new List<Layer>();
        foreach (var layer in layers)
        {
            Apart(layer, real);
        }

        return real;
    }

    private void Apart(Layer layer, List<Layer> real)
    {
        if (layer.Parcel >= 0)
        {
            var last = real.Count - 1;
            if (last >= 0 && real[last].Parcel == layer.Parcel)
            {
                real[last] = layer with { Grams = real[last].Grams + layer.Grams };
            }
            else
            {
                real.Add(layer);
            }

            return;
        }

        var parts = mixtures[-layer.Parcel - 1];
        var sum = parts.Sum(p => p.Grams);
        foreach (var part in parts)
        {
            Apart(part with { Grams = layer.Grams * part.Grams / sum }, real);
        }
    }
}
