using Evengrist.Mix.Sheets;
using NodaTime;

namespace Evengrist.Records.Mix;

/// <summary>The mix sheets that had begun at a moment, with what was drawn and what it says of the gates.</summary>
/// <param name="Sheets">The newest time first.</param>
/// <param name="Fits">How each gate gives what it is set to.</param>
public sealed record SheetRecords(IReadOnlyList<SheetDraws> Sheets, IReadOnlyList<GateFit> Fits)
{
    /// <summary>Reads them.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="at">The moment looked at.</param>
    /// <param name="toCome">Whether sheets that begin later are wanted as well.</param>
    public static SheetRecords Of(Mill mill, Instant at, bool toCome)
    {
        ArgumentNullException.ThrowIfNull(mill);
        KeptSheet[] kept = [.. MixSheets.Newest(mill).Where(k => toCome || k.Sheet.From <= at)];
        var drawn = mill.Ask(view => SheetDraws.Of(view, kept, at));
        return new SheetRecords(drawn, GateCalibration.Of(GateHistory.Of(drawn, at)));
    }

    /// <summary>The sheet with the code; null where there is none.</summary>
    public SheetDraws? Find(string? code) => Sheets.FirstOrDefault(s => s.Kept.Code == code);

    /// <summary>The line of a gate; null where there is none.</summary>
    public GateFitted? FitOf(string bin) => Fits.OfType<GateFitted>().FirstOrDefault(f => f.Bin.Equals(bin, StringComparison.OrdinalIgnoreCase));

    /// <summary>Sheets of so many days up to one, by day.</summary>
    public IEnumerable<IGrouping<LocalDate, SheetDraws>> Days(Func<Instant, LocalDate> day, LocalDate until, int days) =>
        Sheets.Where(s => day(s.Kept.Sheet.From) is var d && d <= until && d > until.PlusDays(-days)).GroupBy(s => day(s.Kept.Sheet.From));
}
