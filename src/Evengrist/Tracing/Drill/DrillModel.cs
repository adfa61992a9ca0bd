using Evengrist.Ledger;
using Evengrist.Ledger.Reckoned;
using Evengrist.Tracing.Recall;

namespace Evengrist.Tracing.Drill;

/// <summary>Scores a recall against the recount.</summary>
internal static class DrillModel
{
    private const int MissedShown = 20;

    public static DrillScore Score(Book book, Schedule schedule, RecallOutcome recall, NetKind kind, double secondsBack, double secondsForward)
    {
        var net = recall.Net(kind);
        var recounts = recall.Beliefs.Select(b => Recount.Of(book, schedule, recall.Question.Starts, recall.AsOf, b.Outflow)).ToArray();
        double threshold = Math.Max(1, recall.Question.Threshold.Grams), difference = 0;
        var listed = net.Packages.ToDictionary(p => p.Place.Id);
        var known = recall.Packages.ToDictionary(p => p.Place.Id);
        var over = new HashSet<PlaceId>();
        for (var h = 0; h < recounts.Length; h++)
        {
            foreach (var (id, grams) in recounts[h])
            {
                difference = Math.Max(difference, Math.Abs(grams - (known.TryGetValue(id, out var package) ? package.Grams.Each[h] : 0)));
                if (grams > threshold && recall.Beliefs[h].Weight > 0)
                {
                    over.Add(id);
                }
            }
        }

        var most = recall.Beliefs.Index().MaxBy(b => b.Item.Weight).Index;
        var kilograms = net.Packages.Sum(p => p.Mass.Kilograms);
        var truly = net.Packages.Where(p => recounts[most].GetValueOrDefault(p.Place.Id) >= 1).Sum(p => p.Mass.Kilograms);
        var missed = over.Where(id => !listed.ContainsKey(id)).Select(id => book[id].Code).Order(StringComparer.Ordinal).ToArray();
        return new DrillScore(secondsBack, secondsForward, net.Packages.Count, kilograms, over.Count, [.. missed.Take(MissedShown)],
            over.Count == 0 ? 1 : 1 - (double)missed.Length / over.Count, kilograms == 0 ? 1 : (double)(truly / kilograms), difference, net.Consignees.Count, net.Balance.EffectivenessPercent);
    }
}
