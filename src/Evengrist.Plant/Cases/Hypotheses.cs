using Evengrist.Ledger;

namespace Evengrist.Plant.Cases;

/// <summary>The outflow hypotheses as posed cases write them.</summary>
public static class Hypotheses
{
    /// <summary>The word for each hypothesis, in JSON.</summary>
    public static IReadOnlyDictionary<string, Outflow> ByWord { get; } = new Dictionary<string, Outflow>
    {
        ["firstInFirstOut"] = Outflow.FirstInFirstOut, ["coreFirst"] = Outflow.CoreFirst, ["stirred"] = Outflow.Stirred,
    };

    /// <summary>The word for a hypothesis, in JSON.</summary>
    public static string Word(this Outflow outflow) => ByWord.First(w => w.Value == outflow).Key;

    internal static Outflow? Of(JsonNode node, string word)
    {
        if (ByWord.TryGetValue(word, out var outflow))
        {
            return outflow;
        }

        node.Fault($"a hypothesis: {string.Join(", ", ByWord.Keys)}");
        return null;
    }
}
