using Evengrist.Packing.Runs;
using Google.OrTools.Sat;

namespace Evengrist.Planning.Packing;

/// <summary>At no time do the lines that run take more people than are there.</summary>
internal static class CrewRule
{
    public static void Add(CpModel model, RunOrderSpec spec, IReadOnlyList<RunVariables> runs, int horizon)
    {
        if (spec.Crew.Count == 0)
        {
            return;
        }

        int[] edges = [.. spec.Crew.SelectMany(s => new[] { s.From, s.Until }).Append(0).Append(horizon).Where(m => m <= horizon).Distinct().Order()];
        var people = edges.Select(at => spec.Crew.Where(s => s.From <= at && at < s.Until).Sum(s => s.People)).ToArray();
        var rule = model.AddCumulative(people.Max());
        for (var i = 0; i + 1 < edges.Length; i++)
        {
            if (people[i] < people.Max())
            {
                rule.AddDemand(model.NewFixedSizeIntervalVar(model.NewConstant(edges[i]), edges[i + 1] - edges[i], $"away from {edges[i]}"), people.Max() - people[i]);
            }
        }

        var crews = spec.Lines.ToDictionary(l => l.Code, l => l.Crew);
        for (var r = 0; r < runs.Count; r++)
        {
            for (var i = 0; i < runs[r].Spans.Length; i++)
            {
                rule.AddDemand(runs[r].Spans[i], crews[spec.Runs[r].Places[i].Line]);
            }
        }
    }
}
