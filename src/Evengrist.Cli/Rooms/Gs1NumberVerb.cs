using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Packing.Codes;
using Evengrist.Plant;

namespace Evengrist.Cli.Rooms;

/// <summary>Numbers under a company prefix.</summary>
internal static class Gs1NumberVerb
{
    public static Command Of(Voice voice)
    {
        var prefix = new Argument<string>("PREFIX") { Description = "the company prefix that GS1 lent the mill" };
        var (item, indicator) = (new Option<long?>("--item") { Description = "which trade item: gives its GTIN" }, new Option<int>("--indicator") { Description = "0 for the item itself, 1 to 9 for packings of it" });
        var (location, unit, extension) = (new Option<long?>("--location") { Description = "which location or party: gives its GLN" }, new Option<long?>("--unit") { Description = "which pallet or load: gives its SSCC" }, new Option<int>("--extension") { Description = "extension digit of the SSCC" });
        var json = new Option<bool>("--json") { Description = "answer in JSON, and nothing else on standard output" };
        var command = new Command("number", "Numbers with their check digits under a company prefix: of trade items, locations, pallets; and how many there are. Needs no records, and remembers nothing.") { prefix, item, indicator, location, unit, extension, json };
        command.SetAction(asked =>
        {
            if (!CompanyPrefix.TryParse(asked.GetValue(prefix), out var given, out var refusal))
            {
                throw new BadInput(Fault.Told("PREFIX", refusal));
            }

            try
            {
                return voice.Answer(asked.GetValue(json), new
                {
                    gtin = asked.GetValue(item) is { } i ? given.TradeItem(i, asked.GetValue(indicator)).Digits : null, gln = asked.GetValue(location) is { } l ? given.Location(l).Digits : null, sscc = asked.GetValue(unit) is { } u ? given.LogisticUnit(u, asked.GetValue(extension)).Digits : null,
                    tradeItems = given.TradeItems, locations = given.Locations, logisticUnits = given.LogisticUnits,
                }, answer =>
                {
                    voice.Say(new[] { ("GTIN", answer.gtin), ("GLN", answer.gln), ("SSCC", answer.sscc) }.Where(n => n.Item2 is not null).Select(n => $"{n.Item1} {n.Item2}"));
                    voice.Say($"Room for {Amounts.Number(answer.tradeItems, 0)} trade items under each indicator, {Amounts.Number(answer.locations, 0)} locations and {Amounts.Number(answer.logisticUnits, 0)} pallets under each extension digit.");
                });
            }
            catch (ArgumentOutOfRangeException outside)
            {
                throw new BadInput(Fault.Told("gs1 number", outside.Message.Split(" (Parameter", 2)[0]));
            }
        });
        return command;
    }
}
