namespace Evengrist.Numerics.Reconciling;

/// <summary>An equation that the true values keep: Σ terms = constant.</summary>
/// <param name="Name">What it says, for messages.</param>
/// <param name="Terms">Its terms.</param>
/// <param name="Constant">The right-hand side.</param>
public sealed record Constraint(string Name, IReadOnlyList<Term> Terms, double Constant = 0)
{
    /// <summary>By how much values miss it: Σ terms − constant.</summary>
    internal double Miss(IReadOnlyList<double> values) => Terms.Sum(t => t.Of(values)) - Constant;

    /// <summary>How large its terms are, as a measure for a miss.</summary>
    internal double Size(IReadOnlyList<double> values) => Terms.Sum(t => Math.Abs(t.Of(values))) + Math.Abs(Constant);
}

/// <summary>One term of a constraint: factor · x, or factor · x · y for the flow of a component.</summary>
/// <param name="Factor">The factor.</param>
/// <param name="First">Position of the unknown among all.</param>
/// <param name="Second">Position of the unknown it is multiplied by; null for a linear term.</param>
public sealed record Term(double Factor, int First, int? Second = null)
{
    internal double Of(IReadOnlyList<double> values) => Factor * values[First] * (Second is { } s ? values[s] : 1);
}
