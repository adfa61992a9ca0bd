using Evengrist.Milling.Response;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Solving;
using Evengrist.Milling.Stock;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Learning;

/// <summary>A mill solved with its tuning, every figure a person measures with its change by each thing tuning can find.</summary>
internal sealed class MillFigures
{
    private readonly MillRun run;
    private readonly IReadOnlyList<TuneKey> keys;
    private readonly TestErrors errors;
    private readonly MillResponse response;
    private readonly List<Probe> probes = [];
    private readonly int[] column;

    private MillFigures(MillRun run, IReadOnlyList<TuneKey> keys, TestErrors errors, IEnumerable<SieveReading> sieves)
    {
        (this.run, this.keys, this.errors) = (run, keys, errors);
        Solution = run.Read();
        var ways = run.Model.Ways;
        probes.AddRange(Enumerable.Range(0, ways.Products.Length).Select(k => Probe.OfProduct(run, k)));
        FirstPassage = probes.Count;
        probes.AddRange(Enumerable.Range(0, ways.Passages.Length).Select(p => Probe.OfPassage(run, p)));
        FirstScalp = probes.Count;
        probes.AddRange(Enumerable.Range(0, ways.Passages.Length).Select(p => new Probe(ways.Passages[p].ScalpOutlet is { } scalp ? [(ways.FirstOutlet[p] + scalp, 1)] : [])));
        Sieves = [.. sieves.Select(s => (s.Passage, s.ApertureMicrometres)).Distinct()];
        FirstSieve = probes.Count;
        probes.AddRange(Sieves.Select(s => Sieve(Index(s.Item1), s.Item2)));

        List<Knob> knobs = [];
        column = [.. keys.Select(k => TunedMill.KnobOf(run.Model, k) is { } knob ? Add(knobs, knob) : -1)];
        response = MillResponse.Of(run, probes, knobs);
    }

    /// <summary>The mill solved.</summary>
    public MillSolution Solution { get; }

    private int FirstPassage { get; }

    private int FirstScalp { get; }

    private int FirstSieve { get; }

    private (string, double)[] Sieves { get; }

    /// <summary>Reckons all figures at given values of the keys.</summary>
    public static MillFigures Of(FlowSheet sheet, MillWheat wheat, IReadOnlyList<TuneKey> keys, Vector<double> values, TestErrors errors, IEnumerable<SieveReading>? sieves = null)
        => new(TunedMill.Of(sheet, wheat, keys, values), keys, errors, sieves ?? []);

    /// <summary>Yield of products together, per cent of the wheat, both as they flow; their moisture is taken as it is.</summary>
    public Figure Yield(IReadOnlyList<string> products)
    {
        var value = 0.0;
        var gradient = Vector<double>.Build.Dense(keys.Count);
        var error = 0.0;
        foreach (var code in products)
        {
            var (solved, k) = (Solution.Product(code), Product(code));
            value += solved.YieldPercent;
            error += Math.Pow(errors.ModelYieldShare * solved.YieldPercent, 2);
            if (solved.Flow.DryTonnesPerHour > 0)
            {
                gradient += Gradient(k, null) * (solved.YieldPercent / solved.Flow.DryTonnesPerHour);
            }
        }

        return new Figure(FigureKind.Flow, value, gradient, Math.Sqrt(error));
    }

    /// <summary>Ash of products together, per cent of dry matter.</summary>
    public Figure Ash(IReadOnlyList<string> products) => Content(products, TuneKind.Ash, a => a.AshPercentDry, errors.ModelAshShare);

    /// <summary>Protein of products together, per cent of dry matter.</summary>
    public Figure Protein(IReadOnlyList<string> products) => Content(products, TuneKind.Protein, a => a.ProteinPercentDry, errors.ModelProteinShare);

    /// <summary>Release of a passage, per cent of its feed; null where it has none.</summary>
    public Figure? Release(string passage)
    {
        var p = Index(passage);
        if (Solution.Passage(passage).ReleasePercent is not { } release)
        {
            return null;
        }

        var load = run.State.Load[p];
        var over = (100 - release) / 100;
        return new Figure(FigureKind.Release, release, (Gradient(FirstPassage + p, null) * over - Gradient(FirstScalp + p, null)) * (100 / load), errors.ModelReleasePoints);
    }

    /// <summary>What enters a passage, t/h of dry matter.</summary>
    public Figure Load(string passage)
    {
        var p = Index(passage);
        return new Figure(FigureKind.Flow, run.State.Load[p], Gradient(FirstPassage + p, null), errors.ModelYieldShare * run.State.Load[p]);
    }

