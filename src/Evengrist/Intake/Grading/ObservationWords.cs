namespace Evengrist.Intake.Grading;

/// <summary>Reads what people write of an odour or a condition as what a standard asks for.</summary>
public static class ObservationWords
{
    // "Treated seed" is no treated wheat of the rule: it is dressed with poison, and stays a word for people.
    private static readonly Dictionary<string, GradeObservation> Known = new(StringComparer.OrdinalIgnoreCase)
    {
        ["musty"] = GradeObservation.Musty, ["sour"] = GradeObservation.Sour, ["foreign odour"] = GradeObservation.ForeignOdour, ["objectionable odour"] = GradeObservation.ForeignOdour,
        ["smut odour"] = GradeObservation.SmutOdour, ["odour of smut"] = GradeObservation.SmutOdour, ["garlic odour"] = GradeObservation.GarlicOdour, ["heating"] = GradeObservation.Heating,
        ["distinctly low quality"] = GradeObservation.LowQuality, ["large objects"] = GradeObservation.LargeObject, ["treated"] = GradeObservation.Treated, ["mites"] = GradeObservation.Mites,
    };

    /// <summary>What a word or short phrase means; null where no standard held here asks for it.</summary>
    public static GradeObservation? Read(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        var clean = word.Trim();
        return Known.TryGetValue(clean, out var known) ? known
            : Enum.GetValues<GradeObservation>().Where(o => o != GradeObservation.None && o.Words().Equals(clean, StringComparison.OrdinalIgnoreCase)).Select(o => (GradeObservation?)o).FirstOrDefault();
    }
}
