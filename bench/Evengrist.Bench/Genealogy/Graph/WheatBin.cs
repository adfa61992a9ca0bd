namespace Evengrist.Bench.Genealogy.Graph;

/// <summary>The layers in a bin, lowest first, drawn through a window over the lowest thirty.</summary>
internal sealed class WheatBin
{
    private const int Window = 30;
    private const double Crumb = 1;
    private readonly List<(int Layer, double Kg)> layers = [];

    /// <summary>Filled less drawn. Whole kilograms, so that two bins that hold the same on paper tie exactly; crumbs stay counted.</summary>
    public double Kg { get; private set; }

    public void Fill(int layer, double kg)
    {
        layers.Add((layer, kg));
        Kg += kg;
    }

    /// <summary>Draws a mass and adds what each layer gave; layers left with a kilogram or less are swept out.</summary>
    public void Draw(double kg, List<(int Layer, double Kg)> taken)
    {
        var window = Math.Min(Window, layers.Count);
        var pulls = new double[window];
        for (var j = 0; j < window; j++)
        {
            pulls[j] = Math.Pow(0.9, j) * layers[j].Kg;
        }

        var pull = pulls.Sum();
        var takes = new double[layers.Count];
        for (var j = 0; j < window; j++)
        {
            takes[j] = Math.Min(layers[j].Kg, kg * pulls[j] / pull);
        }

        var missing = kg - takes.Sum();
        for (var j = 0; j < layers.Count && missing > 0; j++)
        {
            var more = Math.Min(missing, layers[j].Kg - takes[j]);
            takes[j] += more;
            missing -= more;
        }

        for (var j = 0; j < layers.Count; j++)
        {
            if (takes[j] > 0)
            {
                taken.Add((layers[j].Layer, takes[j]));
                layers[j] = (layers[j].Layer, layers[j].Kg - takes[j]);
            }
        }

        // What rounding leaves missing is not a shortage.
        Kg -= missing > 1e-3 ? kg - missing : kg;
        layers.RemoveAll(layer => layer.Kg <= Crumb);
    }
}
