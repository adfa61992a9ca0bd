using System.Diagnostics;
using System.Globalization;
using Evengrist.Demo;
using Evengrist.Milling.Draws;
using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Milling.Response;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Solving;
using Evengrist.Milling.Stock;
using Evengrist.Planning.Milling;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Bench.Milling;

/// <summary>A mill of 45 passages solved warm and from empty, all its sensitivities, a tuning, beside the same linear network handed to a general-purpose library's direct solver.</summary>
internal static class MillBench
{
    private static readonly string[] Twice = ["B2", "B3C", "B3F", "B4C", "B5", "S1", "M1", "M1F", "M2", "M3", "M4", "P1", "P2", "P4"];

    public static int Run()
    {
        var sheet = Twice.Aggregate(HouseFlowSheets.Of('A'), Doubled);
        var wheat = new MillWheat(17.5 * 0.84, 16, [new KernelClass(1, 2.9, 65)], KernelMake.Of(1.7, 14.4, 380));
        var run = new MillRun(MillModel.Of(sheet, wheat));
        var report = run.Solve();
        Console.WriteLine($"Processors {Environment.ProcessorCount}; load {(File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Trim() : "unknown")}; {sheet.Passages.Count} passages, {run.Model.Classes.Count} sizes, {MillWheat.PartCount} parts; {report.Exit} in {report.Sweeps} sweeps, closes to {report.Closure.ToString("0.0e0", CultureInfo.InvariantCulture)}\n");
        Console.WriteLine("| what | median ms | least ms |\n|---|---:|---:|");
        var turned = Array.FindIndex(run.Model.Ways.Passages, p => p.Code == "B2");
        Row("solve from the stock of the time before, one gap turned by 1 %", Times(400, i => { run.Knobs.Nip[turned] = 1 + (0.01 * (i % 2)); run.Solve(); }));
        run.Knobs.Nip[turned] = 1;
        var empty = Times(200, _ => new MillRun(run.Model).Solve());
        Row("solve from empty", empty);
        run.Solve();
        var allocated = GC.GetAllocatedBytesForCurrentThread();
        run.Solve();
        allocated = GC.GetAllocatedBytesForCurrentThread() - allocated;
        Knob[] knobs = [.. Knobs(run)];
        Probe[] probes = [.. Enumerable.Range(0, run.Model.Ways.Products.Length).Select(k => Probe.OfProduct(run, k))];
        Row($"{knobs.Length} sensitivities (gaps, cloths, air, shares, feed) of {probes.Length} products by part", Times(200, _ => MillResponse.Of(run, probes, knobs)));
        Draws(new DrawsSpec(sheet, wheat, MillTuning.None(sheet)), "one setting");
        Draws(new DrawsSpec(sheet, wheat, MillTuning.None(sheet)) { Try = new SheetChange { GapMicrometres = new Dictionary<string, double> { ["B2"] = 200 } } }, "a setting and a change of it");
        var peer = Peer(run);
        Row("the linear network at held loads, MathNet.Numerics dense LU, part by part", peer);
        var flops = Flops(run) * report.Sweeps;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\nfrom empty: about {flops / 1e6:0.0} million floating-point operations, {flops / empty.Least / 1e6:0.00} thousand million a second; {peer.Least / empty.Least:0} times the speed of the direct solver, which leaves loads out. One solve allocates {allocated} bytes (its report)."));
        return 0;
    }

    // A passage and a second beside it, each with half the rolls and cloth: the left and right side of a mill.
    private static FlowSheet Doubled(FlowSheet sheet, string code)
    {
        Spout[] Halved(IReadOnlyList<Spout> to) => [.. to.SelectMany(s => s.To == code ? [s with { Share = s.Share / 2 }, new Spout(code + "R", s.Share / 2)] : new[] { s })];
        Passage Led(Passage p) => p with { Lifted = Halved(p.Lifted), Cloths = [.. p.Cloths.Select(c => c with { To = Halved(c.To) })], Rest = Halved(p.Rest) };
        Passage Half(Passage p, string name) => p with { Code = name, ClothSquareMetres = p.ClothSquareMetres / 2, Rolls = p.Rolls is { } r ? r with { LengthMillimetres = r.LengthMillimetres / 2 } : null };
        return sheet with { Passages = [.. sheet.Passages.SelectMany(p => p.Code == code ? [Led(Half(p, code)), Led(Half(p, code + "R"))] : new[] { Led(p) })] };
    }

