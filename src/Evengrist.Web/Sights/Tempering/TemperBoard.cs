using Evengrist.Bins;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Tempering;
using Evengrist.Web.Sights.Season;
using NodaTime;

namespace Evengrist.Web.Sights.Tempering;

/// <summary>All temper bins at a moment.</summary>
/// <param name="Bins">By code.</param>
/// <param name="Fields">What was typed above the board.</param>
/// <param name="Aims">The aims they are judged by.</param>
public sealed record TemperBoard(IReadOnlyList<TemperBinSight> Bins, TypedFields Fields, TemperAims Aims)
{
    private const double NextHours = 1;
    private const double NextTonnesAtRest = 10;

    /// <summary>Looks at every temper bin, under each way in which the wheat bins before it may have emptied.</summary>
    public static TemperBoard Of(Mill mill, Instant at, TemperAims aims, Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(aims);
        var fields = new TypedFields(typed);
        var season = TemperAsk.Chosen(fields, "season", "Season", TemperWords.Seasons, TemperSeason.Mild) ?? TemperSeason.Mild;
        var (celsius, evaporation) = (Within(fields, "celsius", "Temperature of the wheat, °C", RestCorrection.LeastCelsius, RestCorrection.MostCelsius), Within(fields, "evaporation", "Evaporation to first break, %", 0, 5));
        return new TemperBoard(mill.Ask(view =>
        {
            var bins = view.Book.OfKind(PlaceKind.TemperBin).OrderBy(p => p.Code, StringComparer.OrdinalIgnoreCase).ToArray();
            var ways = bins.Length == 0 ? [] : OutflowWords.All.Select(o => (view.Reckoning(o).At(at), new MakeupModel(view.Book, view.Reckoning(o).Parcels))).ToArray();
            return bins.Select(p => Look(view.Book, ways, p, at, (content, degrees) => TemperPart.Of(content, aims, season, celsius ?? degrees, evaporation ?? aims.EvaporationPercent ?? 0), celsius is null)).ToArray();
        }), fields, aims);
    }

    private static TemperBinSight Look(Book book, (Snapshot Lying, MakeupModel Makeup)[] ways, Place bin, Instant at, Func<TemperContent, double, TemperPart> part, bool withReading)
    {
        var queue = TemperQueue.Of(book, bin, at);
        var next = queue.TonnesPerHourOut > 0 ? queue.TonnesPerHourOut * NextHours : NextTonnesAtRest;
        var read = withReading ? TemperatureOf(book, bin, at) : null;
        TemperPart Of(Func<Snapshot, IReadOnlyList<Layer>> some) =>
            part(TemperContent.Over([.. ways.Select(w => TemperContent.Of(book, w.Makeup, some(w.Lying), at))]), (double?)read?.Value ?? DiffusionLaw.ReferenceCelsius);
        return new TemperBinSight(
            bin, queue, Of(s => s.ContentOf(bin.Id)), Of(s => [.. s.ContentOf(bin.Id).TakeLast(1)]), Of(s => s.NextOut(bin.Id, Mass.FromTonnes((decimal)next))), Math.Min(next, (double)queue.Stock.Tonnes), read, TemperRun.Of(book, bin.Id, at), at);
    }

    // The newest within a day that a rest can be carried to.
    private static Reading? TemperatureOf(Book book, Place bin, Instant at) => book.ReadingsOn(bin.Id).LastOrDefault(r =>
        r.What == Property.Temperature && r.At <= at && r.At > at - Duration.FromDays(1) && (double)r.Value is >= RestCorrection.LeastCelsius and <= RestCorrection.MostCelsius);

    private static double? Within(TypedFields fields, string key, string words, double least, double most)
    {
        var number = fields.Number(key, words);
        if (number is null || (number >= least && number <= most))
        {
            return number;
        }

        fields.Fault(FormattableString.Invariant($"{words}: it lies from {least} to {most}; read {number}."));
        return null;
    }
}
