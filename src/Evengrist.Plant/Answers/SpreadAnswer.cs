using Evengrist.Plant.Cases;
using Evengrist.Tracing;

namespace Evengrist.Plant.Answers;

/// <summary>A reckoned figure: under each hypothesis, and least, expected and most over them.</summary>
public sealed record SpreadAnswer(IReadOnlyDictionary<string, double> Each, double Least, double Expected, double Most)
{
    internal static SpreadAnswer Of(Spread spread, IReadOnlyList<Belief> beliefs, double scale = 1) => new(
        beliefs.Select((b, i) => (b.Outflow, Value: spread.Each[i] * scale)).ToDictionary(e => e.Outflow.Word(), e => e.Value),
        spread.Least * scale, spread.Expected * scale, spread.Most * scale);
}
