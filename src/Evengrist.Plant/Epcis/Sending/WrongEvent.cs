namespace Evengrist.Plant.Epcis.Sending;

/// <summary>An event told earlier that the ledger does not say any more.</summary>
/// <param name="Sending">Number of the sending that told it, from 1.</param>
/// <param name="Line">Its place among what that sending told, from 0.</param>
/// <param name="Event">The event as it was told.</param>
/// <param name="CorrectedBy">Identifiers of what stands in for it; empty where nothing does: it did not occur.</param>
public sealed record WrongEvent(int Sending, int Line, EpcisEvent Event, IReadOnlyList<string> CorrectedBy);
