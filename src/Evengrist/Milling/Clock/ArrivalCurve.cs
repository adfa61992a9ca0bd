namespace Evengrist.Milling.Clock;

/// <summary>How much of what leaves a way is new, over the hours since the change at its beginning: 0 before the dead time, then rising to 1.</summary>
/// <remarks>
/// The sum of all dead times, and the waiting times of all stirred tanks one after another: their sum is spread as the time to pass a chain of exponential stages, reckoned by uniformisation,
/// which stays exact where tanks are alike and never falls or leaves 0 to 1. Model: docs/model/arrival-clock.md.
/// </remarks>
public sealed class ArrivalCurve
{
    private const double Negligible = 1e-3;
    private const double Tail = 1e-13;
    // After so many times the tanks' mean waiting all is through but for less than a double can tell, and a curve of tiny tanks would take steps without end.
    private const double Through = 100;
    private readonly double[] passes;
    private readonly double fastest;
    private readonly double stirred;

    /// <summary>The curve behind some stages; their order does not matter.</summary>
    /// <param name="stages">The stages.</param>
    /// <exception cref="ArgumentException">The stages have faults: see <see cref="ClockStage.Faults"/>.</exception>
    public ArrivalCurve(IReadOnlyList<ClockStage> stages)
    {
        if (ClockStage.Faults(stages) is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(stages));
        }

        // A tank that is tiny beside the rest is as good as a dead time, and would take many steps.
        double[] tanks = [.. stages.SelectMany(s => Enumerable.Repeat(s.StirredHours / s.Tanks, s.Tanks)).Where(t => t > 0)];
        var least = Negligible * tanks.Sum();
        double[] rates = [.. tanks.Where(t => t >= least).Select(t => 1 / t).Order()];
        DelayHours = stages.Sum(s => s.DelayHours) + tanks.Where(t => t < least).Sum();
        MeanHours = stages.Sum(s => s.DelayHours + s.StirredHours);
        fastest = rates.DefaultIfEmpty(0).Max();
        stirred = rates.Sum(r => 1 / r);
        passes = [.. rates.Select(r => r / fastest)];
    }

    /// <summary>Dead time in all, h.</summary>
    public double DelayHours { get; }

    /// <summary>Mean time on the way, h.</summary>
    public double MeanHours { get; }

    /// <summary>Share of what leaves that is new, 0 to 1.</summary>
    /// <param name="hours">Hours of running since the change.</param>
    public double At(double hours)
    {
        var since = hours - DelayHours;
        if (passes.Length == 0 || since <= 0)
        {
            return since >= 0 && passes.Length == 0 ? 1 : 0;
        }

        return since >= Through * stirred ? 1 : passes.All(p => p == 1) ? Alike(fastest * since) : Unlike(fastest * since);
    }

    /// <summary>Hours of running after which a share of what leaves is new.</summary>
    /// <param name="share">The share, above 0 and below 1.</param>
    public double When(double share)
    {
        if (!(share is > 0 and < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(share), share, "A share lies between 0 and 1.");
        }

        if (passes.Length == 0)
        {
            return DelayHours;
        }

        var (low, high) = (DelayHours, DelayHours + (MeanHours - DelayHours) + (1 / fastest));
        while (At(high) < share)
        {
            high = DelayHours + (2 * (high - DelayHours));
        }

        for (var i = 0; i < 60 && high - low > 1e-10 * high; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = At(middle) < share ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    // Tanks of one size: 1 − e^(−q) Σ qᵏ/k!.
    private double Alike(double ticks)
    {
        var (term, sum) = (Math.Exp(-ticks), 0.0);
        for (var k = 1; k <= passes.Length; k++)
        {
            sum += term;
            term *= ticks / k;
        }

        return Math.Clamp(1 - sum, 0, 1);
    }

    private double Unlike(double ticks)
    {
        // Σ over k of the chance of k ticks of the fastest tank's clock, times the chance that k ticks carry through all tanks.
        var waiting = new double[passes.Length];
        waiting[0] = 1;
        var (through, share, seen, log) = (0.0, 0.0, 0.0, -ticks);
        for (var k = 1; seen < 1 - Tail && k < ticks + (40 * Math.Sqrt(ticks)) + 200; k++)
        {
            seen += Math.Exp(log);
            share += Math.Exp(log) * through;
            through += waiting[^1] * passes[^1];
            for (var i = passes.Length - 1; i >= 0; i--)
            {
                waiting[i] = (waiting[i] * (1 - passes[i])) + (i > 0 ? waiting[i - 1] * passes[i - 1] : 0);
            }

            log += Math.Log(ticks / k);
        }

        return Math.Clamp(share + (Math.Max(0, 1 - seen) * through), 0, 1);
    }
}
