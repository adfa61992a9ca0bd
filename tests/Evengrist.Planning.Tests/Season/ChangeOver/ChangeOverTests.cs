using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Season;
using Evengrist.Season.ChangeOver;

namespace Evengrist.Planning.Tests.Season.ChangeOver;

public sealed class ChangeOverTests
{
    private static ChangeOverSpec Spec(SeasonValue oldValue, SeasonValue newValue, Property what, double step = 0.25, SeasonLimit? limit = null) => new(
        [new("WB", new(12, Of(what, oldValue)), new(12, Of(what, newValue)), limit is null ? [] : [limit])], ChangeOverSpec.Even(step), 3);

    private static SeasonQuality Of(Property what, SeasonValue value) => new(new Dictionary<Property, SeasonValue> { [what] = value });

    private static FlourChangeOver Lay(ChangeOverSpec spec) => Assert.IsType<ChangeOverLaid>(ChangeOverModel.Lay(spec)).Flours[0];

    [Fact]
    public void Lay_FallingNumber_BlendsByLiquefaction()
    {
        // 50:50 of 400 s and 220 s gives 279 s: worked example of a trade page on low falling numbers (2020), LN = 6000/(FN − 50).
        var half = Lay(Spec(new(400), new(220), Property.FallingNumber)).Steps[1];
        Assert.Equal(0.5, half.Share);
        Assert.Equal(279, half.Moves[0].Value, 0.5);
    }

    [Fact]
    public void Lay_Protein_MovesEvenlyAndEndsAtTheNewCrop()
    {
        var steps = Lay(Spec(new(13.2, 0.05, Basis.At12), new(12.4, 0.2, Basis.At12), Property.Protein)).Steps;
        Assert.Equal([0, 3, 6, 9], steps.Select(s => s.FirstDay));
        Assert.All(steps, s => Assert.Equal(-0.2, s.Moves[0].Move, 9));
        Assert.Equal((12.4, 0.2), (Math.Round(steps[^1].Moves[0].Value, 9), Math.Round(steps[^1].Moves[0].Spread, 6)));

        // A quarter changes hands: 0.25·√(0.05² + 0.2²) [derived].
        Assert.All(steps, s => Assert.Equal(0.25 * Math.Sqrt(0.0025 + 0.04), s.Moves[0].MoveSpread, 5));
    }

    [Fact]
    public void Lay_Limit_IsKeptAsOftenAsANormalSays()
    {
        // 13.15 with a standard deviation of 0.25 lies above 13.0 with 72.6 %: Φ(0.6), textbook table.
        var limit = new SeasonLimit(Property.Protein, 13, null, 1) { Basis = Basis.At12 };
        Assert.Equal(0.7257, Lay(Spec(new(14, 0.1, Basis.At12), new(13.15, 0.25, Basis.At12), Property.Protein, limit: limit)).Steps[^1].Moves[0].Kept!.Value, 4);
    }

    [Fact]
    public void Lay_LargestMove_GivesAStepThatKeepsIt()
    {
        var spec = Spec(new(13.2, 0, Basis.At12), new(12.2, 0, Basis.At12), Property.Protein) with { LargestMoves = [new(Property.Protein, 0.155)] };
        Assert.Equal(0.15, Lay(spec).LargestStep, 9);
    }

    [Theory]
    [InlineData(14.0, 13.0, "12mb", "lies above its most")]
    [InlineData(null, null, "12mb", "neither least nor most")]
    [InlineData(13.0, null, "", "basis is missing")]
    public void Lay_LimitThatCannotBe_IsNamed(double? least, double? most, string basis, string says)
    {
        var limit = new SeasonLimit(Property.Protein, least, most, 1) { Basis = basis.Length > 0 ? Basis.At12 : default };
        var refused = Assert.IsType<ChangeOverRefused>(ChangeOverModel.Lay(Spec(new(14, 0.1, Basis.At12), new(13, 0.2, Basis.At12), Property.Protein, limit: limit)));
        Assert.Contains(says, string.Join(" ", refused.Faults), StringComparison.Ordinal);
    }

    [Fact]
    public void PlannedMix_OfAPlan_IsWhatItDraws()
    {
        // Half and half of 12 % and 14 % keep 13 % at the least of the dear one; errors of 0.2 and 0.1 are independent: √(0.1² + 0.05²) [derived].
        SeasonWheat With(SeasonWheat wheat, double spread) => wheat with { Quality = new(new Dictionary<Property, SeasonValue> { [Property.Protein] = wheat.Quality.Values[Property.Protein] with { Spread = spread } }) };
        var plan = Years.Linear(Years.Weeks(4, 13, With(Years.Wheat("LOW", 300, 12), 0.2), With(Years.Wheat("HIGH", 200, 14), 0.1)));
        var mix = PlannedMix.Of(plan, "WB", _ => true)!.Quality.Values[Property.Protein];
        Assert.Equal((13.0, Math.Round(Math.Sqrt(0.0125), 6)), (Math.Round(mix.Value, 6), Math.Round(mix.Spread, 6)));
        Assert.Equal(14, PlannedMix.Of(plan, "WB", w => w.Code == "HIGH")!.Quality.Values[Property.Protein].Value, 9);
        Assert.Null(PlannedMix.Of(plan, "WB", _ => false));
        Assert.Equal(12.8, PlannedMix.Of(plan.Spec.Wheats)!.Quality.Values[Property.Protein].Value, 9);
    }

    [Fact]
    public void Lay_BadInput_NamesTheFaults()
    {
        var spec = Spec(new(13.2, -1, Basis.At12), new(12.2), Property.Protein) with { Steps = [0.5, 0.4], DaysPerStep = 0 };
        Assert.Equal(5, Assert.IsType<ChangeOverRefused>(ChangeOverModel.Lay(spec)).Faults.Count);
        Assert.Throws<ArgumentOutOfRangeException>(() => ChangeOverSpec.Even(0));
    }
}
