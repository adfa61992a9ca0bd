namespace Evengrist.Laboratory.Rings;

/// <summary>How far a laboratory's result lies from the assigned value of a ring test. Model: docs/model/ring-tests.md.</summary>
public static class Scores
{
    /// <summary>z: over the standard deviation laid down for the test; 2 warns, 3 acts.</summary>
    public static double Z(double value, double assigned, double deviation) => (value - assigned) / deviation;

    /// <summary>ζ: over the standard uncertainties of both; 2 warns, 3 acts.</summary>
    public static double Zeta(double value, double assigned, double uncertainty, double assignedUncertainty) => (value - assigned) / Math.Sqrt((uncertainty * uncertainty) + (assignedUncertainty * assignedUncertainty));

    /// <summary>E_n: over the expanded uncertainties (k = 2) of both; beyond 1 fails.</summary>
    public static double En(double value, double assigned, double expanded, double assignedExpanded) => Zeta(value, assigned, expanded, assignedExpanded);
}
