namespace Evengrist.Demo;

/// <summary>What the flour and by-product bins hold by the ledger, in grams.</summary>
internal sealed class FlourStock
{
    private readonly Dictionary<string, long> grams = [];

    public long this[string bin] => grams.GetValueOrDefault(bin);

    public void Add(string bin, long more) => grams[bin] = this[bin] + more;
}
