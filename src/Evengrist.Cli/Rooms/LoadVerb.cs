using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Packing.Dispatch;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Records.Packing.Dispatch;
using NodaTime;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Loads at the ramp.</summary>
internal static class LoadVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        var (number, where) = (new Argument<string>("LOAD") { Description = "number of the load" }, new MillOption());
        var scan = new Option<string?>("--scan") { Description = "scan this pallet or bulk load onto it", HelpName = "CODE" };
        var depart = new Option<bool>("--depart") { Description = "send it off: writes its movements, all or none, once" };
        var seals = new Option<string?>("--seals") { Description = "with --depart: the seals as read at the gate, with commas between" };
        var (by, reason) = (new Option<string?>("--by") { Description = "who acts" }, new Option<string?>("--reason") { Description = "why, where something is asked" });
        var (asof, json) = (MomentOption.Of("--asof", "as of a moment, and when it is done; now when left out"), new Option<bool>("--json") { Description = "answer in JSON, and nothing else on standard output" });
        var command = new Command("load", "A load of dispatch with what stands against its leaving; with --scan or --depart, a named person loads it or sends it off.") { number, scan, depart, seals, by, reason, asof, json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            using var mill = where.Open(asked, clock);
            var (load, at) = (asked.GetRequiredValue(number), MomentOption.Read(asked, asof) ?? clock.GetCurrentInstant());
            var who = new Act(asked.GetValue(by), at, asked.GetValue(reason));
            string[] read = [.. (asked.GetValue(seals) ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
            if (asked.GetValue(scan) is { } code && new ScanPackage(load, code).In(mill, who) is { Load: null } stopped)
            {
                return Refuse("--scan", stopped, voice);
            }

            if (asked.GetValue(depart) && new SendOff(load, read).In(mill, who) is { Load: null } stays)
            {
                return Refuse("--depart", stays, voice);
            }

            return SeenLoad.Of(mill, load, at) is { } found ? voice.Answer(asked.GetValue(json), Answer(found), answer => Say(answer, voice)) : voice.Refuse([Fault.Told("LOAD", $"There is no load {load}. Plan it on the page /dispatch or over HTTP.")]);
        });
        return command;
    }

    private static int Refuse(string option, LoadAnswer answer, Voice voice) => voice.Refuse([.. answer.Findings.Where(f => f.Weight != FindingWeight.Caution).Select(f => Fault.Told(option, f.Words))]);

    private static DispatchAnswer Answer(SeenLoad seen) => DispatchAnswer.Of(seen.Load, seen.Packages, seen.Filled, seen.Findings);

    private static void Say(DispatchAnswer load, Voice voice)
    {
        voice.Say($"{load.Number} to {load.Consignee}, {load.Day}: {load.Stage.ToLowerInvariant()}{(load.By.Length > 0 ? $" on {load.Departed:yyyy-MM-dd HH:mm zzz}, sent off by {load.By}" : "")}; {load.Packages.Count} packages, {Number(load.Grams / 1e6, 3)} t");
        if (load.Orders.Count > 0)
        {
            var orders = new TextTable("order", "product", "ordered t", "sent before t", "on this t", "on other loads t", "still open t", "over t");
            foreach (var o in load.Orders)
            {
                orders.Add(o.Number, o.Product, Tonnes(o.OrderedKilograms), Tonnes(o.SentBeforeKilograms), Tonnes(o.OnThisKilograms), Tonnes(o.OnOtherOpenLoadsKilograms), Tonnes(o.StillOpenKilograms), Tonnes(o.OverKilograms));
            }

            orders.To(voice);
        }

        voice.Say([.. load.Packages.Select(p => $"  {p}"), .. load.Against.Select(f => $"{f.Weight.ToLowerInvariant()}: {f.Words}")]);
    }

    private static string Tonnes(decimal kilograms) => Number((double)kilograms / 1000, 3);
}
