namespace Evengrist.Ledger.Reckoned;

/// <summary>Where reckoning gets its parcels: the graph itself, or the same numbers again when a stretch is run a second time.</summary>
internal interface IParcelMaker
{
    /// <summary>Says which stretch of time is being reckoned, microseconds.</summary>
    void Stretch(long now, long next);

    /// <summary>The parcel for a mixture now lying in a place.</summary>
    int Mix(int place, List<Layer> parts, double grams);

    /// <summary>The parcel a movement takes out of a source.</summary>
    int Origin(int place, int movement, long at, long until, double grams, bool isGrain);

    /// <summary>The parcel a movement sets down in a unit or a sink; −1 as movement for what is marked on its way out of a place.</summary>
    int Load(int place, int movement, long at, long until, List<Layer> parts, double grams);

    /// <summary>A mixture made before flowed on through the stretch.</summary>
    void Extend(int parcel, double grams);
}
