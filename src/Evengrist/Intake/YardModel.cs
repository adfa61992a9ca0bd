namespace Evengrist.Intake;

/// <summary>Forecasts how long trucks wait in the yard: first come first served, several lanes alike. Model: docs/model/yard.md.</summary>
/// <remarks>
/// For one lane the recursion is Lindley's: W₍ₙ₊₁₎ = max(0, Wₙ + Sₙ − Aₙ₊₁), with W the wait, S the service and A the time between two arrivals
/// (D. V. Lindley, The theory of queues with a single server, 1952, from memory); for several it is that of Kiefer and Wolfowitz (1955, from memory).
/// </remarks>
public static class YardModel
{
    /// <summary>The forecast, or why there is none.</summary>
    public static YardOutcome Forecast(YardSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is { Count: > 0 } faults)
        {
            return new NoYardForecast(faults);
        }

        var expected = Run(spec, spec.ServiceMinutes);
        var least = Run(spec, Math.Max(0, spec.ServiceMinutes - spec.ServiceDeviation));
        var most = Run(spec, spec.ServiceMinutes + spec.ServiceDeviation);

        // All services long, or all short, together: wider than if they varied by themselves.
        return new YardForecast(
            [.. expected.Waits.Select((w, i) => new YardWait(w.Arrives, w.Wait, (most.Waits[i].Wait - least.Waits[i].Wait) / 2))],
            expected.Clear,
            60 * spec.Lanes / spec.ServiceMinutes);
    }

    /// <summary>Waits of trucks in the order of their coming, each with a service of its own.</summary>
    /// <param name="trucks">When each comes and how long it is served, in minutes; services are at least 0.</param>
    /// <param name="lanes">When each lane is free, in minutes; at least one.</param>
    /// <returns>The trucks by arrival (of two that come together the shorter service first) with their waits in minutes, and when the last lane is free.</returns>
    /// <exception cref="ArgumentException">There is no lane.</exception>
    public static (IReadOnlyList<(double Arrives, double Wait)> Waits, double Clear) Waits(IReadOnlyList<(double Arrives, double Service)> trucks, IReadOnlyList<double> lanes)
    {
        ArgumentNullException.ThrowIfNull(trucks);
        ArgumentNullException.ThrowIfNull(lanes);
        if (lanes.Count == 0)
        {
            throw new ArgumentException("At least one lane serves trucks.", nameof(lanes));
        }

        double[] free = [.. lanes];
        var waits = new List<(double, double)>(trucks.Count);
        foreach (var (arrives, service) in trucks.OrderBy(t => t.Arrives).ThenBy(t => t.Service))
        {
            var lane = Array.IndexOf(free, free.Min());
            var begins = Math.Max(arrives, free[lane]);
            free[lane] = begins + service;
            waits.Add((arrives, begins - arrives));
        }

        return (waits, free.Max());
    }

    // Nobody is served before now: what came earlier and still waits has waited since.
    private static (IReadOnlyList<(double Arrives, double Wait)> Waits, double Clear) Run(YardSpec spec, double service)
    {
        var lanes = new double[spec.Lanes];
        foreach (var served in spec.UnderWay.OrderDescending())
        {
            var lane = Array.IndexOf(lanes, lanes.Min());
            lanes[lane] += Math.Max(0, service - served);
        }

        return Waits([.. spec.Arrivals.Select(a => (a, service))], lanes);
    }
}
