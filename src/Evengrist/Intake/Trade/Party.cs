namespace Evengrist.Intake.Trade;

/// <summary>A firm or farm that wheat is bought from, or that hauls it: what a receipt record must say of it.</summary>
/// <remarks>Address and telephone may be left out and are then named as missing where a record needs them. Source: 21 CFR 1.337(a)(1) and (6), 2015 edition.</remarks>
public sealed record Party : ITradePaper
{
    /// <summary>The kind of paper it is kept under.</summary>
    public const string Kind = "party";

    /// <inheritdoc/>
    public required string Code { get; init; }

    /// <summary>Name of the firm or farm.</summary>
    public required string Name { get; init; }

    /// <summary>Postal address in one line; may be empty.</summary>
    public string Address { get; init; } = "";

    /// <summary>Telephone; may be empty.</summary>
    public string Phone { get; init; } = "";

    /// <summary>Fax, where there is one.</summary>
    public string? Fax { get; init; }

    /// <summary>E-mail address, where there is one.</summary>
    public string? Email { get; init; }

    /// <inheritdoc/>
    public IReadOnlyList<string> Faults() =>
        [.. PaperText.Lines("A party", ("code", Code, true), ("name", Name, true), ("address", Address, false), ("telephone", Phone, false), ("fax", Fax, false), ("e-mail", Email, false))];
}
