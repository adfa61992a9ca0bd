using NodaTime;

namespace Evengrist.Intake.Trade;

/// <summary>What is known of a grower's field for a season: whose it is, where, how large, and which variety stood on it.</summary>
public sealed record FieldSheet : ITradePaper
{
    /// <summary>The kind of paper it is kept under.</summary>
    public const string Kind = "field";

    /// <inheritdoc/>
    public required string Code { get; init; }

    /// <summary>Code of the party that grows on it.</summary>
    public required string Grower { get; init; }

    /// <summary>The district it lies in; may be empty.</summary>
    public string District { get; init; } = "";

    /// <summary>The variety of the season; may be empty while it is not known. A field that bore two classes names each: <c>HW Sennor; HWW Blanquil</c>.</summary>
    public string Variety { get; init; } = "";

    /// <summary>Area, hectares, above 0; null where it is not known.</summary>
    public decimal? Hectares { get; init; }

    /// <summary>First milling day for which this holds, usually that of the crop year; null for always.</summary>
    public LocalDate? From { get; init; }

    /// <summary>The variety of a class on this field.</summary>
    /// <param name="wheat">The class as tickets have it; may be empty.</param>
    public string VarietyOf(string wheat) => Variety.Split(';', StringSplitOptions.TrimEntries).FirstOrDefault(v => wheat is { Length: > 0 } && v.StartsWith(wheat + " ", StringComparison.OrdinalIgnoreCase)) is { } named
        ? named[(wheat.Length + 1)..].Trim()
        : Variety.Contains(';', StringComparison.Ordinal) ? "" : Variety;

    /// <inheritdoc/>
    public IReadOnlyList<string> Faults() =>
    [
        .. PaperText.Lines("A field", ("code", Code, true), ("grower's code", Grower, true), ("district", District, false), ("variety", Variety, false)),
        .. Hectares is <= 0m or > 100_000m ? [$"A field has more than 0 and at most 100,000 hectares; read {Hectares}."] : Array.Empty<string>(),
    ];
}
