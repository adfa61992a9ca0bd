using System.Globalization;
using Evengrist.Plant.Answers;

namespace Evengrist.Cli.Said;

/// <summary>Answers about the crop year that are long to say.</summary>
internal static class SeasonSaid
{
    public static void Lot(SeasonLotAnswer lot, Voice voice)
    {
        var spread = lot.LowerPerTonne is null ? "" : $" ({N(lot.LowerPerTonne)} to {N(lot.HigherPerTonne)} at one spread of protein less and more)";
        voice.Say($"A lot of {N(lot.Tonnes)} t, there in period {lot.Period}: its first tonne is worth {N(lot.FirstPerTonne)}{spread}; solved again with {N(lot.VerifiedTonnes)} t, {N(lot.VerifiedPerTonne)} each.");
        voice.Say($"The whole lot is worth {N(lot.Worth)}: pay at most {N(lot.MostPerTonne)} a tonne, taken as one. Reckoned from linear plans; a person decides.");
        if (lot.AtPrice is { } price)
        {
            voice.Say($"At the price asked {N(price.Tonnes)} t of it pay and save {N(price.Saves)}; all of it {(price.WholeSaves >= 0 ? "saves" : "loses")} {N(Math.Abs(price.WholeSaves))}.");
        }

        var curve = new TextTable("t of the lot", "worth", "per t", "next t");
        foreach (var point in lot.Curve)
        {
            curve.Add(N(point.Tonnes), N(point.Worth), N(point.PerTonne), N(point.NextPerTonne));
        }

        curve.To(voice);
        foreach (var use in lot.Uses)
        {
            voice.Say($"It would go into {use.Flour}: {N(use.Tonnes)} t, periods {use.First} to {use.Last}.");
        }

        if (lot.LeftTonnes >= 0.05)
        {
            voice.Say($"Left at the end: {N(lot.LeftTonnes)} t of it.");
        }

        var replaced = new TextTable("instead", "drawn, t", "bought, t", "left, t");
        foreach (var other in lot.Replaced)
        {
            replaced.Add(other.Wheat, N(other.DrawnTonnes), N(other.BoughtTonnes), N(other.LeftTonnes));
        }

        if (lot.Replaced.Count > 0)
        {
            replaced.To(voice);
        }
    }

    public static void Bands(SeasonBandsAnswer answer, Voice voice)
    {
        var costs = new TextTable("bands", "cost of the year", "saves", "even tonnes", "edges, protein");
        foreach (var row in answer.Rows)
        {
            costs.Add($"{row.Bands}", N(row.Cost), N(row.SavesAgainstOneLess), N(row.EvenCost), string.Join(" ", row.Of.Select(b => b.From).Where(f => f is not null).Distinct().Select(N)));
        }

        costs.To(voice);
        var last = answer.Rows[^1];
        var bands = new TextTable("band", "from", "to", "fn from", "fn to", "t", "most there, t", "protein", "strays, %", "bins", "short, t");
        foreach (var (n, band) in last.Of.Index())
        {
            bands.Add($"{n + 1}", N(band.From), N(band.To), N(band.FallingNumberFrom), N(band.FallingNumberTo), N(band.Tonnes), N(band.MostTonnes), N(band.Quality["Protein"]), N(band.StraysPercent), string.Join(" ", band.Bins ?? []), N(band.ShortTonnes));
        }

        bands.To(voice);
        if (last.Commingled is { } slip)
        {
            voice.Say($"A slip that lays two neighbours into one bin makes the year {N(slip.Cost)} {answer.Currency} dearer.");
        }

        voice.Say("Reckoned from linear plans; bins are filled by the reading alone. A person decides.");
    }

    public static void ChangeOver(ChangeOverAnswer answer, Voice voice)
    {
        foreach (var flour in answer.Flours)
        {
            voice.Say($"{flour.Flour}: the largest even step that keeps the largest moves is {N(flour.LargestStepPercent)} %.");
            var steps = new TextTable("new, %", "from", "property", "wheat", "±", "move", "±", "limits kept, %");
            foreach (var step in flour.Steps)
            {
                foreach (var move in step.Moves)
                {
                    steps.Add(N(step.NewPercent), step.FirstDay, move.What, N(move.Value), N(move.Spread), N(move.Move), N(move.MoveSpread), N(move.KeptPercent));
                }
            }

            steps.To(voice);
        }

        voice.Say("Values of the wheat mix, ± one standard deviation. Reckoned; a person decides and tests the flour at every step.");
    }

    private static string N(double? value) => value?.ToString("#,##0.00", CultureInfo.InvariantCulture) ?? "";
}
