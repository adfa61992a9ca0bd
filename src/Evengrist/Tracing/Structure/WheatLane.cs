using Evengrist.Ledger;

namespace Evengrist.Tracing.Structure;

/// <summary>One of the bins a mix is drawn from, filling after filling.</summary>
internal sealed class WheatLane(Outflow emptying)
{
    private readonly Queue<List<(int Truck, double Kilograms)>> closed = new();
    private List<(int Truck, double Kilograms)> open = [];
    private double inOpen;

    /// <summary>Kilograms in it.</summary>
    public double Kilograms { get; private set; }

    public void Fill(int truck, double kilograms, double whole)
    {
        open.Add((truck, kilograms));
        inOpen += kilograms;
        Kilograms += kilograms;
        if (inOpen >= whole)
        {
            Close();
        }
    }

    /// <summary>Whether a filling is begun and not full.</summary>
    public bool IsOpen => open.Count > 0;

    public void Close()
    {
        if (open.Count > 0)
        {
            closed.Enqueue(open);
            (open, inOpen) = ([], 0);
        }
    }

    /// <summary>Draws wheat into a mixture; what is there must suffice.</summary>
    public void Draw(double kilograms, Dictionary<int, double> into)
    {
        Kilograms -= kilograms;
        while (kilograms > 1e-9 && closed.TryPeek(out var filling))
        {
            var there = filling.Sum(p => p.Kilograms);
            var taken = Math.Min(there, kilograms);
            kilograms -= taken;
            if (taken >= there - 1e-9)
            {
                filling.ForEach(p => Add(into, p.Truck, p.Kilograms));
                closed.Dequeue();
            }
            else if (emptying == Outflow.Stirred)
            {
                for (var i = 0; i < filling.Count; i++)
                {
                    var part = filling[i].Kilograms * taken / there;
                    Add(into, filling[i].Truck, part);
                    filling[i] = (filling[i].Truck, filling[i].Kilograms - part);
                }
            }
            else
            {
                FromTheFront(filling, taken, into);
            }
        }
    }

    private static void FromTheFront(List<(int Truck, double Kilograms)> filling, double taken, Dictionary<int, double> into)
    {
        var gone = 0;
        while (taken > 1e-9 && gone < filling.Count)
        {
            var (truck, there) = filling[gone];
            var part = Math.Min(there, taken);
            Add(into, truck, part);
            taken -= part;
            if (part >= there - 1e-9)
            {
                gone++;
            }
            else
            {
                filling[gone] = (truck, there - part);
            }
        }

        filling.RemoveRange(0, gone);
    }

    private static void Add(Dictionary<int, double> into, int truck, double kilograms) => into[truck] = into.GetValueOrDefault(truck) + kilograms;
}
