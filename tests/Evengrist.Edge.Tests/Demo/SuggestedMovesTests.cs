using Evengrist.Demo;
using Evengrist.Milling.Learning;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Solving;
using Evengrist.Milling.Stock;
using Evengrist.Milling.Suggesting;
using Evengrist.Planning.Milling;

namespace Evengrist.Edge.Tests.Demo;

/// <summary>Moves suggested to Unit A of the demonstration after three of its tests, made in the mill as it truly mills, which the model never sees.</summary>
public sealed class SuggestedMovesTests
{
    private static readonly string[] Patent = ["1M", "2M", "1MF", "SZ1", "3M", "2B", "SZ2", "1B", "4M", "5M", "3B"];

    [Fact]
    public void Moves_MadeInTheHiddenMill_MoveItAsSaid_InMostMills()
    {
        var (sheet, wheat) = (HouseFlowSheets.Of('A'), Wheat(14.4, 16, 1.70));
        var (sets, held, got) = (0, 0, 0);
        foreach (var seed in new ulong[] { 1, 2, 3, 4, 5, 6 })
        {
            var mill = new HiddenMill(sheet, seed);
            var tuned = Assert.IsType<MillTuned>(MillFit.Of(
            [
                mill.Test("first", sheet, wheat, "B1", "B2", "B3C"), mill.Test("second", Gap(Gap(sheet, "B2", 1.15), "M1", 0.85), Wheat(14.0, 16.2, 1.68), "B2"),
                mill.Test("third", Gap(Gap(sheet, "B3C", 0.85), "M2", 1.2), Wheat(14.6, 15.8, 1.72), "B3C"),
            ])).Tuning;
            var spec = new SuggestSpec(sheet, wheat, tuned, new Wish(new WishFigure(WishKind.Yield, Patent), true, 0.3)) { Keep = [new KeptFigure(new WishFigure(WishKind.Ash, Patent)) { MostChange = 0 }], Sure = 0.8 };
            var found = Assert.IsType<Suggested>(SuggestSolver.Solve(spec));
            Assert.True(found.Met, found.Words);
            foreach (var set in found.Sets)
            {
                var (before, after) = (mill.Truth(sheet, wheat), mill.Truth(Move.Change([.. set.Moves.Select(m => m.Move)]).Apply(sheet), wheat));
                var (yield, ash) = (Yield(after) - Yield(before), Ash(after) - Ash(before));
                sets++;
                held += Math.Abs(yield - set.Wish.Change) <= 2 * set.Wish.Uncertainty && Math.Abs(ash - set.Keeps[0].Change) <= (2 * set.Keeps[0].Uncertainty) + 0.0005 ? 1 : 0;
                got += yield >= 0.3 && ash <= 0.0005 ? 1 : 0;
            }
        }

        Assert.True(held >= 0.9 * sets && got >= 0.8 * sets, $"{held} held and {got} got it of {sets}");
    }

    private static double Yield(MillSolution solved) => Patent.Sum(p => solved.Product(p).YieldPercent);

    private static double Ash(MillSolution solved) => Patent.Sum(p => solved.Product(p).Flow.DryTonnesPerHour * solved.Product(p).Flow.AshPercentDry) / Patent.Sum(p => solved.Product(p).Flow.DryTonnesPerHour);

    private static MillWheat Wheat(double protein, double moisture, double ash) => new(17.5 * 0.84, moisture, [new KernelClass(1, 2.9, 65)], KernelMake.Of(ash, protein, 380));

    private static FlowSheet Gap(FlowSheet sheet, string code, double factor) => sheet with { Passages = [.. sheet.Passages.Select(p => p.Code == code ? p with { Rolls = p.Rolls! with { GapMicrometres = p.Rolls.GapMicrometres * factor } } : p)] };
}
