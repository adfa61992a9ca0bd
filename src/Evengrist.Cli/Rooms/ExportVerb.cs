using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Exports;
using Evengrist.Records.Lists;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Takes any list of the mill out as a file.</summary>
internal static class ExportVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        var list = new Option<string?>("--list") { Description = "which list; left out, the names of all are listed", HelpName = "NAME" };
        var form = new Option<string?>("--as") { Description = $"{ListFormat.Words}; the ending of the file says it where this is left out", HelpName = "csv|xlsx|parquet" };
        var file = new Option<string?>("--out") { Description = "where it is written", HelpName = "FILE" };
        var of = new Option<string?>("--of") { Description = "code of the one thing it is about: a place, a mill unit", HelpName = "CODE" };
        var more = new Option<string[]>("--with") { Description = "what a list takes beyond that, such as outflow=core or sort=reading", HelpName = "NAME=TEXT", AllowMultipleArgumentsPerToken = false };
        var (from, until, asOf) = (MomentOption.Of("--from", "what happened from then on"), MomentOption.Of("--until", "what happened before then"), MomentOption.Of("--as-of", "the moment looked at; everything recorded when left out"));
        var (json, where) = (new Option<bool>("--json") { Description = "answer in JSON" }, new MillOption());
        var command = new Command("export", "Takes a list out as CSV, as a workbook or as Parquet: masses in kilograms (KGM), moments with their offset, a heading that says unit, basis and whether it was seen or reckoned.") { list, form, file, of, more, from, until, asOf, json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            if (asked.GetValue(list) is not { } name)
            {
                return voice.Answer(asked.GetValue(json), MillLists.All.Select(l => new Named(l.Name, l.Title)).ToArray(), all =>
                {
                    var table = new TextTable("list", "what it is");
                    foreach (var one in all)
                    {
                        table.Add(one.Name, one.Title);
                    }

                    table.To(voice);
                });
            }

            var wanted = MillLists.Find(name) ?? throw Bad("--list", name, "the name of a list; without --list all are named");
            var target = asked.GetValue(file) ?? throw Bad("--out", "", "a file to write the list to");
            var word = asked.GetValue(form) ?? Path.GetExtension(target).TrimStart('.');
            var format = ListFormat.Find(word) ?? throw Bad("--as", word, ListFormat.Words);
            using var mill = where.Open(asked, clock);
            var settings = mill.Settings;
            var at = MomentOption.LookedAt(MomentOption.Read(asked, asOf), mill, clock);
            var ask = new ListAsk(at, settings.Zone) { From = MomentOption.Read(asked, from), Until = MomentOption.Read(asked, until), Of = asked.GetValue(of)?.Trim() ?? "", More = More(asked.GetValue(more) ?? []) };
            if (ask.Fault is not null)
            {
                throw Bad("--until", asked.GetValue(until) ?? "", "a moment after --from");
            }

            var taken = wanted.Take(mill, ask);
            using var stream = Files.Create(target);
            var rows = ListWriter.WriteAsync(taken, format, settings.Zone, stream).GetAwaiter().GetResult();
            return voice.Answer(asked.GetValue(json), new Exported(wanted.Name, rows, target), a => voice.Say($"{a.Rows} rows of {a.List} are in {a.File}."));
        });
        return command;
    }

    private static Dictionary<string, string> More(string[] said)
    {
        var more = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var one in said)
        {
            var end = one.IndexOf('=', StringComparison.Ordinal);
            more[end > 0 ? one[..end].Trim() : throw Bad("--with", one, "NAME=TEXT")] = one[(end + 1)..];
        }

        return more;
    }

    private static BadInput Bad(string option, string read, string expected) => new(new Fault(null, null, option, Fault.Show(read), expected));

    private sealed record Named(string Name, string Title);

    private sealed record Exported(string List, long Rows, string File);
}