    private static IEnumerable<Knob> Knobs(MillRun run)
    {
        var ways = run.Model.Ways;
        for (var p = 0; p < ways.Passages.Length; p++)
        {
            if (ways.Passages[p].Rolls is not null)
            {
                yield return new Knob(KnobKind.Nip, p);
            }

            if (ways.Passages[p].AirMetresPerSecond is not null)
            {
                yield return new Knob(KnobKind.Air, p);
            }

            var lifted = ways.Passages[p].Lifted.Count > 0 ? 1 : 0;
            for (var cloth = 0; cloth < ways.Passages[p].Cloths.Count; cloth++)
            {
                yield return new Knob(KnobKind.Cut, ways.FirstOutlet[p] + lifted + cloth);
            }
        }

        for (var way = 0; way < ways.Ways.Length; way++)
        {
            if (run.Knobs.Shares[way] < 1)
            {
                yield return new Knob(KnobKind.Share, way);
            }
        }

        yield return new Knob(KnobKind.Feed, 0);
    }

    // (I − S) x = F of each part, S by sending one unit of every size through every passage.
    private static (double Median, double Least) Peer(MillRun run)
    {
        var (model, ways, n) = (run.Model, run.Model.Ways, run.Model.Classes.Count);
        var size = ways.Passages.Length * n;
        var systems = Enumerable.Range(0, MillWheat.PartCount).Select(_ => Matrix<double>.Build.DenseIdentity(size)).ToArray();
        var scratch = model.State();
        for (var p = 0; p < ways.Passages.Length; p++)
        {
            for (var i = 0; i < n; i++)
            {
                Array.Clear(scratch.In);
                for (var part = 0; part < MillWheat.PartCount; part++)
                {
                    scratch.In[(p * model.Width) + (part * n) + i] = 1;
                }

                PassageStep.Run(model, p, run.State.Load[p], run.Knobs, scratch, []);
                foreach (var (way, at) in ways.Ways.Select((w, k) => (w, k)).Where(x => x.w.From == p && x.w.To >= 0))
                {
                    for (var part = 0; part < MillWheat.PartCount; part++)
                    {
                        for (var k = 0; k < n; k++)
                        {
                            systems[part][(way.To * n) + k, (p * n) + i] -= run.Knobs.Shares[at] * scratch.Out[(way.Outlet * model.Width) + (part * n) + k];
                        }
                    }
                }
            }
        }

        var feed = Vector<double>.Build.Dense(size, 1);
        return Times(3, _ =>
        {
            foreach (var system in systems)
            {
                system.LU().Solve(feed);
            }
        });
    }

    // Multiplications and additions of one sweep: breakage rows, points of cloths, outlets, ways.
    private static double Flops(MillRun run)
    {
        var (ways, n) = (run.Model.Ways, run.Model.Classes.Count);
        var width = run.Model.Width;
        return ways.Passages.Select((p, i) =>
        {
            var machine = run.Model.Machines[i];
            return (machine.Steps * ((MillWheat.PartCount * n * (n + 1)) + (2 * width))) + (4 * width) + (p.Cloths.Count * ((6 * n * 6) + (4 * width))) + (2.0 * width * ways.Into[i].Length);
        }).Sum();
    }

    private static (double Median, double Least) Times(int times, Action<int> what)
    {
        for (var i = 0; i < Math.Min(times, 30); i++)
        {
            what(i);
        }

        var took = new double[times];
        for (var i = 0; i < times; i++)
        {
            var start = Stopwatch.GetTimestamp();
            what(i);
            took[i] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        Array.Sort(took);
        return (took[times / 2], took[0]);
    }

    private static void Draws(DrawsSpec spec, string what)
    {
        for (var cores = 1; cores <= Math.Min(2, Environment.ProcessorCount); cores++)
        {
            var (began, used) = (Stopwatch.GetTimestamp(), Environment.CpuUsage.TotalTime);
            var drawn = (MillsDrawn)DrawRun.Draw(spec, cores);
            Row($"{spec.Draws} mills drawn from what is thought before data, {what}, on {cores} core{(cores > 1 ? "s" : "")}; {drawn.Draws.Unsolved} unsolved, {(Environment.CpuUsage.TotalTime - used).TotalMilliseconds:0} ms of processor", (Stopwatch.GetElapsedTime(began).TotalMilliseconds, null));
        }
    }

    // Others may have the processor meanwhile: the least of many is what the work takes by itself. What is done once has none.
    private static void Row(string what, (double Median, double? Least) milliseconds) => Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {what} | {milliseconds.Median:0.000} | {milliseconds.Least:0.000} |"));
}
