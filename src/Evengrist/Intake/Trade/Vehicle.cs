namespace Evengrist.Intake.Trade;

/// <summary>Whose trailer or railcar it is: the firm that hauls with it.</summary>
public sealed record Vehicle : ITradePaper
{
    /// <summary>The kind of paper it is kept under.</summary>
    public const string Kind = "vehicle";

    /// <summary>The plate as it stands on tickets.</summary>
    public required string Code { get; init; }

    /// <summary>Code of the party that hauls with it.</summary>
    public required string Carrier { get; init; }

    /// <inheritdoc/>
    public IReadOnlyList<string> Faults() => [.. PaperText.Lines("A vehicle", ("plate", Code, true), ("carrier's code", Carrier, true))];
}
