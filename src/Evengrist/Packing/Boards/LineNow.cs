namespace Evengrist.Packing.Boards;

/// <summary>A packing line when a plan begins.</summary>
/// <param name="Code">Its code in the ledger.</param>
/// <param name="LastProduct">Code of the product it packed last, or of its flour where the pack is not known; null where it stands clean.</param>
public sealed record LineNow(string Code, string? LastProduct);
