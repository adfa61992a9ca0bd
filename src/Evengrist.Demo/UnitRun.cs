using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>A mill unit at work: wheat from the gates through mix line, screenroom and temper bins to the rolls, and what comes off them.</summary>
/// <remarks>
/// Ledger masses are those of the belt and product scales, as the grain lay. The screenroom takes screenings off and the dampener
/// adds water, so wheat reaches the rolls heavier than it left the gates; water leaves again with the products and as loss.
/// As much goes out of the temper bins as goes in, so they always hold the same.
/// </remarks>
internal sealed class UnitRun(char unit, ulong seed, MixDesk mixes, FlourStock stock, Truth truth)
{
    public const int SlotHours = 2;
    private readonly Dice dice = new(seed, $"unit {unit}");
    private readonly Queue<(long Grams, double Protein)> temper = new();

    /// <summary>What the temper bins of a unit hold: for Unit A 18 h at 17.5 t/h of wheat, which is 18.2 t/h with its water, and the stirred stage.</summary>
    public static long TemperTonnes(char unit) => unit == 'A' ? 390 : 150;

    /// <summary>The stirred stage at the outlet: for Unit A 60 t of wheat, which is 62.4 t with its water.</summary>
    public static decimal StirredTonnes(char unit) => unit == 'A' ? 62.4m : 20;

    public static double WheatPerHour(char unit) => unit == 'A' ? 17.5 : 7.5;

    /// <summary>All stretches in which the units run.</summary>
    public static IEnumerable<(Instant From, Instant Until)> Slots()
    {
        for (var day = MillCalendar.FirstDay; day <= MillCalendar.LastDay; day = day.PlusDays(1))
        {
            for (var hour = 0; hour < 24 && MillCalendar.Runs(day); hour += SlotHours)
            {
                var from = MillCalendar.At(day, 6) + Duration.FromHours(hour);
                yield return (from, from + Duration.FromHours(SlotHours));
            }
        }
    }

    /// <summary>The flour whose wheat is drawn at a moment: the one milled when that wheat has rested.</summary>
    public static Flour Drawing(char unit, Instant at) =>
        MillCalendar.Campaign(unit, MillCalendar.MillingDay(MillCalendar.RunningAfter(at, unit == 'A' ? 20 : 18)));

    /// <summary>Fills the temper bins with the wheat that lay in them on 1 July.</summary>
    public void Begin(Desk desk)
    {
        var grams = TemperTonnes(unit) * 1_000_000;
        desk.Move(unit == 'A' ? "OPEN-HW" : "OPEN-SW", $"T{unit}", grams, MillCalendar.Begin);
        temper.Enqueue((grams, unit == 'A' ? 13.2 : 9.8));
    }

    /// <summary>Runs the unit for a stretch; what it made of flour, in grams.</summary>
    public (Flour Flour, long Grams) Run(Desk desk, Instant from, Instant until)
    {
        var hours = (until - from).TotalHours;
        var survey = unit == 'A' && MillCalendar.SurveyWeek(MillCalendar.MillingDay(from));
        var draws = mixes.Draw(desk, unit, Drawing(unit, from), from, until, survey ? null : dice);
        var wheat = draws.Sum(d => d.Grams);
        var protein = draws.Sum(d => d.Grams * d.Protein) / wheat;
        var moisture = draws.Sum(d => d.Grams * d.Moisture) / wheat;
        var aim = Drawing(unit, from) == Flour.PA ? 14.8 : 16.0;
        var screenings = survey ? (long)(hours * 210_000) : (long)(wheat * dice.Normal(0.012, 0.001));
        var water = survey ? (long)(hours * 910_000) : (long)((wheat - screenings) * Math.Max(0.5, aim - moisture) / (100 - aim));
        var total = wheat - screenings + water;
        desk.Move($"MX{unit}", $"CL{unit}", wheat, from, until);
        desk.Move("WATER", $"CL{unit}", water, from, until);
        desk.Move($"CL{unit}", "Y-SC", screenings, from, until);
        stock.Add("Y-SC", screenings);
        desk.Move($"CL{unit}", $"T{unit}", total, from, until);
        desk.Move($"T{unit}", $"U{unit}", total, from, until);
        var milled = Rest(total, protein);
        var flour = MillCalendar.Campaign(unit, MillCalendar.MillingDay(from));
        var parts = Extraction.Of(unit, flour, survey, dice);
        var grams = Mass.FromGrams(total).Split([.. parts.Select(p => p.Share)]);
        for (var i = 0; i < parts.Count; i++)
        {
            if (grams[i] > Mass.Zero)
            {
                desk.Move($"U{unit}", parts[i].To, grams[i].Grams, from, until);
                stock.Add(parts[i].To, i == 0 ? 0 : grams[i].Grams);
            }
        }

        truth.Add(Extraction.Quality(unit, from, flour, milled, dice));
        return (flour, grams[0].Grams);
    }

    // The wheat that has rested longest goes first; its mean protein.
    private double Rest(long grams, double protein)
    {
        temper.Enqueue((grams, protein));
        double sum = 0;
        for (var left = grams; left > 0;)
        {
            var (lies, has) = temper.Peek();
            var taken = Math.Min(left, lies);
            sum += taken * has;
            left -= taken;
            temper.Dequeue();
            if (lies > taken)
            {
                var rest = temper.ToArray();
                temper.Clear();
                temper.Enqueue((lies - taken, has));
                foreach (var layer in rest)
                {
                    temper.Enqueue(layer);
                }
            }
        }

        return sum / grams;
    }
}
