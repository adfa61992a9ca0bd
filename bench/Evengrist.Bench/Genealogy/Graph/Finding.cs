namespace Evengrist.Bench.Genealogy.Graph;

/// <summary>One row of the check: its name, what came out, and what the published tables want to read in it (empty: nothing known).</summary>
internal sealed record Finding(string Name, string Value, IReadOnlyList<string> Wanted)
{
    public string Verdict => Wanted.Count == 0 ? "no published value" : Passed ? "pass" : $"FAIL, wanted {string.Join(" · ", Wanted)}";

    public bool Passed => Wanted.All(Value.Contains);
}
