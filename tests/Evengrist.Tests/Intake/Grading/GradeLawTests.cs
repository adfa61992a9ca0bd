using CsCheck;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;

namespace Evengrist.Tests.Intake.Grading;

/// <summary>What holds of every sample.</summary>
public sealed class GradeLawTests
{
    private static readonly Property[] Percents = [Property.Damaged, Property.ForeignMaterial, Property.ShrunkenAndBroken, Property.OtherClasses, Property.Stones];

    private static readonly Gen<GradeSample> Any = Gen.Select(Gen.Int[480, 640], Gen.Int[0, 1800], Gen.Int[0, 600], Gen.Int[0, 2200], Gen.Int[0, 1000], Gen.Int[0, 40]).Select((tw, dam, fm, sb, other, insects) =>
        Samples.Sound.With(Property.TestWeight, tw / 10m).With(Property.Damaged, dam / 100m).With(Property.ForeignMaterial, fm / 100m).With(Property.ShrunkenAndBroken, sb / 100m)
            .With(Property.OtherClasses, other / 100m).With(Property.InsectDamagedKernels, insects));

    [Fact]
    public void Grade_AnyFactorMadeWorse_IsNeverBetter() =>
        Gen.Select(Any, Gen.Int[0, Percents.Length - 1], Gen.Int[1, 300]).Sample((sample, which, more) =>
        {
            var what = Percents[which];
            var now = sample.Findings.FirstOrDefault(f => f.What == what)?.Value ?? 0m;
            var worse = sample.With(what, Math.Min(now + (more / 100m), what == Property.OtherClasses ? 10.4m : 100m));
            return Samples.Graded(worse).Place >= Samples.Graded(sample).Place;
        });

    [Fact]
    public void Grade_LighterWheat_IsNeverBetter() =>
        Gen.Select(Any, Gen.Int[0, 100]).Sample((sample, less) =>
            Samples.Graded(sample.With(Property.TestWeight, sample.Findings.First(f => f.What == Property.TestWeight).Value - (less / 10m))).Place >= Samples.Graded(sample).Place);

    [Fact]
    public void Grade_FindingsInAnyOrder_IsTheSame() =>
        Gen.Select(Any, Gen.Int[0, int.MaxValue]).Sample((sample, seed) =>
        {
            var order = sample.Findings.OrderBy(f => ((7919L * (int)f.What) + seed) % 101).ToArray();
            return Samples.Graded(sample with { Findings = order }).Designation == Samples.Graded(sample).Designation;
        });

    [Fact]
    public void Grade_IsTheWorstOfTheFactorsAlone() =>
        Any.Sample(sample => Samples.Graded(sample) is var graded && graded.Place == graded.Factors.Max(f => f.Alone!.Value));

    // A recorded value moved by the distance stands on the limit; moved one step further it does not.
    [Fact]
    public void Distance_EveryFactor_LeadsToTheLimitAndNotBeyond() =>
        Any.Sample(sample =>
        {
            foreach (var row in Samples.Graded(sample).Factors)
            {
                var up = row.Factor.AtLeast ? 1m : -1m;
                if (row.Better is { } better)
                {
                    Assert.Equal(better.Limit, row.Recorded!.Value + (up * better.By));
                    Assert.True(row.Factor.GradeOf(better.Limit) < row.Alone);
                    Assert.Equal(row.Alone, row.Factor.GradeOf(better.Limit - (up * row.Factor.Step)));
                }

                if (row.Worse is { } worse)
                {
                    Assert.Equal(row.Alone, row.Factor.GradeOf(row.Recorded!.Value - (up * worse.By)));
                    Assert.True(row.Factor.GradeOf(row.Recorded!.Value - (up * (worse.By + row.Factor.Step))) > row.Alone);
                }
            }
        });

    [Fact]
    public void Weighings_OfASample_GradeAsTheirPercentages() =>
        Gen.Select(Gen.Int[800, 1200], Gen.Int[0, 40], Gen.Int[0, 300], Gen.Int[0, 120], Gen.Int[0, 60]).Sample((w, d, through, damaged, foreign) =>
        {
            var weighed = new SampleWeighings(w, d)
            {
                ThroughSieve = through / 10m, Sieved = 250m, Picked = [new(Property.Damaged, damaged / 100m, 15m), new(Property.ForeignMaterial, foreign / 100m, 30m)],
            };
            var bare = Samples.Sound.Without(Property.Damaged).Without(Property.ForeignMaterial).Without(Property.ShrunkenAndBroken);
            var asPercents = bare.With(Property.Dockage, 100m * d / w).With(Property.ShrunkenAndBroken, 100m * (through / 10m) / 250m)
                .With(Property.Damaged, 100m * (damaged / 100m) / 15m).With(Property.ForeignMaterial, 100m * (foreign / 100m) / 30m);
            return Samples.Graded(bare with { Weighings = weighed }).Designation == Samples.Graded(asPercents).Designation;
        });

    [Fact]
    public void Grade_SameSampleTwice_IsEqualFactorByFactor() =>
        Any.Sample(sample => Samples.Graded(sample).Factors.Select(f => (f.Factor.Words, f.Recorded, f.Alone)).SequenceEqual(Samples.Graded(sample).Factors.Select(f => (f.Factor.Words, f.Recorded, f.Alone))));
}
