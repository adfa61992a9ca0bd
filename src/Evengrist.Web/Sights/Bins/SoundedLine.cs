using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Web.Sights.Bins;

/// <summary>A sounding that was recorded, against what the ledger held at its moment.</summary>
/// <param name="At">When.</param>
/// <param name="Sounded">What was found.</param>
/// <param name="Difference">Sounded − reckoned.</param>
/// <param name="IsWithin">Whether the difference lies within its ±; null where no ± was recorded.</param>
/// <param name="Method">How it was taken.</param>
public sealed record SoundedLine(Instant At, Figure Sounded, Figure Difference, bool? IsWithin, string Method)
{
    /// <summary>Soundings up to a moment, newest first.</summary>
    public static IReadOnlyList<SoundedLine> Of(Book book, Place bin, Instant at, int most)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(bin);
        return [.. book.ReadingsOn(bin.Id).Where(r => r.What == Property.SoundedStock && r.At <= at).Reverse().Take(most).Select(r => Line(book, bin, r))];
    }

    private static SoundedLine Line(Book book, Place bin, Reading reading)
    {
        var (stock, u) = (book.StockOf(bin.Id, reading.At).Tonnes, reading.StandardUncertainty);
        var found = Figure.Seen("Sounded stock", reading.Value, "t") with { StandardUncertainty = u };
        var difference = Figure.Reckoned("Difference", reading.Value - stock, "t", 1, new Because(
            "Sounded − reckoned at that moment. ± is the sounding's (k = 2).", [found, Figure.Reckoned("Reckoned stock", stock, "t", 1, new Because("In − out.", [], "the ledger"))], "docs/model/bin-shape.md")) with { StandardUncertainty = u };
        return new SoundedLine(reading.At, found, difference, u is null ? null : Math.Abs(reading.Value - stock) <= 2 * u, reading.Method);
    }
}
