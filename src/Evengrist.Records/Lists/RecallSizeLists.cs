using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Quantities.Lists;
using Evengrist.Tracing.Structure;
using NodaTime;

namespace Evengrist.Records.Lists;

/// <summary>Recall sizes truck by truck, as the mill works today.</summary>
internal static class RecallSizeLists
{
    private const int MostTraced = 200;
    private const int UsualDays = 180;

    public static IReadOnlyList<MillList> All { get; } = [MillList.Of("recall-sizes", "How large a recall would be for each truck of a span; of many, evenly spread ones", Columns(), Trucks)];

    private static ListOf<PracticeTruck> Columns()
    {
        var list = new ListOf<PracticeTruck>().Text("truck", t => t.Truck.Code).Text("class", t => t.Truck.Material).Moment("came", t => t.At).Number("brought", ListOrigin.Seen, ListUnit.Kilogram, t => (decimal)t.Kilograms);
        foreach (var (words, h) in Enum.GetValues<Outflow>().Select((o, h) => (o.Words(), h)))
        {
            list.Reckoned($"recall, {words}", ListUnit.Kilogram, t => t.Recall[h]);
        }

        return list.Reckoned("recall, under any", ListUnit.Kilogram, t => t.RecallUnion).Whole("packages, under any", t => t.Packages, ListUnit.Piece, ListOrigin.Reckoned).Reckoned($"of the truck found in packages, {Outflow.FirstInFirstOut.Words()}", ListUnit.Percent, t => 100 * t.Packed);
    }

    // Truck by truck, so that others are served in between.
    private static IEnumerable<PracticeTruck> Trucks(Mill mill, ListAsk ask)
    {
        var until = ask.End;
        var from = ask.From ?? until - Duration.FromDays(UsualDays);
        if (from >= until)
        {
            return [];
        }

        var threshold = decimal.TryParse(ask["kg"], NumberStyles.Number, CultureInfo.InvariantCulture, out var kilograms) && kilograms is > 0 and <= 1_000_000 ? Mass.FromKilograms(kilograms) : Mass.Zero;
        var work = mill.Ask(view => new PracticeModel(view.Book, new PracticeQuestion(from, until, ask.AsOf) { Threshold = threshold, MostTraced = MostTraced }));
        while (mill.Ask(view => work.Step(view.Book, view.Tracer())))
        {
        }

        return work.Outcome().Trucks.Where(t => ask.Names(t.Truck.Code));
    }
}
