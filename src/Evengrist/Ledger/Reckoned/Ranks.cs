namespace Evengrist.Ledger.Reckoned;

/// <summary>In which order movements of one moment are reckoned.</summary>
internal static class Ranks
{
    /// <summary>By the kind of the place they leave: down the way of the grain; what comes back from beyond the lines goes first.</summary>
    public static int Of(PlaceKind from) => from is PlaceKind.ReworkTote or PlaceKind.Customer ? 0 : (int)from;
}
