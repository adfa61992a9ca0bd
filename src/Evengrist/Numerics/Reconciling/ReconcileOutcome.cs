using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Numerics.Reconciling;

/// <summary>What comes of reconciling.</summary>
public abstract record ReconcileOutcome
{
    private protected ReconcileOutcome()
    {
    }
}

/// <summary>Values that keep the constraints, as near to the measured ones as their uncertainties ask.</summary>
/// <param name="Values">Every quantity, in the order given.</param>
/// <param name="Covariance">Of the adjusted values, in the order given; rows of what cannot be observed mean nothing.</param>
/// <param name="Squares">J: sum of the squared corrections, each over its variance.</param>
/// <param name="Freedom">How many constraints check the measurements: the degrees of freedom of <paramref name="Squares"/>; 0 where nothing is checked.</param>
/// <param name="Rounds">Linearisations it took.</param>
public abstract record Balanced(IReadOnlyList<Adjusted> Values, Matrix<double> Covariance, double Squares, int Freedom, int Rounds) : ReconcileOutcome
{
    /// <summary>The quantity with a name.</summary>
    /// <exception cref="InvalidOperationException">None has it.</exception>
    public Adjusted this[string name] => Values.First(v => v.Unknown.Name == name);
}

/// <summary>Measurements checked against one another and adjusted.</summary>
public sealed record Reconciled : Balanced
{
    private readonly Matrix<double> shared;
    private readonly Adjusted[] measured;

    internal Reconciled(IReadOnlyList<Adjusted> values, Matrix<double> covariance, double squares, int freedom, int rounds, Matrix<double> shared)
        : base(values, covariance, squares, freedom, rounds) => (this.shared, measured) = (shared, [.. values.Where(v => v.Unknown.IsMeasured)]);

    /// <summary>J beyond which errors of the stated size are not believed.</summary>
    /// <param name="level">Chance of a false alarm, above 0 and below 1; usually 0.05.</param>
    public double Critical(double level) => ChiSquared.InvCDF(Freedom, 1 - level);

    /// <summary>Whether J is beyond it: some measurement is worse than it was said to be, or a constraint does not hold.</summary>
    public bool Fails(double level) => Squares > Critical(level);

    /// <summary>|z| beyond which a measurement is suspect, so that among all that are checked a false alarm has the chance given: Šidák's inequality, as Mah and Tamhane use it (Chemical Engineering Science 37 (1982) 828) [from memory].</summary>
    public double CriticalZ(double level) => Normal.InvCDF(0, 1, 1 - ((1 - Math.Pow(1 - level, 1.0 / Values.Count(v => v.Z is not null))) / 2));

    /// <summary>Covariance of two corrections, each over its measurement's uncertainty: an entry of a projection.</summary>
    internal double SharedOf(Adjusted one, Adjusted other) => shared[Array.IndexOf(measured, one), Array.IndexOf(measured, other)];

    /// <summary>How much of a measurement's own error the constraints see, 0 to 1.</summary>
    internal double SeenOf(Adjusted one) => SharedOf(one, one);
}

/// <summary>The constraints check no measurement: each value stays as measured, and what can be found from them is found.</summary>
public sealed record NothingToAdjust : Balanced
{
    internal NothingToAdjust(IReadOnlyList<Adjusted> values, Matrix<double> covariance, int rounds)
        : base(values, covariance, 0, 0, rounds)
    {
    }
}

/// <summary>No values keep all constraints, whatever was measured.</summary>
/// <param name="Names">The constraints that do not go together.</param>
public sealed record ConstraintsClash(IReadOnlyList<string> Names) : ReconcileOutcome;

/// <summary>Successive linearisation did not come to rest.</summary>
/// <param name="Rounds">Linearisations tried.</param>
/// <param name="Change">Greatest relative change in the last of them; not a number where it ran away.</param>
public sealed record NotConverged(int Rounds, double Change) : ReconcileOutcome;

/// <summary>The question cannot be put.</summary>
/// <param name="Faults">Every fault, each a sentence.</param>
public sealed record ReconcileRefused(IReadOnlyList<string> Faults) : ReconcileOutcome;
