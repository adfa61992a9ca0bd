using Evengrist.Intake.Deciding;
using NodaTime.Text;

namespace Evengrist.Plant.Cases;

/// <summary>A load posed in JSON with the rules it is to be judged by.</summary>
/// <param name="Load">What is known of it.</param>
/// <param name="House">The mill's rules.</param>
/// <param name="Markets">The markets whose limits hold.</param>
public sealed record DecisionCase(LoadToDecide Load, HouseRules House, IReadOnlyList<Market> Markets)
{
    private static readonly (string Word, CargoKind Kind)[] Cargoes = [.. Enum.GetValues<CargoKind>().Where(k => k != CargoKind.None).Select(k => (Camel(k.ToString()), k))];

    private static readonly (string Word, CleanOut Kind)[] Cleanings = [.. Enum.GetValues<CleanOut>().Where(c => c != CleanOut.Never).Select(c => (Camel(c.ToString()), c))];

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        $$"""
        {
          "findings": { "don [mg/kg 12mb]": number, "glass [/kg]": count, "falling number [s]": number ... the headings of an intake file }
          "seen": [ {{string.Join(", ", LoadSigns.All.Select(s => $"\"{s.Words}\""))}} ] (empty: looked, nothing there; left out: nobody looked)
          "trailer": { "loads": [ { "what": {{string.Join(" | ", Cargoes.Select(c => $"\"{c.Word}\""))}}, "on": "2025-07-08" } ... newest first ],
                       "cleaned": {{string.Join(" | ", Cleanings.Select(c => $"\"{c.Word}\""))}}, "by": who declares it } (left out: nobody asked)
          "contract": as for intake settle; may be left out
          "house": { "rules": [ { "what": "FallingNumber" ..., "unit", "basis": "12mb", "kind": "Divert" ..., "below" or "above": number, "why" } ... ], "demandsLastLoads": true | false }
          "markets": [ {{string.Join(" | ", Evengrist.Intake.Deciding.Markets.All.Select(m => $"\"{m.Code}\""))}} or { "code", "name", "limits": [ { "what", "stage": "AsReceived" | "Product", "most", "unit", "source", "mark": "House", "blendDown" } ... ] } ... ]
        }
        """,
        """
        { "findings": { "moisture [%]": 13.2, "falling number [s]": 214, "don [mg/kg 12mb]": 1.8 },
          "seen": [], "trailer": { "loads": [ { "what": "soy", "on": "2025-07-24" }, { "what": "wheat" }, { "what": "wheat" } ], "cleaned": "swept", "by": "the driver" },
          "house": { "rules": [ { "what": "FallingNumber", "unit": "s", "kind": "Divert", "below": 250, "why": "sprouted wheat spoils a bread mix" } ] },
          "markets": [ "US" ] }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<DecisionCase> Read(Stream stream) => JsonCase.Read<DecisionCase>(stream, (root, faults) => Of(root, faults));

    private static DecisionCase? Of(JsonNode root, List<Fault> faults)
    {
        if (!root.IsObject("findings", "seen", "trailer", "contract", "house", "markets"))
        {
            return null;
        }

        var load = new LoadToDecide(PosedFindings.Read(root.Member("findings")))
        {
            Seen = root.Member("seen", required: false)?.Items(20).Select(n => n.Text()).ToArray(),
            Trailer = root.Member("trailer", required: false) is { } trailer ? TrailerOf(trailer) : null,
            Contract = root.Member("contract", required: false) is { } contract ? PosedTerms.Of(contract) : null,
        };
        var house = root.Member("house", required: false) is { } rules ? HouseOf(rules) : new HouseRules();
        Market[] markets = [.. (root.Member("markets", required: false)?.Items(20) ?? []).Select(MarketOf).OfType<Market>()];
        if (faults.Count > 0 || house is null)
        {
            return null;
        }

        faults.AddRange(load.Faults().Select(f => Fault.Told("$", f)));
        return new DecisionCase(load, house, markets);
    }

    private static TrailerHistory? TrailerOf(JsonNode node)
    {
        if (!node.IsObject("loads", "cleaned", "by"))
        {
            return null;
        }

        PreviousLoad[] loads = [.. (node.Member("loads")?.Items(TrailerHistory.Most) ?? []).Select(LoadOf)];
        return new TrailerHistory(loads, Choice(node.Member("cleaned"), Cleanings), node.Text("by"));
    }

    private static PreviousLoad LoadOf(JsonNode node)
    {
        if (!node.IsObject("what", "on"))
        {
            return new PreviousLoad(CargoKind.None);
        }

        var on = node.Has("on") ? LocalDatePattern.Iso.Parse(node.Text("on")) : null;
        if (on is { Success: false })
        {
            node.Member("on")!.Fault("a date such as \"2025-07-08\"");
        }

        return new PreviousLoad(Choice(node.Member("what"), Cargoes), on is { Success: true } day ? day.Value : null);
    }

    private static HouseRules? HouseOf(JsonNode node)
    {
        if (HouseRules.TryRead(node.Raw, out var rules, out var faults))
        {
            return rules;
        }

        foreach (var fault in faults)
        {
            node.Fault($"house rules that can be. {fault}");
        }

        return null;
    }

    private static Market? MarketOf(JsonNode node)
    {
        if (node.IsText)
        {
            var code = node.Text();
            var known = Evengrist.Intake.Deciding.Markets.All.FirstOrDefault(m => m.Code.Equals(code, StringComparison.OrdinalIgnoreCase));
            if (known is null)
            {
                node.Fault($"one of {string.Join(", ", Evengrist.Intake.Deciding.Markets.All.Select(m => m.Code))}, or an object with limits");
            }

            return known;
        }

        if (Market.TryRead(node.Raw, out var market, out var faults))
        {
            return market;
        }

        foreach (var fault in faults)
        {
            node.Fault($"limits that can be. {fault}");
        }

        return null;
    }

    private static T Choice<T>(JsonNode? node, (string Word, T Kind)[] words)
        where T : struct
    {
        var word = node?.Text() ?? "";
        var at = Array.FindIndex(words, w => w.Word.Equals(word, StringComparison.OrdinalIgnoreCase));
        if (at < 0 && word.Length > 0)
        {
            node!.Fault("one of " + string.Join(", ", words.Select(w => w.Word)));
        }

        return at < 0 ? default : words[at].Kind;
    }

    private static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
