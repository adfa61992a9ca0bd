using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records.Packing;
using NodaTime;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Orders: those kept, and a file of them.</summary>
internal static class PackingOrdersVerbs
{
    public static Command Of(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var (asOf, json) = (MomentOption.Of("--as-of", "orders taken by then; now when left out"), new Option<bool>("--json") { Description = "answer in JSON, and nothing else on standard output" });
        var command = new Command("orders", "The orders to be packed, with what the ledger has for each.") { asOf, json, Import(voice, clock) };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var at = MomentOption.Read(asked, asOf);
            using var mill = where.Open(asked, clock);
            var standings = HallRecords.Standings(mill, at ?? mill.Settings.OpeningOr(clock.GetCurrentInstant()));
            var zone = mill.Settings.Zone;
            return voice.Answer(asked.GetValue(json), standings.Select(OrderAnswer.Of).ToArray(), _ =>
            {
                var table = new TextTable("order", "customer", "product", "due", "wanted t", "gone t", "stands t", "not planned t", "state");
                foreach (var s in standings)
                {
                    table.Add(s.Order.Number, s.Order.Customer, s.Order.Product, s.Order.Due.InZone(zone).LocalDateTime.ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture), Number((double)s.Wanted.Tonnes, 1), Number((double)s.Shipped.Tonnes, 1), Number((double)s.Standing.Tonnes, 1), Number((double)s.NotPlanned.Tonnes, 1), s.State.ToString());
                }

                table.To(voice);
            });
        });
        return command;
    }

    private static Command Import(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var file = new Argument<string>("file") { Description = $"CSV or XLSX with the columns {string.Join(", ", OrderColumns.All.Select(c => c.Name))}; - for standard input" };
        var (by, check) = (new Option<string?>("--by") { Description = "who keeps them", HelpName = "NAME" }, new Option<bool>("--check") { Description = "look only; keep nothing" });
        var command = new Command("import", "Keeps the orders of a file, all or none; every fault with its line. The same file again adds nothing.") { file, by, check };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var name = asked.GetValue(file)!;
            using var stream = name == "-" ? Console.OpenStandardInput() : Files.Open(name);
            using var mill = where.Open(asked, clock);
            var now = mill.Settings.OpeningOr(clock.GetCurrentInstant());
            var read = OrderTable.Read(stream, mill.Settings.Zone, now);
            if (!read.Ok)
            {
                return voice.Refuse(read.Faults);
            }

            var orders = new ImportOrders(read.Value.Rows);
            if (orders.Faults(mill) is { Count: > 0 } faults)
            {
                return voice.Refuse(faults.Select(f => Fault.ToldOfLine(f.Line, f.Fault)));
            }

            voice.Say(orders.Warnings(mill, now).Select(w => $"Line {w.Line}: {w.Warning}"));
            if (asked.GetValue(check))
            {
                voice.Say($"No fault in {orders.Rows.Count} orders. Nothing was kept.");
                return Exit.Done;
            }

            if (string.IsNullOrWhiteSpace(asked.GetValue(by)))
            {
                return voice.Refuse([new Fault(null, null, "--by", "", "who keeps the orders: every record carries a name")]);
            }

            var (added, known) = orders.In(mill, asked.GetValue(by)!)!.Value;
            voice.Say($"{added} orders added, {known} known already.");
            return Exit.Done;
        });
        return command;
    }
}
