namespace Evengrist.Intake.Grading;

/// <summary>The published standards held here, each in the one edition that was read.</summary>
/// <remarks>Model: docs/model/grades.md.</remarks>
public static class Standards
{
    /// <summary>Every standard held.</summary>
    public static IReadOnlyList<GradeStandard> All { get; } = [UsWheat.Standard, CodexWheat.Standard, CanadianRedSpring.Standard];

    /// <summary>A standard by its code.</summary>
    /// <param name="code">Its code.</param>
    /// <param name="edition">The edition wanted; empty for the one held.</param>
    /// <param name="refusal">Why there is none, a sentence that says what is held; empty where there is one.</param>
    /// <returns>The standard; null where the code is unknown or another edition is held.</returns>
    public static GradeStandard? Find(string code, string edition, out string refusal)
    {
        ArgumentNullException.ThrowIfNull(code);
        ArgumentNullException.ThrowIfNull(edition);
        var held = All.FirstOrDefault(s => s.Code.Equals(code.Trim(), StringComparison.OrdinalIgnoreCase));
        if (held is null)
        {
            refusal = $"No standard \"{code}\" is held here. Held are: {string.Join(", ", All.Select(s => $"{s.Code} ({s.Named})"))}.";
            return null;
        }

        if (edition.Trim().Length > 0 && !edition.Trim().Equals(held.Edition, StringComparison.OrdinalIgnoreCase))
        {
            refusal = $"{held.Title} is held in the edition {held.Edition} and no other; the edition \"{edition.Trim()}\" was not read and is not guessed. Ask for {held.Edition}, or get the text of the other and have it put in.";
            return null;
        }

        refusal = "";
        return held;
    }
}
