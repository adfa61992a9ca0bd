using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Milling.Sheet;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records.Milling;
using NodaTime;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Flow sheets: checking one, and those the mill keeps.</summary>
internal static class FlowSheetVerbs
{
    /// <summary>Checks a posed sheet.</summary>
    public static Command Sheet(Voice voice)
    {
        var command = new Command("sheet", "Checks a flow sheet: every outlet leads somewhere, no stock is made, cloths lie in an order that divides, no loop is without a leak. Adds up what it has. Keeps nothing, needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, FlowSheetCase.Help);
        command.SetAction(asked => voice.Answer(posed.Json(asked), posed.Ask(asked, FlowSheetCase.Read, s => Parsing.Got(FlowSheetAnswer.Of(s))), answer => Say(answer, voice)));
        return command;
    }

    /// <summary>Lists the units that are kept, or writes one sheet out.</summary>
    public static Command Kept(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var (unit, version) = (new Option<string?>("--unit") { Description = "the unit whose sheet is written out as JSON; the list of units when left out", HelpName = "CODE" }, new Option<int?>("--version") { Description = "its version; the newest when left out", HelpName = "NUMBER" });
        var command = new Command("kept", "The flow sheets the mill keeps: the units, or one sheet as the file that milling sheet and milling keep read.") { unit, version };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            using var mill = where.Open(asked, clock);
            if (asked.GetValue(unit) is { } code)
            {
                var sheet = FlowSheets.Versions(mill, code).LastOrDefault(v => asked.GetValue(version) is not { } wanted || v.Version == wanted)
                    ?? throw new BadInput(Fault.Told("--unit", $"No such flow sheet is kept. There is {(FlowSheets.Newest(mill) is { Count: > 0 } all ? string.Join(", ", all.Select(k => $"{k.Unit} up to version {k.Version}")) : "none: keep one with milling keep")}."));
                voice.Say(FlowSheetJson.Write(sheet.Sheet).TrimEnd());
                return Exit.Done;
            }

            var table = new TextTable("unit", "what it is", "version", "kept by", "when", "why");
            foreach (var kept in FlowSheets.Newest(mill))
            {
                table.Add(kept.Unit, kept.Sheet.Name, $"{kept.Version}", kept.By, kept.Recorded.InZone(mill.Settings.Zone).LocalDateTime.ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture), kept.Reason);
            }

            table.To(voice);
            return Exit.Done;
        });
        return command;
    }

    /// <summary>Keeps a sheet as the next version of a unit's.</summary>
    public static Command Keep(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var file = new Option<string>("--in") { Description = "the sheet as JSON; - for standard input", HelpName = "FILE", Required = true };
        var (unit, by, reason) = (new Option<string>("--unit") { Description = "code of the unit", HelpName = "CODE", Required = true }, new Option<string>("--by") { Description = "who keeps it", HelpName = "NAME", Required = true }, new Option<string>("--reason") { Description = "why", HelpName = "WORDS", Required = true });
        var after = new Option<int>("--after") { Description = "the version it was made from; 0 for the first", HelpName = "NUMBER" };
        var command = new Command("keep", "Keeps a flow sheet as the next version of a unit's. Nobody's change is overwritten: a version made from one that is no longer the newest is refused.") { file, unit, by, reason, after };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var name = asked.GetValue(file)!;
            using var stream = name == "-" ? Console.OpenStandardInput() : Files.Open(name);
            var read = FlowSheetCase.Read(stream);
            if (!read.Ok)
            {
                throw new BadInput(read.Faults);
            }

            using var mill = where.Open(asked, clock);
            var (kept, faults) = FlowSheets.Keep(mill, asked.GetValue(unit)!, new FlowSheetPaper(asked.GetValue(reason)!, read.Value), asked.GetValue(by)!, asked.GetValue(after));
            if (kept is null)
            {
                return voice.Refuse(faults.Select(f => Fault.Told(name, f)));
            }

            voice.Say($"Version {kept.Version} of {kept.Unit} stands, kept by {kept.By}: {kept.Reason}");
            voice.Say(MillingCautions.Nip);
            return Exit.Done;
        });
        return command;
    }

    private static void Say(FlowSheetAnswer answer, Voice voice)
    {
        voice.Say($"{answer.Name}: {answer.Passages} passages, {answer.Products.Count} products, wheat to {answer.FirstBreak}; no fault");
        var table = new TextTable("kind", "passages", "rolls m", "cloth m²", "codes");
        foreach (var kind in answer.Kinds)
        {
            table.Add(kind.Kind, $"{kind.Passages.Count}", kind.RollMillimetres > 0 ? Number(kind.RollMillimetres / 1000, 1) : "", Number(kind.ClothSquareMetres, 1), string.Join(' ', kind.Passages));
        }

        table.To(voice);
        voice.Say(answer.TonnesPerDay is { } tonnes
            ? $"for each 100 kg of wheat in 24 h at {Number(tonnes, 0)} t: rolls {Number(answer.RollMillimetresPer100Kilograms, 2)} mm (usually 10 to 12 for hard wheat, 11 to 14 for soft, from memory), sifter cloth {Number(answer.SifterSquareMetresPer100Kilograms, 3)} m² (0.05 to 0.08, from memory)"
            : "the sheet does not say what the unit is built for (tonnesPerDay), so that rolls and cloth for each 100 kg are not given");
        voice.Say(answer.Loops.Count == 0 ? "no stock goes back" : $"stock goes round, and all of it can leave: {string.Join("; ", answer.Loops.Select(l => string.Join(' ', l)))}");
        foreach (var product in answer.Products.GroupBy(p => p.Kind))
        {
            voice.Say($"{product.Key}: {string.Join(' ', product.Select(p => p.Code))}");
        }

        foreach (var caution in answer.Cautions)
        {
            voice.Say(caution);
        }
    }
}
