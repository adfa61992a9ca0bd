using Evengrist.Ledger;

namespace Evengrist.Tracing;

/// <summary>One hypothesis being traced: its reckoning and what walks its graph.</summary>
internal sealed class Strand
{
    /// <summary>Below this share of the whole a parcel is not followed: a milligram in a tonne a thousand times over.</summary>
    public const double Least = 1e-9;

    private readonly ForwardRows forward;

    public Strand(Reckoning reckoning)
    {
        Reckoning = reckoning;
        forward = new ForwardRows(reckoning.Parcels.Rows);
        Sweep = new Sweep(reckoning.Parcels.Rows, forward);
    }

    public Reckoning Reckoning { get; }

    public Sweep Sweep { get; }

    public ParcelGraph Parcels => Reckoning.Parcels;

    public void CatchUp()
    {
        Reckoning.CatchUp();
        forward.CatchUp();
    }
}
