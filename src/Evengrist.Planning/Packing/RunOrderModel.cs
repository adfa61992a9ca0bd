using Evengrist.Packing.Runs;
using Google.OrTools.Sat;

namespace Evengrist.Planning.Packing;

/// <summary>Runs over lines as a constraint problem in whole minutes: on each line a round through its runs, so that what lies between two flours is counted where they follow each other.</summary>
internal sealed class RunOrderModel
{
    // Thousandths of money times minutes of an hour, so that what a minute costs is whole.
    private const double Parts = 60_000;

    private readonly RunOrderSpec spec;
    private readonly int horizon;
    private readonly List<(BoolVar Literal, Change Change)> changes = [];
    private readonly List<(BoolVar Literal, string Line, int From, int To)> arcs = [];

    public RunOrderModel(RunOrderSpec spec)
    {
        this.spec = spec;
        horizon = Horizon(spec);
        Runs = [.. spec.Runs.Select(r => RunVariables.Of(Model, r, horizon))];
        foreach (var line in spec.Lines)
        {
            Round(line);
        }

        CrewRule.Add(Model, spec, Runs, horizon);
        Cost = LinearExpr.Sum(
            spec.Runs.Zip(Runs, (run, v) => LinearExpr.Term(v.Late, Whole(run.Weight * spec.Costs.LatePerHour / 60)))
                .Concat(changes.Select(c => LinearExpr.Term(c.Literal, Whole((spec.Costs.ChangePerHour * c.Change.Minutes / 60) + (spec.Costs.FlushPerTonne * c.Change.FlushTonnes))))));
        Model.Minimize(Cost);
    }

    public CpModel Model { get; } = new();

    public IReadOnlyList<RunVariables> Runs { get; }

    public LinearExpr Cost { get; }

    public static double Money(double cost) => cost / Parts;

    /// <summary>Bins may not run dry, and where asked not overflow.</summary>
    public void Bins(bool mayOverflow) => BinRule.Add(Model, spec, Runs, mayOverflow);

    /// <summary>Begins from a plan: every run in its place and what follows what, so that a plan that holds is found at once.</summary>
    public void Begin(RunPlan plan)
    {
        Dictionary<(string Line, int From, int To), bool> follows = [];
        foreach (var line in plan.Runs.GroupBy(r => r.Line))
        {
            int[] turns = [-1, .. line.OrderBy(r => r.Start).Select(r => spec.Runs.ToList().FindIndex(s => s.Code == r.Run.Code)), -1];
            foreach (var (from, to) in turns.Zip(turns.Skip(1)))
            {
                follows[(line.Key, from, to)] = true;
            }
        }

        var isUsed = plan.Runs.Select(r => r.Line).ToHashSet();
        foreach (var (literal, line, from, to) in arcs)
        {
            Model.AddHint(literal, from == to ? !isUsed.Contains(line) : follows.ContainsKey((line, from, to)));
        }

        for (var r = 0; r < Runs.Count; r++)
        {
            if (plan.Runs.FirstOrDefault(p => p.Run.Code == spec.Runs[r].Code) is { } placed && placed.End <= horizon)
            {
                Model.AddHint(Runs[r].Start, placed.Start);
                Model.AddHint(Runs[r].End, placed.End);
                Model.AddHint(Runs[r].Late, placed.Late);
                for (var i = 0; i < Runs[r].On.Length; i++)
                {
                    Model.AddHint(Runs[r].On[i], spec.Runs[r].Places[i].Line == placed.Line);
                }
            }
        }
    }

    /// <summary>Holds the order that was found, and from here on asks for every start to be as early as it can.</summary>
    public void Settle(CpSolver found)
    {
        foreach (var (arc, _, _, _) in arcs)
        {
            Model.Add(arc == (found.BooleanValue(arc) ? 1 : 0));
        }

        Model.Add(Cost <= (long)found.ObjectiveValue);
        Model.Minimize(LinearExpr.Sum(Runs.Select(r => r.Start)));
    }

    public IReadOnlyList<RunLock> Read(CpSolver found) =>
        [.. spec.Runs.Zip(Runs, (run, v) => new RunLock(run.Places[Array.FindIndex(v.On, found.BooleanValue)].Line, (int)found.Value(v.Start)))];

    // Node 0 is the line before its first run and after its last; a run that is elsewhere stays by itself.
    private void Round(PackingLine line)
    {
        var here = spec.Runs.Select((run, r) => (Number: r, Run: run, Variables: Runs[r], Place: run.Places.ToList().FindIndex(p => p.Line == line.Code))).Where(r => r.Place >= 0).ToArray();
        if (here.Length == 0)
        {
            return;
        }

        var round = Model.AddCircuit();
        Model.AddNoOverlap(here.Select(r => r.Variables.Spans[r.Place]));
        round.AddArc(0, 0, Arc($"{line.Code} empty", -1, -1));
        for (var i = 0; i < here.Length; i++)
        {
            var (number, run, v, place) = here[i];
            round.AddArc(i + 1, i + 1, v.On[place].Not());
            round.AddArc(i + 1, 0, Arc($"{run.Code} last on {line.Code}", number, -1));
            if (spec.MayFollow(line.LastFlour, run.Flour))
            {
                Follow((0, -1), (i + 1, number), $"{run.Code} first on {line.Code}", spec.Between(line.LastFlour, run.Flour), v, Model.NewConstant(line.FreeFrom));
            }

            for (var j = 0; j < here.Length; j++)
            {
                if (i != j && spec.MayFollow(run.Flour, here[j].Run.Flour))
                {
                    Follow((i + 1, number), (j + 1, here[j].Number), $"{run.Code} then {here[j].Run.Code} on {line.Code}", spec.Between(run.Flour, here[j].Run.Flour), here[j].Variables, v.End);
                }
            }
        }

        BoolVar Arc(string name, int from, int to)
        {
            var arc = Model.NewBoolVar(name);
            arcs.Add((arc, line.Code, from, to));
            return arc;
        }

        void Follow((int Node, int Run) from, (int Node, int Run) to, string name, Change change, RunVariables next, IntVar free)
        {
            var arc = Arc(name, from.Run, to.Run);
            round.AddArc(from.Node, to.Node, arc);
            Model.Add(next.Start >= free + change.Minutes).OnlyEnforceIf(arc);
            if (change.Minutes > 0 || change.FlushTonnes > 0)
            {
                changes.Add((arc, change));
            }
        }
    }

    // No plan needs longer than everything after each other, from when everything is there.
    private static int Horizon(RunOrderSpec spec)
    {
        var longest = spec.Rules.Select(r => r.Minutes).DefaultIfEmpty().Max();
        var begin = spec.Runs.Select(r => r.Ready).Concat(spec.Runs.Select(r => r.Locked?.Start ?? 0)).Concat(spec.Lines.Select(l => l.FreeFrom)).Concat(spec.Crew.Select(s => s.Until)).Concat(spec.Bins.SelectMany(b => b.Inflows.Select(i => i.Until))).Max();
        return begin + spec.Runs.Sum(r => r.Places.Max(p => p.Minutes) + longest);
    }

    private static long Whole(double money) => (long)Math.Round(money * Parts);
}
