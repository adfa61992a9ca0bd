using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>Malt, ascorbic acid, enrichment and soy: which lot is in use when; a new one every few weeks, opened and its delivery recorded as it is taken into use; the lot before is then used up.</summary>
internal sealed class Additives
{
    private static readonly (string Kind, string Name, int Weeks, decimal Tonnes)[] Kinds = [("MALT", "malted barley flour", 5, 14m), ("ASC", "ascorbic acid premix", 9, 1m), ("ENR", "enrichment premix", 6, 1.6m), ("SOY", "soy flour", 8, 12m)];
    private readonly HashSet<string> opened = [];

    /// <summary>What goes into a flour, as parts of the flour. Invented doses inside the trade's usual ones.</summary>
    public static IReadOnlyList<(string Kind, double Part)> For(Flour flour) => flour switch
    {
        Flour.WB or Flour.HG => [("MALT", 0.0015), ("ASC", 0.00006)],
        Flour.AP => [("ENR", 0.0004)],
        _ => [],
    };

    /// <summary>The lot in use at a moment.</summary>
    public string Lot(Desk desk, string kind, Instant at)
    {
        var (_, name, weeks, tonnes) = Kinds.First(k => k.Kind == kind);
        var day = MillCalendar.MillingDay(at);
        var number = 1 + (Period.DaysBetween(MillCalendar.FirstDay, day) / (weeks * 7));
        var code = $"{kind}-{number:00}";
        if (opened.Add(code))
        {
            desk.Open(code, PlaceKind.AdditiveLot, $"{name}, lot {number}", name);
            desk.Read(code, at, Property.SoundedStock, tonnes, "t", default, "delivery, maker's note");
            var before = $"{kind}-{number - 1:00}";
            if (opened.Contains(before))
            {
                desk.Read(before, at, Property.SoundedStock, 0m, "t", default, "used up, hopper empty");
            }
        }

        return code;
    }
}
