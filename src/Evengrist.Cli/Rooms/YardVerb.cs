using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Cli.Rooms;

/// <summary>Forecasts the queue of a posed yard.</summary>
internal static class YardVerb
{
    public static Command Of(Voice voice)
    {
        var command = new Command("yard", "How long trucks wait in a posed yard, first come first served. Needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, YardCase.Help);
        command.SetAction(asked => voice.Answer(posed.Json(asked), posed.Ask(asked, YardCase.Read, YardAnswer.To), answer => Say(answer, voice)));
        return command;
    }

    private static void Say(YardAnswer answer, Voice voice)
    {
        var table = new TextTable("comes, min", "waits, min", "± (k = 2)");
        foreach (var wait in answer.Waits)
        {
            table.Add(Minutes(wait.ArrivesMinutes), Minutes(wait.WaitMinutes), Minutes(2 * wait.StandardUncertaintyMinutes));
        }

        table.To(voice);
        voice.Say($"Reckoned. The yard is clear after {Minutes(answer.ClearAfterMinutes)} min; at most {Minutes(answer.TrucksPerHour)} trucks are served in an hour.");
    }

    private static string Minutes(double minutes) => minutes.ToString("0.0", CultureInfo.InvariantCulture);
}
