using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Cli.Rooms;

/// <summary>The ledger: does it add up?</summary>
internal static class LedgerRoom
{
    public static Command Of(Voice voice, IClock clock) => new("ledger", "The ledger of movements, and every list taken out.") { Balance(voice, clock), ExportVerb.Of(voice, clock) };

    private static Command Balance(Voice voice, IClock clock)
    {
        var all = new Option<bool>("--all") { Description = "every truck and package on a row of its own, not added up by kind" };
        var (where, json, asOf) = (new MillOption(), new Option<bool>("--json") { Description = "answer in JSON" }, MomentOption.Of("--as-of", "the moment; everything recorded when left out"));
        var command = new Command("balance", "In − out = stock for every place, to the gram, and their sum over all places.") { json, asOf, all };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            using var mill = where.Open(asked, clock);
            var at = MomentOption.Read(asked, asOf) ?? mill.Settings.OpensAt;
            return voice.Answer(asked.GetValue(json), mill.Ask(view => Of(view.Book, at)), answer => Say(answer, asked.GetValue(all), voice));
        });
        return command;
    }

    private static BalanceAnswer Of(Book book, Instant? asked)
    {
        var at = asked ?? book.Newest ?? Instant.FromUnixTimeTicks(0);
        var rows = book.Places.Select(p => (Place: p, Through: book.ThroughputOf(p.Id, at), Stock: book.StockOf(p.Id, at)))
            .Where(r => r.Through.In != Mass.Zero || r.Through.Out != Mass.Zero).ToArray();
        return new BalanceAnswer(InstantPattern.ExtendedIso.Format(at),
            rows.Select(r => new PlaceBalance(r.Place.Code, r.Place.Kind.Words(), r.Place.Kind.Role() == PlaceRole.Unit, r.Through.In.Kilograms, r.Through.Out.Kilograms, r.Stock.Kilograms, r.Through.In - r.Through.Out == r.Stock)).ToArray(),
            rows.Aggregate(Mass.Zero, (sum, r) => sum + r.Stock).Kilograms);
    }

    private static void Say(BalanceAnswer answer, bool all, Voice voice)
    {
        var table = new TextTable("place", "kind", "in kg", "out kg", "stock kg");
        var units = answer.Places.Where(p => p.IsUnit && !all).GroupBy(p => p.Kind)
            .Select(g => new PlaceBalance($"{g.Count()} of them", g.Key, true, g.Sum(p => p.InKg), g.Sum(p => p.OutKg), g.Sum(p => p.StockKg), g.All(p => p.Holds)));
        foreach (var row in answer.Places.Where(p => all || !p.IsUnit).Concat(units))
        {
            table.Add(row.Code, row.Kind, Words(row.InKg), Words(row.OutKg), Words(row.StockKg));
        }

        table.To(voice);
        voice.Say($"As of {answer.AsOf}: {answer.Places.Count(p => p.Holds)} of {answer.Places.Count} places balance; the sum of all stocks is {Words(answer.SumKg)} kg.");
    }

    private static string Words(decimal kilograms) => Amounts.Kilograms(Mass.FromKilograms(kilograms));

    private sealed record BalanceAnswer(string AsOf, IReadOnlyList<PlaceBalance> Places, decimal SumKg);

    private sealed record PlaceBalance(string Code, string Kind, bool IsUnit, decimal InKg, decimal OutKg, decimal StockKg, bool Holds);
}
