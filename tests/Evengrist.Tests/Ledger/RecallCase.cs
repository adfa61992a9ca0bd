using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Tests.Ledger;

/// <summary>
/// Bin B14 with a suspect layer of 26.34 t over 412 t and under 300 t, drawn at 7.0 t/h beside 10.5 t/h of other wheat; 18 h of rest and one
/// stirred stage of 60 t; 69 % patent in pallets of 1 t. Invented case of our own; what must come out is arithmetic.
/// </summary>
internal static class RecallCase
{
    private const double PatentTonnesPerHour = 12.075;

    public static PosedMill Posed(int hours = 105)
    {
        var mill = new PosedMill();
        mill.Open(PlaceKind.Opening, "BELOW", "SUSPECT", "ABOVE", "OTHERS")
            .Open(new OpenPlace("b14", "B14", PlaceKind.Bin) { CoreShare = 0 })
            .Open(PlaceKind.MixLine, "MIX").Open(PlaceKind.MillUnit, "UA").Open(PlaceKind.PackingLine, "L1")
            .Open(new OpenPlace("t", "TA", PlaceKind.TemperBin) { Stirred = Mass.FromTonnes(60) })
            .Open(PlaceKind.FlourBin, "FB", "FEED")
            .Connect("B14", "MIX").Connect("MIX", "TA").Connect("TA", "UA").Connect("UA", "L1").Connect("UA", "FEED");
        mill.Move("BELOW", "B14", 412, -3).Move("SUSPECT", "B14", 26.34m, -2).Move("ABOVE", "B14", 300, -1);

        // The tempering bin already holds 18 h of rest (315 t) and the stirred stage of 60 t.
        mill.Move("OTHERS", "TA", 375, -1);
        mill.Move("B14", "MIX", 7.0m * hours, 0, hours).Move("OTHERS", "MIX", 10.5m * hours, 0, hours)
            .Move("MIX", "TA", 17.5m * hours, 0, hours).Move("TA", "UA", 17.5m * hours, 0, hours)
            .Move("UA", "L1", 12.075m * hours, 0, hours).Move("UA", "FEED", 5.425m * hours, 0, hours);
        var pallets = (int)(PatentTonnesPerHour * hours);
        var drafts = new List<Draft>();
        for (var n = 1; n <= pallets; n++)
        {
            drafts.Add(new OpenPlace($"p{n}", $"P{n}", PlaceKind.Pallet));
            drafts.Add(new Move($"m{n}", "L1", $"P{n}", Mass.FromTonnes(1), PosedMill.Hour(n / PatentTonnesPerHour)));
        }

        mill.Record([.. drafts]);
        return mill;
    }
}
