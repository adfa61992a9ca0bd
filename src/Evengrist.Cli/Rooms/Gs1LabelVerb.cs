using System.CommandLine;
using System.Text;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Cases;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Draws the label of a bag or a pallet.</summary>
internal static class Gs1LabelVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        var posed = new PosedVerb();
        var file = new Option<string?>("--out") { Description = "where the label is written; the ending says how: .pdf or .svg", HelpName = "FILE" };
        var command = new Command("label", "Draws the label of a bag, or of a pallet, with its symbols. Whoever prints it answers for what it says. Needs no records.") { file };
        posed.AddTo(command, LabelPrintCase.Help);
        command.SetAction(asked =>
        {
            var target = asked.GetValue(file);
            if (target is null || Path.GetExtension(target).ToUpperInvariant() is not (".PDF" or ".SVG"))
            {
                throw new BadInput(new Fault(null, null, "--out", Fault.Show(target ?? ""), "a file that ends in .pdf or .svg"));
            }

            var label = posed.Ask(asked, LabelPrintCase.Read, c => c.Draw(Gs1Room.Year(clock)));
            using (var stream = Files.Create(target))
            {
                stream.Write(Path.GetExtension(target).Equals(".pdf", StringComparison.OrdinalIgnoreCase) ? label.Pdf() : Encoding.UTF8.GetBytes(label.Svg()));
            }

            return voice.Answer(posed.Json(asked), new { file = target, forPeople = label.Elements.ToString(), remarks = label.Remarks }, answer => voice.Say([$"The label is in {answer.file}: {answer.forPeople}", .. answer.remarks]));
        });
        return command;
    }
}
