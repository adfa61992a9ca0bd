using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Ledger;
using Evengrist.Mix.Relations;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records;
using Evengrist.Records.Mix;
using Evengrist.Records.Season;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>How flours follow from their wheat: what is kept, what the runs say, and keeping one.</summary>
internal static class RelationVerbs
{
    private const string NoTerms = "No terms of a crop year are kept, so that no flour is known: keep them first, on the page or with evengrist season.";

    public static Command Of(Voice voice, IClock clock) => new("relation", "How flours follow from their wheat: what is kept, what the mill's runs say.") { Show(voice, clock), Keep(voice, clock) };

    private static Command Show(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var (until, json) = (MomentOption.Of("--as-of", "runs that were over by then; now when left out"), new Option<bool>("--json") { Description = "answer in JSON, runs with it, and nothing else on standard output" });
        var command = new Command("show", "The relation kept for each flour and property, and the newest fit beside it.") { until, json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var at = MomentOption.Read(asked, until);
            using var mill = where.Open(asked, clock);
            RelationAnswer[] rows = [.. Records(mill, at ?? mill.Settings.OpeningOr(clock.GetCurrentInstant())).Select(r => RelationAnswer.Of(
                r.Flour.Code, r.What, r.Kept is { } kept ? RelationKeptAnswer.Of(kept.Version, kept.By, kept.Recorded, kept.Relation.Relation) : null, r.Fit))];
            return voice.Answer(asked.GetValue(json), new RelationsAnswer(rows, RelationsAnswer.Said), answer => Say(answer, voice));
        });
        return command;
    }

    private static Command Keep(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var file = new Option<string?>("--in") { Description = "the relation as JSON: flour, and relation with what, wheatBasis, flourBasis, intercept, slope, uncertainty, isFitted, source; or, to keep the newest fit, --flour and --what", HelpName = "FILE" };
        var (flour, what) = (new Option<string?>("--flour") { Description = "the flour whose newest fit is kept", HelpName = "CODE" }, new Option<string>("--what") { Description = "its property", HelpName = "PROPERTY", DefaultValueFactory = _ => "protein" });
        var (by, until) = (new Option<string>("--by") { Description = "who keeps it", HelpName = "NAME", Required = true }, MomentOption.Of("--as-of", "runs that were over by then; now when left out"));
        var command = new Command("keep", "Keeps a relation of a flour to its wheat as its next version: one that is posed, or the newest fit.") { file, flour, what, by, until };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var name = asked.GetValue(file);
            var at = MomentOption.Read(asked, until);
            var (posed, faults) = name is null ? (null, []) : Read(name);
            if (faults.Count > 0)
            {
                return Refuse(faults);
            }

            using var mill = where.Open(asked, clock);
            if (posed is null)
            {
                (posed, faults) = Fitted(mill, asked.GetValue(flour), asked.GetValue(what)!, at ?? mill.Settings.OpeningOr(clock.GetCurrentInstant()));
            }

            (var kept, faults) = posed is null ? (null, faults) : MillRelations.Keep(mill, posed, asked.GetValue(by)!);
            if (kept is null)
            {
                return Refuse(faults);
            }

            voice.Say(string.Create(CultureInfo.InvariantCulture, $"Relation {kept.Relation.Code}, version {kept.Version}, is kept: {kept.Relation.Relation.Words}."));
            return Exit.Done;

            int Refuse(IReadOnlyList<string> why) => voice.Refuse(why.Select(f => Fault.OfFile(name ?? "relation", $"a relation that can be. {f}")));
        });
        return command;
    }

    private static (MillRelation? Relation, IReadOnlyList<string> Faults) Read(string name)
    {
        using var reader = new StreamReader(name == "-" ? Console.OpenStandardInput() : Files.Open(name));
        return MillRelation.TryRead(reader.ReadToEnd(), out var relation, out var faults) ? (relation, []) : (null, faults);
    }

    private static (MillRelation? Relation, IReadOnlyList<string> Faults) Fitted(Mill mill, string? flour, string what, Instant at)
    {
        if (flour is null)
        {
            return (null, ["Give the relation with --in FILE, or the flour whose newest fit is to be kept with --flour."]);
        }

        if (MillRelation.Properties.Cast<Property?>().FirstOrDefault(p => MixCase.NameOf(p!.Value) == what.Trim()) is not { } property)
        {
            return (null, [$"A relation is kept for {string.Join(", ", MillRelation.Properties.Select(MixCase.NameOf))}; read {what}."]);
        }

        return SeasonShelf.TermsOf(mill) is { } kept ? MillRelations.Fitted(RelationRecords.Of(mill, kept.Terms, at), flour, property, mill.Settings.Zone) : (null, [NoTerms]);
    }

    private static IReadOnlyList<RelationRecords> Records(Mill mill, Instant at) => SeasonShelf.TermsOf(mill) is { } kept ? RelationRecords.Of(mill, kept.Terms, at) : [];

    private static void Say(RelationsAnswer answer, Voice voice)
    {
        if (answer.Relations.Count == 0)
        {
            voice.Say(NoTerms);
            return;
        }

        var table = new TextTable("flour", "what", "kept", "intercept", "slope", "± (k = 2)", "runs", "fit: intercept", "± (95 %)", "slope", "± (95 %)", "residual", "wheat");
        foreach (var row in answer.Relations)
        {
            var (kept, fit) = (row.Kept, row.Fit);
            table.Add(row.Flour, row.What, kept is null ? "none" : $"version {kept.Version}, {(kept.Fitted ? "fitted" : "not fitted")}", N(kept?.Intercept), N(kept?.Slope), N(2 * kept?.StandardUncertainty), fit is null ? "" : $"{fit.Runs}",
                N(fit?.Intercept), N(fit?.InterceptPlusMinus), N(fit?.Slope), N(fit?.SlopePlusMinus), N(fit?.Residual), fit?.LeastWheat is null ? "" : $"{N(fit.LeastWheat)} to {N(fit.MostWheat)}");
        }

        table.To(voice);
        foreach (var row in answer.Relations.Where(r => r.Fit?.WhyNot is not null))
        {
            voice.Say($"{row.Flour} {row.What}: {row.Fit!.WhyNot}");
        }

        voice.Say(answer.Note);
    }

    private static string N(double? number) => number?.ToString("0.###", CultureInfo.InvariantCulture) ?? "";
}
