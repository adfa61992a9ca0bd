namespace Evengrist.Planning.Solving;

/// <summary>The solvers behind a problem; all of them are open source and come with one package (docs/decisions/0015-solvers.md).</summary>
public enum LinearEngine
{
    /// <summary>Simplex for problems without whole numbers: an exact vertex with its duals.</summary>
    Glop,

    /// <summary>Branch and bound for problems with whole numbers.</summary>
    Scip,

    /// <summary>Another simplex, for comparison.</summary>
    Clp,

    /// <summary>Another branch and bound, for comparison.</summary>
    Cbc,

    /// <summary>A third branch and bound, for comparison.</summary>
    Highs,
}
