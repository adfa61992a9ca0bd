using System.Globalization;
using System.Text.RegularExpressions;

namespace Evengrist.Bins.Storage;

/// <summary>A sensor on a temperature cable, as the instrument of a reading names it: <c>C2 at 4.0 m</c>.</summary>
/// <param name="Cable">The cable, letters and digits: <c>C2</c>.</param>
/// <param name="Metres">Height above the floor of the bin, m, 0 to 100.</param>
public sealed partial record CablePoint(string Cable, decimal Metres)
{
    /// <summary>What a point looks like, for messages.</summary>
    public const string Form = "a cable and a height above the floor, such as \"C2 at 4.0 m\"";

    /// <summary>Reads a point; null where the text names none.</summary>
    public static CablePoint? Parse(string? text) => Written().Match(text ?? "") is { Success: true } found
        && decimal.TryParse(found.Groups[2].ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var metres) && metres <= 100m
        ? new CablePoint(found.Groups[1].Value.ToUpperInvariant(), metres)
        : null;

    /// <summary><c>C2 at 4.0 m</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Cable} at {Metres:0.0##} m");

    [GeneratedRegex(@"^\s*([A-Za-z0-9]{1,8})\s+at\s+([0-9]{1,3}(?:\.[0-9]{1,3})?)\s*m\s*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Written();
}
