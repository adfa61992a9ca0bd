using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Ledger;
using Evengrist.Planning.Season;
using Evengrist.Planning.Season.Bands;
using Evengrist.Planning.Season.Lots;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Season.ChangeOver;

namespace Evengrist.Cli.Rooms;

/// <summary>The crop year: a posed season planned, and what wheat is worth to it.</summary>
internal static class SeasonRoom
{
    public static Command Of(Voice voice) => new("season", "The crop year: what to mill, keep and buy, when a flour starves, what wheat is worth.") { Plan(voice), Value(voice), Bands(voice), ChangeOver(voice), SeasonPromiseVerb.Of(voice) };

    private static Command Plan(Voice voice)
    {
        var command = new Command("plan", "Plans a posed crop year: starve dates, misses by name, budget, buy list, bound and gap. Needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, SeasonCase.Help);
        command.SetAction(asked => Reply(voice, posed.Json(asked), posed.Ask(asked, SeasonCase.Read, c => Parsing.Got(SeasonAnswer.Of(SeasonQuestions.Plan(c.Season, c.Millable, c.GapPercent, c.Seconds)))), answer => SayPlan(answer, voice)));
        return command;
    }

    private static Command Value(Voice voice)
    {
        var command = new Command("value", "What a tonne of a posed wheat, and a truck of it in each bin, is worth to a posed crop year. Needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, SeasonValueCase.Help);
        command.SetAction(asked => Reply(voice, posed.Json(asked), posed.Ask(asked, SeasonValueCase.Read, c => Parsing.Got(SeasonValueAnswer.Of(SeasonPlanner.Linear(c.Season), c.Lot is { } lot ? LotRun.Reckon(lot, c.Season) : null, c))), answer => SayValue(answer, voice)));
        return command;
    }

    private static Command Bands(Voice voice)
    {
        var command = new Command("bands", "Into how many bands to part a posed harvest, where their edges lie, which bins each takes, and what each number of them costs the year. Needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, SeasonBandsCase.Help);
        command.SetAction(asked => Reply(voice, posed.Json(asked), posed.Ask(asked, SeasonBandsCase.Read, c => Parsing.Got(SeasonBandsAnswer.Of(BandRun.Reckon(c.Harvest, c.Season, c.EndValuePerTonne), row => BandBinning.Share(row, c.Bins)))), answer => SeasonSaid.Bands(answer, voice)));
        return command;
    }

    private static Command ChangeOver(Voice voice)
    {
        var command = new Command("change-over", "What each step of new crop in old does to every posed flour's wheat, and how large a step may be. Needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, ChangeOverCase.Help);
        command.SetAction(asked => Reply(voice, posed.Json(asked), posed.Ask(asked, ChangeOverCase.Read, c => Parsing.Got(ChangeOverAnswer.Of(ChangeOverModel.Lay(c.Change), c))), answer => SeasonSaid.ChangeOver(answer, voice)));
        return command;
    }

    internal static int Reply<T>(Voice voice, bool json, Reply<T> reply, Action<T> say)
        where T : class => reply.Answer is { } answer ? voice.Answer(json, answer, say) : voice.NoAnswer(reply.Reasons);

    private static void SayPlan(SeasonAnswer answer, Voice voice)
    {
        voice.Say(string.Create(CultureInfo.InvariantCulture, $"{(answer.IsMillable ? "A plan that can be milled" : "The linear plan: gates, least shares and campaigns are not kept")}. {(answer.IsOnSpec ? "On-spec throughout." : "NOT on-spec throughout: see what is missed, relieved or unmet.")}"));
        voice.Say(string.Create(CultureInfo.InvariantCulture, $"Costs {answer.Total:#,##0.00}; no plan{(answer.LayerDifference > 0 ? " that draws the layers alike" : "")} can cost less than {answer.Bound:#,##0.00}; gap {answer.GapPercent:0.000} %; stopped: {answer.Exit}; {answer.Seconds:0.0} s. Reckoned."));
        var covers = new TextTable("flour", "starves", "weeks", "limit", "missed, t mix", "unmet, t");
        foreach (var cover in answer.Covers)
        {
            covers.Add(cover.Flour, cover.StarveDate ?? "lasts", N(cover.Weeks), cover.Limiting ?? "", N(cover.MissedTonnes), N(cover.UnmetTonnes));
        }

        covers.To(voice);
        foreach (var miss in answer.Misses)
        {
            voice.Say(string.Create(CultureInfo.InvariantCulture, $"Missed: {miss.Flour}, from {miss.From}, {Enum.Parse<Property>(miss.What).Words()}: {miss.Amount:0.###} {(miss.IsBelow ? "below the least" : "above the most")}, {miss.Tonnes:0.0} t of mix."));
        }

        if (answer.Buy.Count > 0)
        {
            var buys = new TextTable("buy", "t", "money", "from", "first by", "worth/t", "on");
            foreach (var buy in answer.Buy)
            {
                buys.Add(buy.Offer, N(buy.Tonnes), N(buy.Money), buy.First ?? "", buy.Latest ?? "", N(buy.WorthPerTonne), buy.WorthOn);
            }

            buys.To(voice);
        }
    }

    private static void SayValue(SeasonValueAnswer answer, Voice voice)
    {
        voice.Say($"A tonne kept apart is worth {N(answer.Apart.PerTonne)}, {Where(answer.Apart)}. Reckoned from the linear plan, for a small amount.");
        var bins = new TextTable("bin", "wheat", "money", "per t", "its tonnes", "what it changes", "why not");
        foreach (var bin in answer.Bins)
        {
            bins.Add(bin.Bin, bin.Wheat, N(bin.Money), N(bin.PerTonne), N(bin.OfTonnes), N(bin.OfChange), bin.WhyNot);
        }

        if (answer.Bins.Count > 0)
        {
            bins.To(voice);
        }

        var curve = new TextTable("value", "per t", "for");
        foreach (var point in answer.Curve)
        {
            curve.Add(N(point.Value), N(point.PerTonne), Where(point));
        }

        if (answer.Curve.Count > 0)
        {
            curve.To(voice);
        }

        if (answer.Lot is { } lot)
        {
            SeasonSaid.Lot(lot, voice);
        }
    }

    private static string Where(SeasonWorthAnswer worth) => worth.Flour is { } flour ? $"in {flour}, from {worth.From}" : "left over at the end";

    private static string N(double? value) => value?.ToString("#,##0.00", CultureInfo.InvariantCulture) ?? "";
}
