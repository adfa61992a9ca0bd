using Evengrist.Milling.Reconciling;
using Evengrist.Numerics.Reconciling;
using Evengrist.Tests.Numerics.Reconciling;

namespace Evengrist.Tests.Milling.Reconciling;

public sealed class FlowNetTests
{
    /// <summary>A mill's dry flows and ash, made up by us: the same as in the tests of the reconciler, posed as streams and a place.</summary>
    [Fact]
    public void Reconcile_OfAMill_IsWhatTheReconcilerSays()
    {
        var answer = Assert.IsType<NoGrossError>(Mill().Reconcile()).Adjusted;
        var same = ReconcileModelTests.Of(Networks.Mill);
        Assert.Equal((1.1777, 2), (Math.Round(answer.Squares, 4), answer.Freedom));
        Assert.All(new[] { "wheat", "flour", "bran", "shorts", "germ" }, name =>
        {
            Assert.Equal(same[name].Value, answer[name].Value, 1e-6);
            Assert.Equal(same[$"{name} x1"].Value / 100, answer[$"ash of {name}"].Value, 1e-8);
        });
    }

    /// <summary>By hand: two streams not weighed, told apart by their ash: 10 t/h of 0.6 % from 0.4 and 1.2 % are 7.5 and 2.5 t/h.</summary>
    [Fact]
    public void Reconcile_StreamsNotWeighed_FindsThemFromTheirAsh()
    {
        var net = new FlowNet([Stream("straight", 10, 0.1, 0.6, 0.01), Stream("patent", null, null, 0.4, 0.01), Stream("clear", null, null, 1.2, 0.01)], [new("sum", ["patent", "clear"], ["straight"])]);
        var found = Assert.IsType<NothingToAdjust>(Assert.IsType<GrossErrorNotSought>(net.Reconcile()).Why);
        Assert.Equal((7.5, 2.5), (Math.Round(found["patent"].Value, 6), Math.Round(found["clear"].Value, 6)));
        Assert.Equal(Standing.Observable, found["clear"].Standing);
        // u of 10·(1.2 − 0.6)/0.8, by hand: slopes 0.75 of the straight, 12.5, 9.375 and 3.125 t/h per point.
        Assert.Equal(Math.Sqrt(Math.Pow(0.75 * 0.1, 2) + (0.0001 * ((12.5 * 12.5) + (9.375 * 9.375) + (3.125 * 3.125)))), found["patent"].StandardUncertainty!.Value, 1e-4);
    }

    [Fact]
    public void Reconcile_AStreamWithoutItsAsh_LeavesAshOutThere()
    {
        var mill = Mill();
        var net = mill with { Flows = [.. mill.Flows.Select(f => f.Name == "germ" ? new NetFlow("germ") { Amount = f.Amount, Uncertainty = f.Uncertainty } : f)] };
        Assert.Equal(1, Assert.IsType<Balanced>(net.Reconcile().First, exactMatch: false).Freedom);
    }

    [Fact]
    public void Reconcile_AWrongWeigher_IsNamed()
    {
        var flows = new[] { ("wheat", 100.0), ("1B", 30.0), ("2B", 70.0), ("flour", 25.0), ("rest", 75.0), ("check", 100.0) };
        var net = new FlowNet([.. flows.Select(f => new NetFlow(f.Item1) { Amount = f.Item2 + (f.Item1 == "2B" ? 6 : 0), Uncertainty = 0.5 })], [new("break", ["wheat"], ["1B", "2B"]), new("rolls", ["1B", "2B"], ["flour", "rest"]), new("weigher", ["wheat"], ["check"])]);
        var suspect = Assert.IsType<GrossErrorsNamed>(net.Reconcile()).Suspects[0];
        Assert.Equal(["1B", "2B"], suspect.Alike.Append(suspect.Name).Order()); // They are seen as their sum only.
        Assert.Equal(6, suspect.Bias!.Value, 1e-6);
    }

    [Fact]
    public void Faults_OfANetThatCannotBe_NameEach()
    {
        var net = new FlowNet([new("a") { Amount = -1, Uncertainty = 1 }, new("a"), new(" "), Stream("b", 1, 1, 140, 1), new("c") { Amount = 1 }], [new("n", ["a"], []), new("m", ["a", "a"], ["z"])]);
        var faults = Assert.IsType<ReconcileRefused>(Assert.IsType<GrossErrorNotSought>(net.Reconcile()).Why).Faults;
        Assert.Equal(8, faults.Count);
        Assert.Contains("m: there is no stream z.", faults);
        Assert.Single(new FlowNet([], []).Faults());
    }

    private static FlowNet Mill() => new(
        [Stream("wheat", 9.95, 0.05, 1.72, 0.03), Stream("flour", 7.62, 0.08, 0.56, 0.01), Stream("bran", 1.30, 0.03, 6.40, 0.10), Stream("shorts", 0.98, 0.03, 3.90, 0.08), Stream("germ", 0.07, 0.005, 4.60, 0.10)],
        [new("mill", ["wheat"], ["flour", "bran", "shorts", "germ"])]);

    private static NetFlow Stream(string name, double? amount, double? u, double ash, double ashU) =>
        new(name) { Amount = amount, Uncertainty = u, Shares = new Dictionary<string, NetShare> { ["ash"] = new() { Percent = ash, Uncertainty = ashU } } };
}
