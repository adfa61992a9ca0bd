using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Planning.Streams;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Streams.Dividing;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>The best divide of flour streams.</summary>
internal static class DivideVerb
{
    public static Command Of(Voice voice)
    {
        var command = new Command("divide", "The divide of a posed survey into several flours that brings most and keeps every limit, proven; what each stream would bring elsewhere; or which limits clash. Opens no valve, needs no records.");
        return PosedVerb.Of<DivideSpec, StreamsDivideAnswer>(command, voice, StreamsDivideCase.Help, StreamsDivideCase.Read, spec => StreamsDivideAnswer.Of(DivideSolver.Solve(spec), spec), answer => Say(answer, voice));
    }

    private static void Say(StreamsDivideAnswer answer, Voice voice)
    {
        voice.Say($"ash and protein in % on {answer.Basis}; yield in % of the wheat of the survey; ± is twice the standard uncertainty");
        var flours = new TextTable("flour", "yield", "ash", "±", "protein", "±", "FN s", "damage %", $"{answer.Currency}/h", "US \"flour\" by ash");
        foreach (var flour in answer.Flours)
        {
            StreamMeanAnswer? Mean(string what) => flour.Means.FirstOrDefault(m => m.What == what);
            var (ash, protein) = (Mean("Ash"), Mean("Protein"));
            flours.Add(
                flour.Code, Number(flour.Yield, 2), Number(ash?.Value, 3), Number(2 * ash?.StandardUncertainty, 3), Number(protein?.Value, 2), Number(2 * protein?.StandardUncertainty, 2), Number(Mean("FallingNumber")?.Value, 0),
                Number(Mean("StarchDamage")?.Value, 1), Money(flour.ValuePerHour), flour.MayBeCalledFlour switch { true => "yes", false => "no: too much ash", null => "" });
        }

        flours.To(voice);
        var streams = new TextTable("stream", "goes to", "elsewhere", $"{answer.Currency}/h", "then missed");
        foreach (var stream in answer.Streams)
        {
            var goes = string.Join(" ", stream.To.Select(t => t.SharePercent < 100 ? $"{t.Flour} {Number(t.SharePercent, 1)} %" : t.Flour));
            foreach (var (n, move) in answer.Moves.Where(m => m.Stream == stream.Stream).Index())
            {
                streams.Add(n == 0 ? stream.Stream : "", n == 0 ? goes : "", move.To, Money(move.ValuePerHour), string.Join("; ", move.Missed.Concat(move.IsOpen ? [] : ["its spout does not go there"])));
            }
        }

        streams.To(voice);
        var limits = new TextTable("flour", "limit", "distance", "chance %");
        foreach (var (flour, limit) in answer.Flours.SelectMany(f => f.Limits.Select(l => (f.Code, l))))
        {
            limits.Add(flour, limit.Limit, Number(limit.Distance, 3), Number(limit.ChancePercent, 1));
        }

        limits.To(voice);
        voice.Say($"{Money(answer.ValuePerHour)} {answer.Currency} an hour, {Money(answer.ValuePerDay)} a day. {answer.Exit} Gap {Number(answer.GapPercent, 4)} %, {Number(answer.SolverSeconds, 2)} s.");
        if (answer.Now is { } now)
        {
            voice.Say($"As it is divided now: {Money(now.ValuePerHour)} {answer.Currency} an hour; this one brings {Money(now.BestBringsMorePerDay)} a day more.{(now.Missed.Count > 0 ? $" Now missed: {string.Join("; ", now.Missed)}." : "")}");
        }

        voice.Say(answer.Note);
    }

    private static string Money(decimal amount) => amount.ToString("N2", CultureInfo.InvariantCulture);
}
