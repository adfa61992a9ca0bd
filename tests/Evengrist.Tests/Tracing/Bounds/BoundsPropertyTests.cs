using Evengrist.Ledger;
using Evengrist.Tests.Ledger;
using Evengrist.Tracing;
using Evengrist.Tracing.Bounds;

namespace Evengrist.Tests.Tracing.Bounds;

/// <summary>Recalls simulated against a hidden truth: whatever leaves a store, the true grams lie within the bounds. The plants are invented.</summary>
public sealed class BoundsPropertyTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void TwoHundredRecalls_TrueGramsLieWithinTheBounds(bool throughToo)
    {
        var (touched, told) = (0, 0);
        for (var seed = 0; seed < 200; seed++)
        {
            var plant = new RandomPlant(seed, throughToo);
            var (mill, truth) = (plant.Mill, plant.Truth);
            var asOf = PosedMill.Hour(RandomPlant.End);
            var bounds = Tracer.Over(mill.Book).Bounds([plant.Start], asOf, new BoundsOptions { ThroughIsUnknown = throughToo });
            Assert.True(bounds.Traced.Holds(truth.Traced, 2), $"seed {seed}: traced {truth.Traced} outside {bounds.Traced}");
            foreach (var code in plant.Packages)
            {
                var bound = bounds.Packages.GetValueOrDefault(mill.Id(code), Bound.None);
                var grams = truth.Packed.GetValueOrDefault(code);
                Assert.True(bound.Holds(grams, 2), $"seed {seed}, {code}: {grams} outside {bound}");
                touched += grams > 1 ? 1 : 0;
                told += bound.Least > 1 ? 1 : 0;
            }

            foreach (var group in truth.Lying.Where(l => mill.Book.Named(l.Key).Kind.Role() != PlaceRole.Source).GroupBy(l => Whereabouts.KeyOf(mill.Book.Named(l.Key))))
            {
                var bound = bounds.Where.SingleOrDefault(w => w.Words == group.Key.Words && (w.Place?.Id ?? default) == group.Key.Place)?.Grams ?? Bound.None;
                Assert.True(bound.Holds(group.Sum(l => l.Value), 3), $"seed {seed}, {group.Key}: {group.Sum(l => l.Value)} outside {bound}");
            }
        }

        // Were nothing ever suspect, or no least ever told, the test would say nothing.
        Assert.True(touched > 400, $"{touched} packages touched");
        Assert.True(told > 20, $"{told} packages hold some for certain");
    }
}
