using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Planning.Milling;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>The mill on paper: solved, tried otherwise, tuned.</summary>
internal static class MillSolveVerbs
{
    public static Command Solve(Voice voice) => PosedVerb.Of<MillSolveCase, MillSolveAnswer>(
        new Command("solve", "Every passage and stream of a posed mill ±, tuned to its tests where there are some, and what settings tried on paper would change. Sets no machine, needs no records."), voice,
        MillSolveCase.Help, MillSolveCase.Read, posed => MillSolveAnswer.To(posed, spec => DrawRun.Draw(spec, null, new Counting(voice, spec.Draws, "mills drawn"))), answer => Say(answer, voice));

    public static Command Fit(Voice voice) => PosedVerb.Of<MillSolveCase, MillFitAnswer>(
        new Command("fit", "What the posed tests of a mill say of it: factors on the model ±, and every measured figure beside the model's. Needs no records."), voice,
        MillSolveCase.Help, MillSolveCase.Read, MillFitAnswer.To, answer => Say(answer, voice));

    private static void Say(MillSolveAnswer answer, Voice voice)
    {
        voice.Say($"{answer.Exit} in {answer.Sweeps} sweeps, closes to {answer.Closure:0.0e0} of the wheat; {answer.Tuned}. Every ± is k = 2.");
        var passages = new TextTable("passage", "t/h dry", "±", "release %", "±", "ash", "moisture", "rolls kW");
        foreach (var p in answer.Passages)
        {
            passages.Add(p.Code, Number(p.DryTonnesPerHour.Value, 3), Number(p.DryTonnesPerHour.Half, 3), Number(p.ReleasePercent?.Value, 1), Number(p.ReleasePercent?.Half, 1), Number(p.AshPercent, 3), Number(p.MoisturePercent, 1), p.RollKilowatts > 0 ? Number(p.RollKilowatts, 0) : "");
        }

        passages.To(voice);
        voice.Say($"yield in % of the wheat to first break, ash and protein in % on {answer.Basis}");
        var products = new TextTable("product", "yield", "±", "ash", "±", "protein", "±", "moisture");
        Rows(products, answer.Products);
        products.To(voice);
        if (answer.Change is { } change)
        {
            voice.Say("on paper, the settings tried would change:");
            var changed = new TextTable("passage", "t/h dry", "±", "release", "±");
            foreach (var p in change.Passages)
            {
                changed.Add(p.Code, Signed(p.DryTonnesPerHour.Value, 3), Number(p.DryTonnesPerHour.Half, 3), p.ReleasePercent is { } r ? Signed(r.Value, 2) : "", Number(p.ReleasePercent?.Half, 2));
            }

            changed.To(voice);
            var by = new TextTable("product", "yield", "±", "ash", "±", "protein", "±");
            foreach (var p in change.Products)
            {
                by.Add(p.Name, Signed(p.YieldPercent.Value, 3), Number(p.YieldPercent.Half, 3), Signed(p.AshPercent.Value, 4), Number(p.AshPercent.Half, 4), Signed(p.ProteinPercent.Value, 3), Number(p.ProteinPercent.Half, 3));
            }

            by.To(voice);
            voice.Say($"work of the rolls {Signed(change.RollKilowatts.Value, 1)} ± {Number(change.RollKilowatts.Half, 1)} kW, {Signed(change.RollKilowattHoursPerTonne.Value, 2)} ± {Number(change.RollKilowattHoursPerTonne.Half, 2)} kWh for a tonne of wheat (no work is measured)" + (change.MoneyPerDay is { } money ? $"; money in 24 h {Signed(money.Value, 0)} ± {Number(money.Half, 0)}" : ""));
        }

        if (answer.Draws is { } draws)
        {
            Say(draws, answer.Products, voice);
        }

        voice.Say(answer.Remarks);
    }

    // Sets and all flour; every single stream stands in the answer in JSON.
    private static void Say(MillDrawsAnswer draws, IReadOnlyList<MillProductAnswer> products, Voice voice)
    {
        voice.Say($"{draws.Samples} mills drawn from what is not known of this one and solved whole, seed {draws.Seed}, in {draws.Seconds:0.0} s; {draws.Unsolved} could not be solved:");
        var table = new TextTable("drawn", "what", "mean", "σ", "5 %", "50 %", "95 %", "first order", "±", "differ");
        foreach (var p in draws.Products.Where((_, i) => products[i].MoisturePercent is null))
        {
            Add(p, p.Name);
        }

        foreach (var p in (draws.Change ?? []).Where((_, i) => products[i].MoisturePercent is null))
        {
            Add(p, $"change of {p.Name}");
        }

        Row("change", "money in 24 h", draws.MoneyPerDay, 0);
        table.To(voice);
        voice.Say(draws.Beside);

        void Add(DrawnProductAnswer p, string name)
        {
            Row(name, "yield", p.YieldPercent, 3);
            Row(name, "ash", p.AshPercent, 4);
            Row(name, "protein", p.ProteinPercent, 3);
        }

        void Row(string name, string what, DrawnAnswer? of, int decimals)
        {
            if (of is not null)
            {
                table.Add(
                    name, what, Number(of.Mean, decimals), Number(of.StandardDeviation, decimals), Number(of.P5, decimals), Number(of.P50, decimals), Number(of.P95, decimals),
                    Number(of.FirstOrder.Value, decimals), Number(of.FirstOrder.Half, decimals), of.Differs ? "yes" : "");
            }
        }
    }

    internal static void Say(MillFitAnswer answer, Voice voice)
    {
        voice.Say($"tuned on {answer.Figures} figures in {answer.Rounds} rounds" + string.Concat(answer.Scatter.Select(s => $"; {s.Key} {Number(s.Value, 1)} times further off than said")) + ". Every ± is k = 2.");
        var factors = new TextTable("what", "where", "factor", "± %", "before %");
        foreach (var f in answer.Factors)
        {
            factors.Add(f.Kind, f.Outlet is { } outlet ? $"{f.Where} outlet {outlet}" : f.Where, Number(f.Factor, 3), Number(f.PlusMinusPercent, 1), Number(f.BeforePercent, 1));
        }

        factors.To(voice);
        var compared = new TextTable("test", "figure", "measured", "model", "in σ");
        foreach (var c in answer.Compared.Take(20))
        {
            compared.Add(c.Test, c.What, Number(c.Measured, 3), Number(c.Modelled, 3), Signed(c.Deviation, 1));
        }

        compared.To(voice);
        voice.Say(answer.CannotTell);
        foreach (var next in answer.Next.Take(3))
        {
            voice.Say($"a release test at {next.Passage} would take the flour's yield from ±{Number(2 * next.Now, 2)} to ±{Number(2 * next.After, 2)} points, the model's shortfall apart");
        }

        voice.Say(answer.Remarks);
    }

    private static void Rows(TextTable table, IReadOnlyList<MillProductAnswer> products)
    {
        foreach (var p in products)
        {
            table.Add(p.Name, Number(p.YieldPercent.Value, 2), Number(p.YieldPercent.Half, 2), Number(p.AshPercent.Value, 3), Number(p.AshPercent.Half, 3), Number(p.ProteinPercent.Value, 2), Number(p.ProteinPercent.Half, 2), Number(p.MoisturePercent, 1));
        }
    }
}
