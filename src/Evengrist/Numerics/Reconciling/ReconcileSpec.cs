namespace Evengrist.Numerics.Reconciling;

/// <summary>What was measured, what is sought, and what the true values keep.</summary>
/// <param name="Unknowns">Measured and sought quantities, in any order.</param>
/// <param name="Constraints">The equations, in any order; one that follows from others does no harm.</param>
public sealed record ReconcileSpec(IReadOnlyList<Unknown> Unknowns, IReadOnlyList<Constraint> Constraints)
{
    /// <summary>Most unknowns and most constraints; the matrices are full [design].</summary>
    public const int Most = 400;

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        if (Unknowns.Count is 0 or > Most || Constraints.Count is 0 or > Most)
        {
            return [$"There are {Unknowns.Count} quantities and {Constraints.Count} constraints: give 1 to {Most} of each."];
        }

        return
        [
            .. Unknowns.Where(u => string.IsNullOrWhiteSpace(u.Name)).Select(_ => "A quantity has no name: give it one."),
            .. Unknowns.GroupBy(u => u.Name, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => $"{g.Key} stands there {g.Count()} times: give each quantity once."),
            .. Unknowns.Where(u => !double.IsFinite(u.Value)).Select(u => $"{u.Name}: a finite number is needed."),
            .. Unknowns.Where(u => u.StandardUncertainty is { } s && !(s >= 0 && double.IsFinite(s))).Select(u => $"{u.Name}: a standard uncertainty is 0 or more."),
            .. Constraints.Where(c => c.Terms.Count == 0).Select(c => $"{c.Name}: a constraint needs a term."),
            .. Constraints.Where(c => !double.IsFinite(c.Constant) || c.Terms.Any(t => !double.IsFinite(t.Factor))).Select(c => $"{c.Name}: a factor or the constant is no finite number."),
            .. Constraints.Where(c => c.Terms.Any(t => IsBeyond(t.First) || (t.Second is { } s && IsBeyond(s)))).Select(c => $"{c.Name}: a term names a quantity that is not there."),
        ];
    }

    /// <summary>The same question with one quantity taken as not measured.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="start">Where to begin looking for it.</param>
    public ReconcileSpec Without(string name, double start) =>
        this with { Unknowns = [.. Unknowns.Select(u => u.Name == name ? Unknown.Sought(name, start) : u)] };

    private bool IsBeyond(int position) => position < 0 || position >= Unknowns.Count;
}