    /// <summary>What of the stock behind the rolls of a passage falls through a test sieve, per cent.</summary>
    public Figure Through(string passage, double aperture)
    {
        var (p, at) = (Index(passage), FirstSieve + Array.IndexOf(Sieves, (passage, aperture)));
        var (load, through) = (run.State.Load[p], Counted(probes[at]));
        return new Figure(FigureKind.Release, 100 * through / load, (Gradient(at, null) - (Gradient(FirstPassage + p, null) * (through / load))) * (100 / load), errors.ModelReleasePoints);
    }

    /// <summary>Ash or protein of the whole wheat, per cent of dry matter.</summary>
    public Figure WholeWheat(TuneKind kind)
    {
        var gradient = Vector<double>.Build.Dense(keys.Count, i => keys[i].Kind == kind && TunedMill.PartOf(keys[i]) is { } part ? run.Model.Wheat.Parts[(int)part].Share * Of(run.Model.Wheat.Parts[(int)part]) : 0);
        return new Figure(Kind(kind), kind is TuneKind.Ash ? run.Model.Wheat.AshPercentDry : run.Model.Wheat.ProteinPercentDry, gradient, 0);

        double Of(PartAssay assay) => kind is TuneKind.Ash ? assay.AshPercentDry : assay.ProteinPercentDry;
    }

    private Figure Content(IReadOnlyList<string> products, TuneKind kind, Func<PartAssay, double> of, double modelShare)
    {
        var parts = run.Model.Wheat.Parts;
        var (dry, amount) = (0.0, 0.0);
        var (dryBy, amountBy) = (Vector<double>.Build.Dense(keys.Count), Vector<double>.Build.Dense(keys.Count));
        foreach (var code in products)
        {
            var (flow, k) = (Solution.Product(code).Flow, Product(code));
            dry += flow.DryTonnesPerHour;
            amount += flow.Parts.Zip(parts, (mass, assay) => mass * of(assay)).Sum();
            dryBy += Gradient(k, null);
            amountBy += Gradient(k, of) + Vector<double>.Build.Dense(keys.Count, i => keys[i].Kind == kind && TunedMill.PartOf(keys[i]) is { } part ? flow.Parts[(int)part] * of(parts[(int)part]) : 0);
        }

        var content = amount / dry;
        return new Figure(Kind(kind), content, (amountBy - (dryBy * content)) / dry, modelShare * content);
    }

    // Change of a probe's dry matter, or of what its dry matter holds where each part counts by its content.
    private Vector<double> Gradient(int probe, Func<PartAssay, double>? of)
    {
        var weights = run.Model.Wheat.Parts.Select(a => of?.Invoke(a) ?? 1).ToArray();
        return Vector<double>.Build.Dense(keys.Count, i =>
        {
            var sum = 0.0;
            for (var part = 0; part < MillWheat.PartCount && column[i] >= 0; part++)
            {
                sum += weights[part] * response[probe, part, column[i]];
            }

            return sum;
        });
    }

    private double Counted(Probe probe)
    {
        var (sum, width, n) = (0.0, run.Model.Width, run.Model.Classes.Count);
        foreach (var (outlet, weight) in probe.Outlets)
        {
            for (var k = 0; k < width; k++)
            {
                sum += weight * (probe.Sizes?[k % n] ?? 1) * run.State.Out[(outlet * width) + k];
            }
        }

        return sum;
    }

    // All of a passage's outlets together are the stock behind its rolls; within a class it is taken even in the logarithm of size.
    private Probe Sieve(int passage, double aperture)
    {
        var (ways, classes) = (run.Model.Ways, run.Model.Classes);
        double Finer(int i) => aperture >= classes.Upper(i) ? 1 : i == 0 ? aperture / classes.Upper(0) : aperture <= classes.Lower(i) ? 0 : Math.Log(aperture / classes.Lower(i)) / Math.Log(classes.Ratio);
        return new Probe([.. Enumerable.Range(ways.FirstOutlet[passage], ways.FirstOutlet[passage + 1] - ways.FirstOutlet[passage]).Select(o => (o, 1.0))], [.. Enumerable.Range(0, classes.Count).Select(Finer)]);
    }

    private static FigureKind Kind(TuneKind kind) => kind is TuneKind.Ash ? FigureKind.Ash : FigureKind.Protein;

    private int Index(string passage) => Array.FindIndex(run.Model.Ways.Passages, p => p.Code == passage);

    private int Product(string code) => Array.FindIndex(run.Model.Ways.Products, p => p.Code == code);

    private static int Add(List<Knob> knobs, Knob knob)
    {
        knobs.Add(knob);
        return knobs.Count - 1;
    }
}
