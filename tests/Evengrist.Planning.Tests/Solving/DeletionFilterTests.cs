using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Tests.Solving;

/// <summary>What is left clashes, and leaving any one of it out ends the clash: checked against all subsets.</summary>
public sealed class DeletionFilterTests
{
    [Fact]
    public void Find_DrawnClashes_LeavesASmallestOne()
    {
        for (var seed = 1; seed <= 200; seed++)
        {
            var dice = new Random(seed);
            int[] demands = [.. Enumerable.Range(0, 8)];
            int[] clashes = [.. Enumerable.Range(0, dice.Next(1, 5)).Select(_ => dice.Next(1, 256))];
            bool CanBeKept(IReadOnlyList<int> kept) => !clashes.Any(c => demands.Where(d => (c >> d & 1) == 1).All(kept.Contains));

            var found = DeletionFilter.Find(demands, CanBeKept)!;

            Assert.True(found.IsSmallest);
            Assert.False(CanBeKept(found.Demands));
            Assert.All(found.Demands, d => Assert.True(CanBeKept([.. found.Demands.Where(o => o != d)])));
            Assert.Equal(found.Demands.Order(), found.Demands);
        }
    }

    [Fact]
    public void Find_FirstGivenUpFirst_WhereEitherWouldDo() =>
        Assert.Equal([2, 3], DeletionFilter.Find([1, 2, 3], kept => kept.Count < 2)!.Demands);

    [Fact]
    public void Find_NothingCanBeKept_Null() => Assert.Null(DeletionFilter.Find([1, 2], _ => false));

    [Fact]
    public void Find_NoTimeToTryThemAll_SaysSo()
    {
        var tries = 0;
        var found = DeletionFilter.Find([1, 2, 3, 4], kept => kept.Count < 2, () => tries++ < 1)!;
        Assert.False(found.IsSmallest);
        Assert.Equal([2, 3, 4], found.Demands);
    }
}
