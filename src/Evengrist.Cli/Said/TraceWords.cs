using System.Globalization;
using Evengrist.Plant.Answers;

namespace Evengrist.Cli.Said;

/// <summary>Traces as tables.</summary>
internal static class TraceWords
{
    private const int MostListed = 400;

    public static void Say(RootsAnswer answer, Voice voice)
    {
        voice.Say($"Roots of {answer.Code} ({answer.Kind}), {Amounts.Kilograms(answer.Kilograms.Expected)} kg, as of {answer.AsOf}. {Believed(answer.Beliefs)}");
        var table = new TextTable(["origin", "kind", "truck", "least %", "expected %", "most %", "of the grain %"]);
        foreach (var root in answer.Roots)
        {
            table.Add([root.Origin, root.Kind, root.Truck ?? "", .. Amounts.Spread(root.Share, Amounts.Share), Amounts.Share(root.GrainShare.Expected)]);
        }

        table.To(voice);
        voice.Say("Reckoned; least and most are over the hypotheses asked. Shares are of the whole, water and additives included.");
    }

    public static void Say(ReachAnswer answer, Voice voice)
    {
        voice.Say($"Reach of {answer.Code} ({answer.Kind}), {Amounts.Kilograms(answer.Kilograms.Expected)} kg, as of {answer.AsOf}. {Believed(answer.Beliefs)}");
        foreach (var (hypothesis, count) in answer.PackagesOverThreshold)
        {
            voice.Say($"{Amounts.Words(hypothesis)}: {count} packages above {answer.ThresholdKg.ToString(CultureInfo.InvariantCulture)} kg, {answer.PackagesReached[hypothesis]} reached at all, {Amounts.Share(answer.AccountedFor[hypothesis])} % accounted for");
        }

        voice.Say($"the union, the cautious scope: {answer.UnionOverThreshold} packages above {answer.ThresholdKg.ToString(CultureInfo.InvariantCulture)} kg");
        var table = new TextTable("package", "kind", "made", "least kg", "expected kg", "most kg", "chance above %", "sent to", "hold");
        foreach (var package in answer.Packages.Take(MostListed))
        {
            table.Add([package.Code, package.Kind, package.Made, .. Amounts.Spread(package.Kilograms, Amounts.Kilograms), Amounts.Share(package.ChanceOverThreshold), package.SentTo ?? "", package.OnHold ? "held" : ""]);
        }

        table.To(voice);
        if (answer.Packages.Count > MostListed)
        {
            voice.Say($"… and {answer.Packages.Count - MostListed} more; --json lists every one.");
        }

        var rest = new TextTable("where it is now", "place", "least kg", "expected kg", "most kg");
        foreach (var where in answer.Where)
        {
            rest.Add([where.Where, where.Place ?? "", .. Amounts.Spread(where.Kilograms, Amounts.Kilograms)]);
        }

        rest.To(voice);
        voice.Say("Reckoned, not seen: hold the union until a named person has judged it.");
    }

    private static string Believed(IReadOnlyDictionary<string, double> beliefs) =>
        "Believed: " + string.Join(", ", beliefs.Select(b => $"{Amounts.Words(b.Key)} {b.Value.ToString("0.##", CultureInfo.InvariantCulture)}")) + " (an assumption until the site has made its own trial).";
}
