using Evengrist.Tempering;

namespace Evengrist.Plant.Cases;

/// <summary>Wheat to be tempered, posed in JSON.</summary>
/// <param name="Spec">The wheat, its aim and its stages.</param>
/// <param name="Advice">The aim from hardness and season; null where the aim was given.</param>
/// <param name="Rest">The rest, carried to the wheat's temperature; null where none was asked for.</param>
/// <param name="Window">When the wheat of a bin has rested; null where no filling was given.</param>
public sealed record TemperWaterCase(TemperWaterSpec Spec, AimAdvice? Advice, RestCorrection? Rest, RestWindow? Window)
{
    private static readonly string[] Members =
        ["tonnesPerHour", "tonnes", "moisturePercent", "moistureUncertainty", "aimPercent", "hardness", "season", "flourCeilingPercent", "earlierStages", "evaporationPercent", "waterCelsius", "waterUncertaintyPercent", "rest", "fill", "aims"];

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "tonnesPerHour": clean wheat as it lies before water, t/h; "tonnes": the same for a whole bin; one of them or both
          "moisturePercent": before water, % wet basis, 5 to 30; "moistureUncertainty"?: one standard uncertainty in points, 0.15 [from memory] when left out
          "aimPercent": at first break, % wet basis; or
          "hardness": "soft" | "semiHard" | "hard" | "veryHard", "season": "dry" | "mild" | "damp", "flourCeilingPercent"?: most moisture of the flour
          "earlierStages"?: [ moisture after each stage before the last, % wet basis, up to 3 ]
          "evaporationPercent"?: water lost to first break, % of the tempered mass, 0 to 5; 0 when left out
          "waterCelsius"?: of the water, for its litres; 1 kg to the litre when left out; "waterUncertaintyPercent"?: of the water, 2 [ours] when left out
          "rest"?: { "hours"?: the middle of what is usual for the hardness when left out, "atCelsius"?: where it holds, 25 when left out, "wheatCelsius": 0 to 50 }
          "fill"?: { "from": when the first wheat ran into the bin, "until": when the last did }   with rest, hours then those of rest at the wheat's temperature, the longer of both laws
          "aims"?: a table of your own as the mill keeps it: { "aims": [ ... ], "classes": { "HW": "Hard" ... } }
        }
        """,
        """
        { "tonnesPerHour": 17.5, "moisturePercent": 11.2, "hardness": "hard", "season": "damp", "earlierStages": [14.5], "rest": { "hours": 18, "wheatCelsius": 15 },
          "fill": { "from": "2026-01-13T22:10-06:00", "until": "2026-01-14T04:10-06:00" } }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<TemperWaterCase> Read(Stream stream) => JsonCase.Read<TemperWaterCase>(stream, Of);

    private static TemperWaterCase? Of(JsonNode root, List<Fault> faults)
    {
        if (!root.IsObject(Members))
        {
            return null;
        }

        var moisture = EmcCase.Double(root, "moisturePercent", 5, 30);
        var aim = AimOf(root);
        var advice = root.Has("aimPercent") ? null : Advised(root, aim);
        if (root.Has("aimPercent") && (root.Has("season") || root.Has("flourCeilingPercent")))
        {
            root.Fault("either aimPercent, or hardness and season with flourCeilingPercent: an aim that is given is not changed by them");
        }

        if (!root.Has("tonnesPerHour") && !root.Has("tonnes"))
        {
            root.Fault("how much wheat: tonnesPerHour, tonnes, or both");
        }

        var wanted = root.Has("aimPercent") ? EmcCase.Double(root, "aimPercent", 5, 30) : advice?.Percent;
        double[] stages = [.. (root.Member("earlierStages", required: false)?.Items(3) ?? []).Select(s => (double?)s.Number(5, 30)).OfType<double>()];
        var spec = new TemperWaterSpec(moisture ?? 0, wanted ?? 0)
        {
            TonnesPerHour = EmcCase.Double(root, "tonnesPerHour", 0.001m, 1000, required: false), Tonnes = EmcCase.Double(root, "tonnes", 0.001m, 100_000, required: false),
            EarlierStages = stages, EvaporationPercent = EmcCase.Double(root, "evaporationPercent", 0, 5, required: false) ?? 0, WaterCelsius = EmcCase.Double(root, "waterCelsius", 0, 60, required: false),
        };
        spec = spec with
        {
            MoistureUncertainty = EmcCase.Double(root, "moistureUncertainty", 0, 2, required: false) ?? spec.MoistureUncertainty,
            WaterUncertaintyPercent = EmcCase.Double(root, "waterUncertaintyPercent", 0, 50, required: false) ?? spec.WaterUncertaintyPercent,
        };
        var rest = RestOf(root, aim);
        var window = WindowOf(root, rest);
        return faults.Count > 0 ? null : new TemperWaterCase(spec, advice, rest, window);
    }

    private static TemperAim? AimOf(JsonNode root)
    {
        var table = TemperAims.Start;
        if (root.Member("aims", required: false) is { } node && TemperAimsJson.TryRead(node.Raw, out var own, out var wrong) is var read)
        {
            foreach (var fault in wrong)
            {
                node.Fault($"aims that can be. {fault}");
            }

            table = read ? own! : table;
        }

        if (Named(root, "hardness", TemperWords.Hardnesses, required: !root.Has("aimPercent")) is not { } hardness || hardness == Hardness.None)
        {
            return null;
        }

        if (table.Of(hardness) is not { } aim)
        {
            root.Member("hardness")!.Fault("a hardness that the aims have a line for");
            return null;
        }

        return aim;
    }

    private static AimAdvice? Advised(JsonNode root, TemperAim? aim)
    {
        var season = Named(root, "season", TemperWords.Seasons, required: true);
        var ceiling = EmcCase.Double(root, "flourCeilingPercent", 10, 20, required: false);
        return aim is null || season is null ? null : AimAdvice.Of(aim, season.Value, ceiling);
    }

    private static RestCorrection? RestOf(JsonNode root, TemperAim? aim)
    {
        if (root.Member("rest", required: false) is not { } node || !node.IsObject("hours", "atCelsius", "wheatCelsius"))
        {
            return null;
        }

        var hours = node.Has("hours") || aim is null ? EmcCase.Double(node, "hours", 0, 72) : aim.Hours;
        var at = EmcCase.Double(node, "atCelsius", 0, 50, required: false) ?? DiffusionLaw.ReferenceCelsius;
        var wheat = EmcCase.Double(node, "wheatCelsius", 0, 50);
        return hours is { } h && wheat is { } c ? RestCorrection.Of(h, at, c) : null;
    }

    private static RestWindow? WindowOf(JsonNode root, RestCorrection? rest)
    {
        if (root.Member("fill", required: false) is not { } node || !node.IsObject("from", "until"))
        {
            return null;
        }

        var (from, until) = (node.Time("from"), node.Time("until"));
        if (!root.Has("rest"))
        {
            node.Fault("a rest beside it: how long the wheat is to lie");
        }
        else if (until < from)
        {
            node.Fault("an end that is not before the beginning");
        }

        return from is { } first && until is { } last && last >= first && rest is not null ? new RestWindow(first, last, NodaTime.Duration.FromHours(rest.LongerHours)) : null;
    }

    // A name in camel case, as in semiHard.
    private static T? Named<T>(JsonNode root, string name, IReadOnlyList<T> all, bool required)
        where T : struct, Enum
    {
        if (root.Member(name, required) is not { } node)
        {
            return null;
        }

        var text = node.Text();
        foreach (var each in all.Where(a => Camel(a) == text))
        {
            return each;
        }

        node.Fault($"one of {string.Join(", ", all.Select(Camel))}");
        return null;
    }

    private static string Camel<T>(T value)
        where T : struct, Enum => value.ToString() is var name ? char.ToLowerInvariant(name[0]) + name[1..] : "";
}
