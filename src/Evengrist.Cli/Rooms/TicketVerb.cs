using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Prints;
using Evengrist.Quantities;
using Evengrist.Records.Intake;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Prints a ticket as PDF.</summary>
internal static class TicketVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var number = new Argument<string>("NUMBER") { Description = "the ticket, such as 25-0709-061" };
        var file = new Option<string?>("--pdf") { Description = "where the PDF is written", HelpName = "FILE" };
        var paper = new Option<string?>("--paper") { Description = "a4 (when left out) or letter", HelpName = "PAPER" };
        var us = new Option<bool>("--us") { Description = "in US customary units" };
        var asof = MomentOption.Of("--asof", "as of a moment; everything recorded when left out");
        var command = new Command("ticket", "Prints a ticket as PDF.") { number, file, paper, us, asof };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var target = asked.GetValue(file) ?? throw new BadInput(new Fault(null, null, "--pdf", "", "a file to write the PDF to"));
            var size = PaperSize.Find(asked.GetValue(paper)) ?? throw new BadInput(new Fault(null, null, "--paper", Fault.Show(asked.GetValue(paper)!), "a4 or letter"));
            var at = MomentOption.Read(asked, asof) ?? Instant.MaxValue;
            using var mill = where.Open(asked, clock);
            var settings = mill.Settings;
            var sheet = PrintedTicket.Of(mill, asked.GetValue(number)!, at) ?? throw new BadInput(new Fault(null, null, "NUMBER", Fault.Show(asked.GetValue(number)!), "a ticket of this mill"));
            var now = clock.GetCurrentInstant();
            var head = new PrintHead(settings.Name, settings.IsDemonstration, settings.Zone, asked.GetValue(us) ? UnitSystem.UsCustomary : UnitSystem.Si, now);
            File.WriteAllBytes(target, TicketPdf.Write(at == Instant.MaxValue ? sheet with { AsOf = now } : sheet, head, size));
            voice.Say($"Ticket {sheet.Number}, {sheet.State.Words}, is in {target}.");
            return Exit.Done;
        });
        return command;
    }
}
