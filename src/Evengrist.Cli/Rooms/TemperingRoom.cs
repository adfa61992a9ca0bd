using System.CommandLine;
using System.Globalization;
using System.Text.Json.Nodes;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Tempering: water by balance and the rest.</summary>
internal static class TemperingRoom
{
    public static Command Of(Voice voice) => new("tempering", "Water and rest of wheat before first break.") { Water(voice) };

    private static Command Water(Voice voice)
    {
        var command = new Command("water", "Litres an hour by balance in one or more stages, the moisture to expect at first break, and the rest by both diffusion laws. Posed as a case or by options; opens no valve, needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, TemperWaterCase.Help);
        (Option<string?> Option, string Member)[] numbers =
        [
            (NumberOf("--rate", "clean wheat before water, t/h"), "tonnesPerHour"), (NumberOf("--tonnes", "clean wheat before water, t"), "tonnes"), (NumberOf("--moisture", "before water, % wet basis"), "moisturePercent"),
            (NumberOf("--aim", "at first break, % wet basis"), "aimPercent"), (NumberOf("--evaporation", "water lost to first break, % of the tempered mass"), "evaporationPercent"),
            (NumberOf("--water-celsius", "temperature of the water"), "waterCelsius"),
        ];
        (Option<string?> Option, string Member)[] words = [(Word("--hardness", "soft, semiHard, hard or veryHard, where no aim is given"), "hardness"), (Word("--season", "dry, mild or damp, where no aim is given"), "season")];
        var stages = new Option<string[]>("--stage") { Description = "moisture after an earlier stage, % wet basis; once for each", HelpName = "PERCENT" };
        var (rest, wheat) = (NumberOf("--rest", "hours of rest at 25 °C"), NumberOf("--wheat-celsius", "temperature of the wheat, to carry the rest to"));
        foreach (var option in numbers.Select(n => (Option)n.Option).Concat(words.Select(w => w.Option)).Concat([stages, rest, wheat]))
        {
            command.Add(option);
        }

        command.SetAction(asked =>
        {
            var byOptions = new JsonObject();
            Add(byOptions, numbers.Select(n => (n.Member, Typed(asked.GetValue(n.Option)))));
            Add(byOptions, words.Select(w => (w.Member, (JsonNode?)asked.GetValue(w.Option))));
            Add(byOptions, [("earlierStages", asked.GetValue(stages) is { Length: > 0 } each ? new JsonArray([.. each.Select(Typed)]) : null)]);
            var lying = new JsonObject();
            Add(lying, [("hours", Typed(asked.GetValue(rest))), ("wheatCelsius", Typed(asked.GetValue(wheat)))]);
            Add(byOptions, [("rest", lying.Count > 0 ? lying : null)]);
            if (posed.IsPosed(asked) == byOptions.Count > 0)
            {
                throw new BadInput(new Fault(null, null, "--in", "", "either a file with the case, or options such as --rate 17.5 --moisture 11.2 --aim 16; --help shows both"));
            }

            var reply = posed.IsPosed(asked) ? posed.Ask(asked, TemperWaterCase.Read, c => Parsing.Got(TemperWaterAnswer.To(c))) : Read(byOptions);
            return reply.Answer is { } answer ? voice.Answer(posed.Json(asked), answer, a => Say(a, voice)) : voice.NoAnswer(reply.Reasons);
        });
        return command;
    }

    private static Reply<TemperWaterAnswer> Read(JsonObject posed)
    {
        using var stream = new MemoryStream(System.Text.Encoding.UTF8.GetBytes(posed.ToJsonString()));
        var read = TemperWaterCase.Read(stream);
        return read.Ok ? TemperWaterAnswer.To(read.Value) : throw new BadInput(read.Faults);
    }

    private static void Say(TemperWaterAnswer answer, Voice voice)
    {
        foreach (var reason in answer.AimBecause)
        {
            voice.Say(reason);
        }

        var table = new TextTable("stage", "from %", "to %", "kg/t", "L/h", "kg/h", "L in all");
        foreach (var (i, stage) in answer.Stages.Index())
        {
            Add(table, (i + 1).ToString(CultureInfo.InvariantCulture), stage);
        }

        Add(table, "together", answer.Total);
        table.To(voice);
        voice.Say($"at first break {Number(answer.FirstBreakPercent, 2)} ± {Number(answer.FirstBreakPlusMinus, 2)} % wet basis (k = 2){(answer.FirstBreakTonnesPerHour is { } flow ? $", {Number(flow, 2)} t/h" : "")}");
        if (answer.Rest is { } rest)
        {
            voice.Say($"rest {Number(rest.Hours, 1)} h at {Number(rest.AtCelsius, 0)} °C is at {Number(rest.WheatCelsius, 1)} °C {Number(rest.SoakingHours, 1)} h by the soaking law and {Number(rest.DryingHours, 1)} h by the drying law: they differ by {Number(rest.DisagreementHours, 1)} h");
            voice.Say($"in how fast water moves at all the laws differ {Number(rest.SpeedRatio, 0)} times");
            if (rest.FirstReady is not null)
            {
                voice.Say($"first wheat ready {rest.FirstReady}, last wheat ready {rest.LastReady}, by the longer rest");
            }
        }

        foreach (var line in answer.Remarks.Concat(answer.Rest?.Remarks ?? []).Concat(answer.Cautions))
        {
            voice.Say(line);
        }
    }

    private static void Add(TextTable table, string name, TemperStageAnswer stage) =>
        table.Add(name, Number(stage.FromPercent, 2), Number(stage.ToPercent, 2), Number(stage.KilogramsPerTonne, 2), Number(stage.LitresPerHour, 0), Number(stage.KilogramsPerHour, 0), Number(stage.Litres, 0));

    private static void Add(JsonObject to, IEnumerable<(string Member, JsonNode? Value)> members)
    {
        foreach (var (member, value) in members.Where(m => m.Value is not null))
        {
            to.Add(member, value);
        }
    }

    private static Option<string?> NumberOf(string name, string says) => new(name) { Description = says, HelpName = "NUMBER" };

    // What is no number is read on as it was typed, so that the fault can show it.
    private static JsonNode? Typed(string? text) => text is null ? null
        : decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? JsonValue.Create(number) : JsonValue.Create(text);

    private static Option<string?> Word(string name, string says) => new(name) { Description = says, HelpName = "WORD" };
}
