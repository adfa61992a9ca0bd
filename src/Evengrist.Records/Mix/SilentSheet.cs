namespace Evengrist.Records.Mix;

/// <summary>A sheet that is over and tells nothing of how the flour follows from the wheat.</summary>
/// <param name="Flour">Code of its flour.</param>
/// <param name="Sheet">Code of the sheet.</param>
/// <param name="Reason">Why, as a sentence without its stop.</param>
public sealed record SilentSheet(string Flour, string Sheet, string Reason);
