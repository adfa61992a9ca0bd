namespace Evengrist.Intake;

/// <summary>What a queue forecast of the yard starts from. All times in minutes from now; earlier ones are negative.</summary>
/// <param name="Lanes">Trucks that can be served at once; at least 1.</param>
/// <param name="ServiceMinutes">How long one truck is served, from weighed full to weighed empty; above 0.</param>
/// <param name="ServiceDeviation">One standard deviation of it between trucks, in minutes; at least 0.</param>
/// <param name="UnderWay">For each truck being served, the minutes for which it has been; at least 0.</param>
/// <param name="Arrivals">When each truck that is still to be served came or is expected, in minutes from now.</param>
public sealed record YardSpec(int Lanes, double ServiceMinutes, double ServiceDeviation, IReadOnlyList<double> UnderWay, IReadOnlyList<double> Arrivals)
{
    /// <summary>Every fault, each a sentence; empty where there is none.</summary>
    public IReadOnlyList<string> Faults()
    {
        var faults = new List<string>();
        Fault(Lanes >= 1, "At least one lane serves trucks.");
        Fault(double.IsFinite(ServiceMinutes) && ServiceMinutes > 0, "A truck takes a time above 0 minutes.");
        Fault(double.IsFinite(ServiceDeviation) && ServiceDeviation >= 0, "A standard deviation is at least 0.");
        Fault(UnderWay.All(m => double.IsFinite(m) && m >= 0), "A truck has been served for at least 0 minutes.");
        Fault(Arrivals.All(double.IsFinite), "An arrival is a number of minutes from now.");
        return faults;

        void Fault(bool holds, string fault)
        {
            if (!holds)
            {
                faults.Add(fault);
            }
        }
    }
}
