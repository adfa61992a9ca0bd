using Evengrist.Intake.Grading;

namespace Evengrist.Plant.Cases;

/// <summary>A sample posed in JSON with the standard it is to be graded by.</summary>
/// <param name="Standard">The standard, or a mill's own class as one.</param>
/// <param name="Sample">What was found; free of faults before the standard.</param>
public sealed record GradeCase(GradeStandard Standard, GradeSample Sample)
{
    private static readonly (string Word, GradeObservation Seen)[] Observations =
        [.. Enum.GetValues<GradeObservation>().Where(o => o != GradeObservation.None).Select(o => (JsonWord(o.ToString()), o))];

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        $$"""
        {
          "standard": {{string.Join(" | ", Standards.All.Select(s => $"\"{s.Code}\""))}}, "edition": "2015" (may be left out; another than the one held is refused)
             or "houseClass": { "code", "version", "name", "bands": [ best first ], "limits": [ { "factor": "Protein" ..., "unit", "basis": "12mb", "decimals", "atLeast" or "atMost": [ one for each band ] } ... ] }
          "class": "HRW" ... or a subclass or "Mixed", "leading": "HRW" (Mixed alone)
             or "classes": { "HRW": per cent, "HRS": per cent ... }, from which class, other and contrasting classes follow
          "findings": { "test weight [lb/bu]": number, "damaged [%]": number, "dockage [%]": number, "glass [/kg]": count ... the headings of an intake file,
                        each per cent on the basis of the standard }
          "weighings": { "asReceived": g, "dockage": g, "throughSieve": g, "sieved": g, "picked": { "damaged [%]": { "g": g, "of": g } ... } } (in place of percentages)
          "observed": [ {{string.Join(", ", Observations.Select(o => $"\"{o.Word}\""))}} ] (empty: looked, nothing there; left out: nobody looked)
          "notLookedFor": "missing" | "none" (counts and odours not looked for: the grade is refused, or they are taken as none and listed)
          "defects": "recordedParts" | "unroundedSum" (how total defects are added; the text does not say)
        }
        """,
        """
        { "standard": "us-wheat", "edition": "2015", "class": "HRW",
          "findings": { "test weight [lb/bu]": 59.94, "heat-damaged [%]": 0, "damaged [%]": 1.2, "foreign material [%]": 0.3, "shrunken and broken [%]": 1.4,
                        "contrasting classes [%]": 0, "other classes [%]": 0.5, "dockage [%]": 0.65 },
          "observed": [], "notLookedFor": "none" }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<GradeCase> Read(Stream stream) => JsonCase.Read<GradeCase>(stream, (root, faults) => Of(root, faults));

    /// <summary>The word of an observation in a case.</summary>
    public static string Word(GradeObservation observed) => Observations.First(o => o.Seen == observed).Word;

    private static GradeCase? Of(JsonNode root, List<Fault> faults)
    {
        if (!root.IsObject("standard", "edition", "houseClass", "class", "leading", "classes", "findings", "weighings", "observed", "notLookedFor", "defects"))
        {
            return null;
        }

        var standard = StandardOf(root);
        var sample = new GradeSample
        {
            Class = root.Text("class", "").Trim(),
            Leading = root.Text("leading", "").Trim(),
            Composition = [.. (root.Member("classes", required: false)?.Members() ?? []).Select(m => new ClassShare(m.Name.Trim(), m.Value.Number(0m, 100m) ?? 0m))],
            Findings = PosedFindings.Read(root.Member("findings", required: !root.Has("weighings"))),
            Weighings = root.Member("weighings", required: false) is { } weighings ? WeighingsOf(weighings) : null,
            Observed = root.Member("observed", required: false)?.Items(20).Select(Observed).Where(o => o != GradeObservation.None).ToArray(),
            TakeAsNone = Choice(root, "notLookedFor", "missing", "none") == "none",
            Sums = Choice(root, "defects", "recordedParts", "unroundedSum") == "unroundedSum" ? SumPolicy.UnroundedSum : SumPolicy.RecordedParts,
        };
        if (standard is null || faults.Count > 0)
        {
            return null;
        }

        faults.AddRange(sample.Faults(standard).Select(f => Fault.AtPath("$." + f.Part, ReadAt(sample, f.Part), $"a sample that can be. {f.Sentence}")));
        return new GradeCase(standard, sample);
    }

    private static GradeStandard? StandardOf(JsonNode root)
    {
        if (root.Has("standard") == root.Has("houseClass"))
        {
            root.Fault("one of standard and houseClass");
            return null;
        }

        if (root.Member("houseClass", required: false) is { } house)
        {
            if (HouseClassJson.TryRead(house.Raw, out var read, out var wrong))
            {
                return read.ToStandard();
            }

            foreach (var fault in wrong)
            {
                house.Fault($"a house class that can be. {fault}");
            }

            return null;
        }

        var (code, edition) = (root.Text("standard"), root.Text("edition", ""));
        var standard = Standards.Find(code, edition, out var refusal);
        if (standard is null)
        {
            (Standards.Find(code, "", out _) is null ? root.Member("standard") : root.Member("edition"))!.Fault($"a standard that is held. {refusal}");
        }

        return standard;
    }

    private static SampleWeighings? WeighingsOf(JsonNode node)
    {
        if (!node.IsObject("asReceived", "dockage", "throughSieve", "sieved", "picked"))
        {
            return null;
        }

        decimal? Grams(string name, bool required = false) => node.Member(name, required)?.Number(0m, 100_000m);
        return new(Grams("asReceived", required: true) ?? 0m, Grams("dockage", required: true) ?? 0m)
        {
            ThroughSieve = Grams("throughSieve"), Sieved = Grams("sieved"),
            Picked = [.. (node.Member("picked", required: false)?.Members() ?? []).Select(m => PickedOf(m.Name, m.Value)).OfType<Picked>()],
        };
    }

    private static Picked? PickedOf(string heading, JsonNode node) =>
        node.IsObject("g", "of") && PosedFindings.ColumnOf(heading, node) is { } known && node.Member("g")?.Number(0m, 100_000m) is { } grams && node.Member("of")?.Number(0m, 100_000m) is { } portion
            ? new(known.Column.What, grams, portion) : null;

    private static GradeObservation Observed(JsonNode node)
    {
        var word = node.Text();
        var known = Observations.FirstOrDefault(o => o.Word.Equals(word, StringComparison.OrdinalIgnoreCase)).Seen;
        if (known == GradeObservation.None && word.Length > 0)
        {
            node.Fault($"something noticed: {string.Join(", ", Observations.Select(o => o.Word))}");
        }

        return known;
    }

    private static string Choice(JsonNode root, string name, params string[] words)
    {
        var word = root.Text(name, words[0]);
        if (!words.Contains(word) && word.Length > 0)
        {
            root.Member(name)!.Fault($"one of {string.Join(", ", words)}");
        }

        return word;
    }

    private static string ReadAt(GradeSample sample, string part) => part switch { "class" => sample.Class, "leading" => sample.Leading, _ => "an object" };

    private static string JsonWord(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
