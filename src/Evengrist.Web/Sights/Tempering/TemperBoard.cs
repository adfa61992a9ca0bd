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

    /// <summary>Looks at every temper bin, wheat bins supposed to empty first in first out.</summary>
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
            if (bins.Length == 0)
            {
                return [];
            }

            var reckoning = view.Reckoning(Outflow.FirstInFirstOut);
            var (snapshot, makeup) = (reckoning.At(at), new MakeupModel(view.Book, reckoning.Parcels));
            return bins.Select(p => Look(view.Book, snapshot, makeup, p, at, aims, season, celsius, evaporation ?? 0)).ToArray();
        }), fields, aims);
    }

    private static TemperBinSight Look(Book book, Snapshot snapshot, MakeupModel makeup, Place bin, Instant at, TemperAims aims, TemperSeason season, double? celsius, double evaporation)
    {
        var queue = TemperQueue.Of(book, bin, at);
        var layers = snapshot.ContentOf(bin.Id);
        var next = queue.TonnesPerHourOut > 0 ? queue.TonnesPerHourOut * NextHours : NextTonnesAtRest;
        TemperContent Of(IReadOnlyList<Layer> some) => TemperContent.Of(book, makeup, some, at);
        var all = Of(layers);
        var hardness = all.Classes.GroupBy(c => aims.OfClass(c.Class)).Where(g => g.Key != Hardness.None).MaxBy(g => g.Sum(c => c.Share))?.Key ?? Hardness.None;
        var aim = aims.Of(hardness);
        var read = celsius is null ? TemperatureOf(book, bin, at) : null;
        var rest = aim is null ? null : RestCorrection.Of(aim.Hours, DiffusionLaw.ReferenceCelsius, celsius ?? (double?)read?.Value ?? DiffusionLaw.ReferenceCelsius);
        return new TemperBinSight(
            bin, queue, all, Of(layers.Count > 0 ? [layers[^1]] : []), Of(snapshot.NextOut(bin.Id, Mass.FromTonnes((decimal)next))), Math.Min(next, (double)queue.Stock.Tonnes), hardness,
            aim is null ? null : AimAdvice.Of(aim, season, null), rest, read,
            rest is not null && queue is { FirstIn: { } first, LastIn: { } last } ? new RestWindow(first, last, Duration.FromHours(rest.LongerHours)) : null, evaporation, at);
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
