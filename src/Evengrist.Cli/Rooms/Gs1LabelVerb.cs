using System.CommandLine;
using System.Text;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Cases;
using Evengrist.Plant.Prints.Labels;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Draws the label of a bag or a pallet.</summary>
internal static class Gs1LabelVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        var (posed, where) = (new PosedVerb(), new MillOption());
        var file = new Option<string?>("--out") { Description = "where the label is written; the ending says how: .pdf or .svg", HelpName = "FILE" };
        var (pallet, by, reason) = (new Option<string?>("--pallet") { Description = "a pallet of the ledger: its label is made from the records and held against them, and it gets its number", HelpName = "CODE" }, new Option<string?>("--by") { Description = "who makes it, with --pallet", HelpName = "NAME" },
            new Option<string?>("--reason") { Description = "why a pallet on hold or gone is labelled all the same", HelpName = "WORDS" });
        var (lot, packs, product, size) = (new Option<string?>("--lot") { Description = "the lot you believe it is of; refused where the ledger says otherwise" }, new Option<int?>("--packs") { Description = "packs you count on it" }, new Option<string?>("--product") { Description = "the product you believe it is" },
            new Option<string?>("--size") { Description = "a6 (when left out) or 4x6, with --pallet" });
        var command = new Command("label", "Draws the label of a bag or a pallet with its symbols: posed in a file, which needs no records, or with --pallet from the ledger. Whoever prints it answers for what it says.") { file, pallet, by, reason, lot, packs, product, size };
        posed.AddTo(command, LabelPrintCase.Help);
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var target = asked.GetValue(file);
            if (target is null || Path.GetExtension(target).ToUpperInvariant() is not (".PDF" or ".SVG"))
            {
                throw new BadInput(new Fault(null, null, "--out", Fault.Show(target ?? ""), "a file that ends in .pdf or .svg"));
            }

            Label label;
            if (asked.GetValue(pallet) is { } code)
            {
                var sheet = LabelSize.Find(asked.GetValue(size)) ?? throw new BadInput(new Fault(null, null, "--size", Fault.Show(asked.GetValue(size)!), "a6 or 4x6"));
                using var mill = where.Open(asked, clock);
                var found = PalletOnLedger.Of(mill, code, mill.Settings.OpensAt ?? clock.GetCurrentInstant(), new(asked.GetValue(lot), asked.GetValue(packs), asked.GetValue(product)));
                var (made, refused) = found.Label(mill, asked.GetValue(by), asked.GetValue(reason), clock.GetCurrentInstant());
                if (refused.Count > 0)
                {
                    return voice.Refuse([.. refused.Select(r => Fault.Told("--pallet", r))]);
                }

                var drawn = PalletLabel.Draw(made.Facts!, sheet, made.Facts!.Made.Year);
                label = drawn.Ok ? drawn.Value : throw new BadInput(drawn.Faults);
            }
            else
            {
                label = posed.Ask(asked, LabelPrintCase.Read, c => c.Draw(Gs1Room.Year(clock)));
            }

            using (var stream = Files.Create(target))
            {
                stream.Write(Path.GetExtension(target).Equals(".pdf", StringComparison.OrdinalIgnoreCase) ? label.Pdf() : Encoding.UTF8.GetBytes(label.Svg()));
            }

            return voice.Answer(posed.Json(asked), new { file = target, forPeople = label.Elements?.ToString() ?? "", remarks = label.Remarks }, answer => voice.Say([$"The label is in {answer.file}{(answer.forPeople.Length > 0 ? $": {answer.forPeople}" : ".")}", .. answer.remarks]));
        });
        return command;
    }
}
