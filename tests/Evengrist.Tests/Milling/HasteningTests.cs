using Evengrist.Milling.Solving;

namespace Evengrist.Tests.Milling;

/// <summary>The piece that hastens a mill's loops, on a scalar recycle with a known answer.</summary>
public sealed class HasteningTests
{
    // x = 5 + x/2 + 20 x/(40 + x) [derived]: x² − 10 x − 400 = 0, so 5 + √425.
    private static readonly double Answer = 5 + Math.Sqrt(425);

    [Fact]
    public void Recycle_OfAScalar_TakesLessThanAThirdOfTheStepsOfDirectSubstitution()
    {
        var (hastened, direct) = (Steps(true), Steps(false));
        Assert.Equal(25.615528128, Answer, 9);
        Assert.Equal((70, 16), (direct, hastened));
    }

    // Steps until one moves no more than 1e-10.
    private static int Steps(bool hasten)
    {
        var (x, hastening) = (0.0, new Hastening());
        for (var step = 1; step < 200; step++)
        {
            var next = Next(x);
            var moved = next - x;
            if (Math.Abs(moved) <= 1e-10)
            {
                Assert.Equal(Answer, next, 9);
                return step;
            }

            x = next + (hasten ? hastening.Beyond(Math.Abs(moved)) * moved : 0);
        }

        return 200;
    }

    private static double Next(double x) => 5 + (0.5 * x) + (20 * x / (40 + x));
}
