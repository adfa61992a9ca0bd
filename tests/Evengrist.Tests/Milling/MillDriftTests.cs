using Evengrist.Milling.Drift;
using Evengrist.Milling.Learning;
using MathNet.Numerics.LinearAlgebra;
using NodaTime;

namespace Evengrist.Tests.Milling;

/// <summary>Drift found in histories whose truth is known: sixteen weekly release tests and eight stream surveys of an invented mill with measuring errors.</summary>
public sealed class MillDriftTests
{
    private const int Weeks = 16;
    private static readonly MillTuning None = MillTuning.None(SmallMill.Sheet);
    private static readonly TuneKey[] Keys = [.. None.Keys, .. DriftCandidate.Tears(None.Keys)];

    [Fact]
    public void Tear_OfACloth_MovesEveryFigureAsItsGradientSays()
    {
        MillFigures At(int key, double amount) => MillFigures.Of(SmallMill.Sheet, SmallMill.Wheat, Keys, Vector<double>.Build.Dense(Keys.Length, i => i == key ? amount : 0), TestErrors.Usual);
        Func<MillFigures, Figure>[] asked = [f => f.Yield(["1M-flour", "2M-flour"]), f => f.Ash(["1M-flour"]), f => f.Release("2B")!, f => f.Load("2M")];
        var middle = At(0, 0);
        for (var i = None.Keys.Count; i < Keys.Length; i++)
        {
            var (up, down) = (At(i, 1e-4), At(i, -1e-4));
            Assert.All(asked, ask => Assert.InRange(ask(middle).Gradient[i] - ((ask(up).Value - ask(down).Value) / 2e-4), -0.2, 0.2));
        }

        // All that stays over a cloth torn through and through falls: nothing is left over it.
        Assert.Equal(100, At(Array.IndexOf(Keys, new TuneKey(TuneKind.Tear, "2B")), 1).Release("2B")!.Value, 6);
    }

    [Theory]
    [InlineData(DriftKind.Wear, "2B", 0, -0.35)]
    [InlineData(DriftKind.Wear, "1M", 0, -0.5)]
    [InlineData(DriftKind.Moved, "3B", 0, 0.3)]
    [InlineData(DriftKind.Torn, "1M", 1, 0.2)]
    [InlineData(DriftKind.Torn, "3B", 1, 0.10)]
    [InlineData(DriftKind.Choke, "2B", 0, -0.25)]
    [InlineData(DriftKind.Choke, "1M", 0, -0.2)]
    [InlineData(DriftKind.WetFeed, "1B", 0, 1.5)]
    public void Drift_ThatIsThere_IsFoundWithItsAmountInMostHistories(DriftKind kind, string passage, int outlet, double amount)
    {
        var cause = new DriftCause(kind, passage, outlet);
        var looked = Enumerable.Range(1, 5).Select(seed => Look(cause, amount, seed)).ToArray();
        var found = looked.Select(l => l.Found.FirstOrDefault(f => f.Cause == cause)).OfType<DriftFound>().ToArray();
        Assert.True(found.Length >= 4, $"{found.Length} of 5: " + string.Join("; ", looked.Select(l => string.Join(", ", l.Found.Select(f => $"{f.Cause.Kind} {f.Cause.Passage} {f.Cause.Outlet} {f.Amount.Value:0.00} p{f.Probability:0.00}")))));
        Assert.True(found.Count(f => Math.Abs(f.Amount.Value - amount) < (3 * f.Amount.Uncertainty) + (0.3 * Math.Abs(amount))) >= found.Length - 1, string.Join(", ", found.Select(f => $"{f.Amount}")));
        Assert.All(found, f => Assert.NotEmpty(f.Evidence));
    }

    [Fact]
    public void Nothing_ThatDrifted_IsFoundInNearlyNoHistory()
    {
        var looked = Enumerable.Range(1, 12).Select(seed => Look(null, 0, seed)).ToArray();
        Assert.InRange(looked.Count(l => l.Found.Count > 0), 0, 1);
        Assert.InRange(looked.SelectMany(l => l.Series).SelectMany(s => s.Points).Average(p => p.IsOutside ? 1.0 : 0), 0, 0.01); // 0.3 in 100 lie outside three standard deviations
    }

