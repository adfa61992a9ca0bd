using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Mix.Sheets;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Records.Mix;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Mix sheets: those kept beside what was drawn, and keeping one.</summary>
internal static class SheetVerbs
{
    public static Command Sheets(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var (until, json) = (MomentOption.Of("--as-of", "sheets that had begun by then; now when left out"), new Option<bool>("--json") { Description = "answer in JSON, and nothing else on standard output" });
        var command = new Command("sheets", "The mix sheets kept, each beside what was drawn, and how gates give what they are set to.") { until, json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var at = MomentOption.Read(asked, until);
            using var mill = where.Open(asked, clock);
            var moment = at ?? mill.Settings.OpeningOr(clock.GetCurrentInstant());
            var records = SheetRecords.Of(mill, moment, toCome: false);
            return voice.Answer(asked.GetValue(json), new SheetsAnswer([.. records.Sheets.Select(Plain)], [.. records.Fits.Select(GateFitAnswer.Of)], SheetsAnswer.Said), answer => Say(answer, voice));
        });
        return command;
    }

    public static Command Set(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var file = new Option<string>("--in") { Description = "the sheet as JSON: line, flour, from, until, tonnesPerHour, setBy, gates with bin, class and sharePercent", HelpName = "FILE", Required = true };
        var (by, code) = (new Option<string>("--by") { Description = "who records it", HelpName = "NAME", Required = true }, new Option<string?>("--code") { Description = "the sheet that this corrects; left out for a new one", HelpName = "CODE" });
        var command = new Command("set", "Keeps a mix sheet, or the next version of one. It is written down; no gate is moved by it.") { file, by, code };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var name = asked.GetValue(file)!;
            using var reader = new StreamReader(name == "-" ? Console.OpenStandardInput() : Files.Open(name));
            if (!MixSheetJson.TryRead(reader.ReadToEnd(), out var sheet, out var faults))
            {
                return voice.Refuse(faults.Select(f => Fault.OfFile(name, $"a mix sheet that can be. {f}")));
            }

            using var mill = where.Open(asked, clock);
            var (kept, refused) = MixSheets.Keep(mill, sheet, asked.GetValue(code), asked.GetValue(by)!);
            if (kept is null)
            {
                return voice.Refuse(refused.Select(f => Fault.OfFile(name, $"a mix sheet that can be. {f}")));
            }

            voice.Say(string.Create(CultureInfo.InvariantCulture, $"Mix sheet {kept.Code}, version {kept.Version}, is kept."));
            return Exit.Done;
        });
        return command;
    }

    private static SheetAnswer Plain(SheetDraws drawn) => SheetAnswer.Of(drawn.Kept.Code, drawn.Kept.Version, drawn.Kept.By, drawn.Kept.Recorded, drawn.Kept.Sheet, drawn.Against);

    private static void Say(SheetsAnswer answer, Voice voice)
    {
        if (answer.Sheets.Count == 0)
        {
            voice.Say("No mix sheet is kept yet: keep one with evengrist mix set --in FILE --by NAME.");
            return;
        }

        var sheets = new TextTable("sheet", "flour", "set by", "bin", "set %", "drawn %", "± (k = 2)", "set t", "drawn t");
        foreach (var sheet in answer.Sheets)
        {
            DrawnGateAnswer[] gates = sheet.Drawn.Count > 0 ? [.. sheet.Drawn] : [.. sheet.Gates.Select(g => new DrawnGateAnswer(g.Bin, g.SharePercent, double.NaN, double.NaN, double.NaN, double.NaN))];
            foreach (var (i, gate) in gates.Index())
            {
                sheets.Add(i == 0 ? sheet.Code : "", i == 0 ? sheet.Flour : "", i == 0 ? sheet.SetBy : "", gate.Bin, N(gate.SetPercent, 1), N(gate.DrawnPercent, 2), N(2 * gate.StandardUncertainty, 2), N(gate.SetTonnes, 1), N(gate.DrawnTonnes, 1));
            }
        }

        sheets.To(voice);
        var fits = new TextTable("gate", "sheets", "offset t/h", "± (95 %)", "slope", "± (95 %)", "");
        foreach (var fit in answer.Gates)
        {
            fits.Add(fit.Bin, N(fit.Sheets, 0), N(fit.OffsetTonnesPerHour, 2), N(fit.OffsetPlusMinus, 2), N(fit.Slope, 3), N(fit.SlopePlusMinus, 3), fit.WhyNot ?? (fit.NewestIsOutside == true ? "newest sheet outside its band" : ""));
        }

        fits.To(voice);
        voice.Say(answer.Note);
    }

    private static string N(double? number, int decimals) => number is { } value && double.IsFinite(value) ? value.ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) : "";
}
