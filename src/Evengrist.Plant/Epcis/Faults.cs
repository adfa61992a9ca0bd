namespace Evengrist.Plant.Epcis;

/// <summary>Faults as they are found; after so many the rest is only counted, so that a broken file of millions of values stays readable.</summary>
internal sealed class Faults
{
    public const int Most = 500;
    private readonly List<Fault> found = [];
    private int more;

    public int Count => found.Count + more;

    public void Add(Fault fault)
    {
        if (found.Count < Most)
        {
            found.Add(fault);
        }
        else
        {
            more++;
        }
    }

    public IReadOnlyList<Fault> All() => more == 0 ? found : [.. found, Fault.Told("", $"And {more} faults more.")];
}
