using Evengrist.Intake.Sampling;
using Evengrist.Web.Sights.Trucks;

namespace Evengrist.Web.Sights.Sampling;

/// <summary>A reading and its edges as a person types them.</summary>
public sealed class EdgeAsk
{
    private EdgeAsk(IReadOnlyList<string> faults, EdgeSpec? spec) => (Faults, Spec) = (faults, spec);

    /// <summary>What is wrong, each a sentence.</summary>
    public IReadOnlyList<string> Faults { get; }

    /// <summary>The question; null where the form cannot be read.</summary>
    public EdgeSpec? Spec { get; }

    /// <summary>The doubts, nearest first; empty where the form cannot be read.</summary>
    public IReadOnlyList<EdgeDoubt> Doubts => Spec is null ? [] : EdgeModel.Doubts(Spec);

    /// <summary>Reads the form.</summary>
    public static EdgeAsk Read(string? reads, string? sd, string? edges, string? sure)
    {
        var typed = new Typed();
        var (value, spread) = (typed.Number("reads", reads, "%", "what was read"), typed.Number("sd", sd, "%", "its standard deviation"));
        var chance = typed.Number("sure", sure, "%", "from which chance on it is sure");
        var list = (edges ?? "").Split([' ', ';', '|'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(e => typed.Number("edges", e, "%")).OfType<decimal>().ToArray();
        string[] faults = [.. typed.Faults.Select(f => f.Fault), .. typed.Missing.Select(m => $"Still needed: {m}."), .. list.Length == 0 && typed.Faults.Count == 0 ? ["Give one edge at least, with a space between several."] : Array.Empty<string>()];
        if (faults.Length > 0)
        {
            return new EdgeAsk(faults, null);
        }

        var spec = new EdgeSpec((double)value!.Value, (double)spread!.Value, [.. list.Take(100).Select(e => new Edge((double)e, ""))]) { SureFrom = (double)chance!.Value / 100, Within = 1e12 };
        return spec.Faults() is { Count: > 0 } wrong ? new EdgeAsk(wrong, null) : new EdgeAsk([], spec);
    }
}
