namespace Evengrist.Ledger.Reckoned;

/// <summary>Gives the numbers the graph gave when the same stretch was first reckoned: reckoning is the same every time.</summary>
internal sealed class ReplayedParcels(int next) : IParcelMaker
{
    public void Stretch(long now, long until)
    {
    }

    public int Mix(int place, List<Layer> parts, double grams) => next++;

    public int Origin(int place, int movement, long at, long until, double grams, bool isGrain) => next++;

    public int Load(int place, int movement, long at, long until, List<Layer> parts, double grams) => next++;

    public void Extend(int parcel, double grams)
    {
    }
}
