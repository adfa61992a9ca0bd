using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Milling.Response;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Solving;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Draws;

/// <summary>One setting made ready for draws: the mill with all factors at 1, its middle solution to begin from, and how its figures are read into a row.</summary>
/// <remarks>A row: of each product, each set and all flour, yield, ash and protein; then of each passage, load and release. The moisture of a stream is taken as it is in the middle.</remarks>
internal sealed class DrawnMill
{
    private readonly int[][] sets;
    private readonly double[] yieldOfTonne;
    private readonly int[] passages;

    public DrawnMill(FlowSheet sheet, MillWheat wheat, MillTuning tuning, IReadOnlyList<ProductSet> together)
    {
        Model = MillModel.Of(sheet, wheat);
        Knobs = [.. tuning.Keys.Select(k => TunedMill.KnobOf(Model, k))];
        Assays = [.. tuning.Keys.Select(k => (TunedMill.PartOf(k), k.Kind is TuneKind.Ash))];
        var figures = MillForecast.Figures(sheet, wheat, tuning);
        Report = figures.Solution.Report;
        Names = [.. sheet.Products.Select(p => p.Code), .. together.Select(s => s.Name), "flour"];
        IReadOnlyList<string>[] codes = [.. sheet.Products.Select(p => (IReadOnlyList<string>)[p.Code]), .. together.Select(s => s.Products), MillForecast.FlourOf(sheet)];
        sets = [.. codes.Select(c => c.Select(code => sheet.Products.Select(p => p.Code).ToList().IndexOf(code)).ToArray())];
        yieldOfTonne = [.. figures.Solution.Products.Select(p => p.Flow.DryTonnesPerHour > 0 ? p.YieldPercent / p.Flow.DryTonnesPerHour : 0)];
        passages = [.. sheet.Passages.Select(p => Array.FindIndex(Model.Ways.Passages, x => x.Code == p.Code))];
        Figures = [.. codes.SelectMany(c => new[] { figures.Yield(c), figures.Ash(c), figures.Protein(c) }), .. sheet.Passages.SelectMany(p => new[] { figures.Load(p.Code), figures.Release(p.Code) })];
        Middle = new MillRun(Model);
        Set(Middle, [.. tuning.Values]);
        Middle.Solve();
    }

    public MillModel Model { get; }

    public MillReport Report { get; }

    /// <summary>The mill at what is thought most likely, solved; only read.</summary>
    public MillRun Middle { get; }

    /// <summary>Names of products, sets and all flour.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>By place in a row: the figure at the middle; null where there is none.</summary>
    public IReadOnlyList<Figure?> Figures { get; }

    private Knob?[] Knobs { get; }

    private (KernelPart? Part, bool IsAsh)[] Assays { get; }

    /// <summary>Turns the knobs of a mill to what was drawn.</summary>
    public void Set(MillRun run, ReadOnlySpan<double> values)
    {
        run.Knobs.Level();
        for (var i = 0; i < values.Length; i++)
        {
            if (Knobs[i] is { } knob)
            {
                KnobPush.Turn(run.Knobs, knob, values[i]);
            }
        }
    }

    /// <summary>Reads a solved mill into a row.</summary>
    public void Read(MillRun run, ReadOnlySpan<double> values, Span<double> row)
    {
        Span<double> ash = stackalloc double[MillWheat.PartCount];
        Span<double> protein = stackalloc double[MillWheat.PartCount];
        for (var part = 0; part < MillWheat.PartCount; part++)
        {
            (ash[part], protein[part]) = (Model.Wheat.Parts[part].AshPercentDry, Model.Wheat.Parts[part].ProteinPercentDry);
        }

        for (var i = 0; i < values.Length; i++)
        {
            if (Assays[i].Part is { } part)
            {
                (Assays[i].IsAsh ? ash : protein)[(int)part] *= Math.Exp(values[i]);
            }
        }

        Span<double> dry = stackalloc double[Model.Ways.Products.Length * MillWheat.PartCount];
        Products(run, dry);
        var at = 0;
        foreach (var set in sets)
        {
            var (yield, all, ashes, proteins) = (0.0, 0.0, 0.0, 0.0);
            foreach (var product in set)
            {
                var parts = dry.Slice(product * MillWheat.PartCount, MillWheat.PartCount);
                var sum = Lanes.Sum(parts);
                (yield, all, ashes, proteins) = (yield + (sum * yieldOfTonne[product]), all + sum, ashes + Lanes.Dot(parts, ash), proteins + Lanes.Dot(parts, protein));
            }

            (row[at++], row[at++], row[at++]) = (yield, ashes / all, proteins / all);
        }

        foreach (var p in passages)
        {
            row[at++] = run.State.Load[p];
            row[at++] = Model.Ways.Passages[p].ScalpOutlet is { } scalp ? 100 * (1 - (Lanes.Sum(run.State.Out.AsSpan((Model.Ways.FirstOutlet[p] + scalp) * Model.Width, Model.Width)) / run.State.Load[p])) : double.NaN;
        }
    }

    private void Products(MillRun run, Span<double> dry)
    {
        dry.Clear();
        var (ways, n) = (Model.Ways, Model.Classes.Count);
        for (var product = 0; product < ways.Products.Length; product++)
        {
            foreach (var way in ways.IntoProduct[product])
            {
                for (var part = 0; part < MillWheat.PartCount; part++)
                {
                    dry[(product * MillWheat.PartCount) + part] += run.Knobs.Shares[way] * Lanes.Sum(run.State.Out.AsSpan((ways.Ways[way].Outlet * Model.Width) + (part * n), n));
                }
            }
        }
    }
}
