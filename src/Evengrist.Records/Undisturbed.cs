using System.Runtime;

namespace Evengrist.Records;

/// <summary>A stretch of time without garbage collection, while many facts are read that all stay: each collection would only copy them about.</summary>
internal sealed class Undisturbed : IDisposable
{
    private const long BytesPerFact = 450, Least = 50_000, MostBytes = 240_000_000;

    private Undisturbed()
    {
    }

    /// <summary>Begins it, for a long stretch of facts; null where it does not pay or is not to be had.</summary>
    public static Undisturbed? While(long facts)
    {
        try
        {
            return facts >= Least && GC.TryStartNoGCRegion(Math.Min(facts * BytesPerFact, MostBytes)) ? new Undisturbed() : null;
        }
        catch (Exception none) when (none is InvalidOperationException or ArgumentOutOfRangeException)
        {
            // Another mill of this process is being opened, or there is too little memory for it.
            return null;
        }
    }

    public void Dispose()
    {
        // What was allocated beyond the bound has ended it already.
        if (GCSettings.LatencyMode == GCLatencyMode.NoGCRegion)
        {
            GC.EndNoGCRegion();
        }
    }
}
