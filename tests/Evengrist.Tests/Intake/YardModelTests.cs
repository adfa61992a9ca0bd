using CsCheck;
using Evengrist.Intake;

namespace Evengrist.Tests.Intake;

public sealed class YardModelTests
{
    private static readonly Gen<(double Arrives, double Service)[]> Trucks = Gen.Select(Gen.Double[0, 200], Gen.Double[0, 30]).Array[0, 40];

    // By hand from Lindley's recursion, written out in docs/model/yard.md.
    [Fact]
    public void Waits_TheWorkedCase_FollowLindley()
    {
        var (waits, clear) = YardModel.Waits([(0, 5), (3, 4), (4, 2), (10, 6), (11, 3)], [0]);
        Assert.Equal([0d, 2, 5, 1, 6], waits.Select(w => w.Wait));
        Assert.Equal(20, clear);
    }

    // W(n+1) = max(0, W(n) + S(n) − A(n+1)), Lindley 1952 (from memory), coded apart from the model.
    [Fact]
    public void Waits_OneLane_AreLindleysForEveryQueue() => Trucks.Sample(trucks =>
    {
        var inOrder = trucks.OrderBy(t => t.Arrives).ThenBy(t => t.Service).ToArray();
        var wait = 0d;
        var waits = YardModel.Waits(trucks, [0]).Waits;
        for (var n = 0; n < inOrder.Length; n++)
        {
            wait = n == 0 ? 0 : Math.Max(0, wait + inOrder[n - 1].Service - (inOrder[n].Arrives - inOrder[n - 1].Arrives));
            Assert.Equal(wait, waits[n].Wait, 1e-9);
        }
    });

    // Pollaczek and Khinchine for even services: mean wait = λS²/(2(1 − λS)) (from memory); at λ = 0.07/min and S = 10 min that is 11.67 min.
    [Fact]
    public void Waits_ManyRandomTrucks_HaveTheMeanOfTheFormula()
    {
        var random = new Random(7);
        var (at, trucks) = (0d, new List<(double, double)>());
        for (var n = 0; n < 400_000; n++)
        {
            at += -Math.Log(1 - random.NextDouble()) / 0.07;
            trucks.Add((at, 10));
        }

        Assert.Equal(0.07 * 100 / (2 * 0.3), YardModel.Waits(trucks, [0]).Waits.Average(w => w.Wait), 0.35);
    }

    [Fact]
    public void Waits_OrderOfTheList_DoesNotMatter() => Trucks.Sample(trucks =>
        Assert.Equal(YardModel.Waits(trucks, [0, 0]).Waits.Sum(w => w.Wait), YardModel.Waits([.. trucks.Reverse()], [0, 0]).Waits.Sum(w => w.Wait), 1e-6));

    [Fact]
    public void Waits_ALaneMore_IsNeverLongerForAnyTruck() => Gen.Select(Trucks, Gen.Int[1, 4]).Sample((trucks, lanes) =>
    {
        var (few, more) = (YardModel.Waits(trucks, new double[lanes]).Waits, YardModel.Waits(trucks, new double[lanes + 1]).Waits);
        Assert.All(few.Zip(more), pair => Assert.True(pair.Second.Wait <= pair.First.Wait + 1e-9));
    });

    [Fact]
    public void Waits_TheWork_IsDoneWhenAllLanesAreFree() => Trucks.Sample(trucks =>
        Assert.True(YardModel.Waits(trucks, [0]).Clear >= trucks.Sum(t => t.Service) - 1e-9));

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void Forecast_TrucksNoFasterThanTheLanes_WaitForNothing(int lanes)
    {
        var forecast = Assert.IsType<YardForecast>(YardModel.Forecast(new YardSpec(lanes, 12, 0, [], [.. Enumerable.Range(0, 20).Select(n => n * 12.0 / lanes)])));
        Assert.All(forecast.Waits, w => Assert.Equal(0, w.Minutes, 1e-9));
        Assert.Equal(60.0 * lanes / 12, forecast.TrucksPerHour);
    }

    // By hand: the truck served for 4 of 10 min holds the lane for 6 more; the next waited 2 min already and waits 6 more, and so on.
    [Fact]
    public void Forecast_ATruckUnderWayAndTwoWaiting_CountsWhatIsLeft()
    {
        var forecast = Assert.IsType<YardForecast>(YardModel.Forecast(new YardSpec(1, 10, 2, [4], [-2, -1])));
        Assert.Equal([8d, 17], forecast.Waits.Select(w => w.Minutes));
        Assert.Equal([2d, 4], forecast.Waits.Select(w => w.StandardUncertainty));
        Assert.Equal((26d, 17d), (forecast.ClearAfterMinutes, forecast.Longest!.Minutes));
    }

    [Fact]
    public void Forecast_LongerServices_WaitNoLess() => Gen.Select(Gen.Double[1, 30], Gen.Double[0, 10], Gen.Double[-30, 120].Array[0, 30]).Sample((service, more, arrivals) =>
    {
        var (short_, long_) = (Forecast(service, arrivals), Forecast(service + more, arrivals));
        Assert.All(short_.Waits.Zip(long_.Waits), pair => Assert.True(pair.Second.Minutes >= pair.First.Minutes - 1e-9));
    });

    [Fact]
    public void Forecast_WhatCannotBe_SaysWhyNot()
    {
        var none = Assert.IsType<NoYardForecast>(YardModel.Forecast(new YardSpec(0, 0, -1, [-1], [double.NaN])));
        Assert.Equal(5, none.Reasons.Count);
        Assert.Throws<ArgumentException>(() => YardModel.Waits([], []));
    }

    private static YardForecast Forecast(double service, double[] arrivals) => Assert.IsType<YardForecast>(YardModel.Forecast(new YardSpec(2, service, 0, [], arrivals)));
}
