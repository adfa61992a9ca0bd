using Evengrist.Plant.Imports;
using NodaTime;

namespace Evengrist.Web.Sights;

/// <summary>What a person says about a file to be imported.</summary>
public sealed class UploadForm
{
    /// <summary>One of <see cref="ImportKind"/>.</summary>
    public string? Kind { get; set; }

    /// <summary><c>point</c>, <c>comma</c>, or empty for what the file shows.</summary>
    public string? Decimal { get; set; }

    /// <summary>Zone of times without an offset; empty for what the file declares.</summary>
    public string? Zone { get; set; }

    /// <summary>The file.</summary>
    public IFormFile? File { get; set; }

    /// <summary>The kind; null where it is none.</summary>
    public ImportKind? KindRead => Enum.TryParse<ImportKind>(Kind, ignoreCase: true, out var kind) && Enum.IsDefined(kind) ? kind : null;

    /// <summary>The zone; null where none was given or there is none of that name.</summary>
    public DateTimeZone? ZoneRead => string.IsNullOrWhiteSpace(Zone) ? null : DateTimeZoneProviders.Tzdb.GetZoneOrNull(Zone.Trim());

    /// <summary>What is wrong with the form itself; null where nothing is.</summary>
    public string? Fault => KindRead is null ? "Choose what the file brings in."
        : File is not { Length: > 0 } ? "Choose a file; an empty one brings nothing."
        : !string.IsNullOrWhiteSpace(Zone) && ZoneRead is null ? $"\"{Zone}\" is no time zone. Write it like America/Chicago or Europe/Berlin, or leave it empty."
        : null;

    /// <summary>The choices for the reader.</summary>
    public ImportOptions Options => new()
    {
        Decimal = Decimal switch { "point" => DecimalMark.Point, "comma" => DecimalMark.Comma, _ => null }, Zone = ZoneRead,
    };
}