    [Fact]
    public void Cost_OfATornFlourCloth_IsAtTheAshThatWas()
    {
        var found = Look(new DriftCause(DriftKind.Torn, "1M", 1), 0.2, 1).Found.First(f => f.Cause.Kind is DriftKind.Torn);
        Assert.True(found.Cost.AshPoints > 0);
        Assert.True(found.Cost.FlourPoints.Value < 0); // more flour, but of more ash: at the ash that was it is less
        Assert.Equal(-found.Cost.FlourPoints.Value / 100 * 24 * 8 / 0.84 * 230, found.Cost.MoneyPerDay!.Value, 6);
    }

    [Fact]
    public void TooFewTests_OrAMillNotTuned_SaysWhatToDo()
    {
        var tests = History(null, 0, 1);
        var few = Assert.IsType<DriftNotLooked>(MillDrift.Of([.. tests.Take(3)], MillFit.Of([.. tests.Take(3).Select(t => t.Test)])));
        Assert.Contains("week by week", Assert.Single(few.Reasons), StringComparison.Ordinal);
        var not = Assert.IsType<DriftNotLooked>(MillDrift.Of(tests, new MillNotTuned(["because"])));
        Assert.Equal("because", Assert.Single(not.Reasons));
    }

    private static DriftLooked Look(DriftCause? cause, double amount, int seed)
    {
        var tests = History(cause, amount, seed);
        return Assert.IsType<DriftLooked>(MillDrift.Of(tests, MillFit.Of([.. tests.Select(t => t.Test)]), new DriftPrices(430, 200)));
    }

    private static DatedTest[] History(DriftCause? cause, double amount, int seed)
    {
        var dice = new Random(seed);
        double Error() => MathNet.Numerics.Distributions.Normal.Sample(dice, 0, 1);
        var truth = Vector<double>.Build.Dense(Keys.Length, i => i < None.Keys.Count ? 0.3 * Math.Sqrt(None.Prior[i, i]) * Error() : 0);
        var errors = TestErrors.Usual;
        return [.. Enumerable.Range(0, Weeks).Select(week =>
        {
            var (values, wheat) = (truth.Clone(), SmallMill.Wheat);
            var now = amount * (cause?.Kind is DriftKind.Wear ? (double)week / (Weeks - 1) : week >= 9 ? 1 : 0);
            switch (cause?.Kind)
            {
                case DriftKind.WetFeed: wheat = SmallMill.Of(65, 16 + now); break;
                case DriftKind.Torn: values[Array.IndexOf(Keys, new TuneKey(TuneKind.Tear, cause.Passage, cause.Outlet))] += now; break;
                case DriftKind.Choke:
                    foreach (var cut in Enumerable.Range(0, Keys.Length).Where(k => Keys[k].Kind is TuneKind.Cut && Keys[k].Where == cause.Passage))
                    {
                        values[cut] += now;
                    }

                    break;
                case DriftKind.Wear or DriftKind.Moved: values[Array.IndexOf(Keys, new TuneKey(TuneKind.Nip, cause.Passage))] += now; break;
            }

            var made = TunedMill.Of(SmallMill.Sheet, wheat, Keys, values).Read();
            return new DatedTest(Instant.FromUtc(2025, 9, 1, 6, 0) + Duration.FromDays(7 * week), new MillTest($"week {week}", SmallMill.Sheet, SmallMill.Wheat)
            {
                Releases = [.. new[] { "1B", "2B", "3B", "SZ", "1M", "2M" }.Select(r => new ReleaseReading(r, made.Passage(r).ReleasePercent!.Value + (errors.ReleasePoints * Error())))],
                Streams = week % 2 == 0 ? [] : [.. made.Products.Select(p => new StreamReading(
                    p.Product.Code, Math.Max(0.02, (p.YieldPercent * (1 + (errors.YieldShare * Error()))) + (errors.YieldPoints * Error())), p.Flow.AshPercentDry + (errors.AshPoints * Error()), p.Flow.ProteinPercentDry + (errors.ProteinPoints * Error())))],
            });
        })];
    }
}
