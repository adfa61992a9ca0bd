using static Evengrist.Milling.Sheet.FlowSheetWords;

namespace Evengrist.Milling.Sheet;

/// <summary>A passage as lines of words, in the order in which stock meets what they name: for tables and for what changed between versions.</summary>
public static class PassageLines
{
    /// <summary>Every line that is to be said of the passage, each with its name.</summary>
    public static IReadOnlyList<(string Name, string Says)> Of(Passage passage)
    {
        ArgumentNullException.ThrowIfNull(passage);
        var rolls = passage.Rolls;
        (string Name, string? Says)[] set =
        [
            ("kind", passage.Kind.Words()),
            ("gap", rolls is null ? null : $"{Number(rolls.GapMicrometres)} µm"),
            ("roll length", rolls is null ? null : $"{Number(rolls.LengthMillimetres)} mm"),
            ("flutes", rolls is null ? null : rolls.IsFluted ? $"{Number(rolls.FlutesPerCentimetre)} for each cm, {rolls.Disposition.Words()}" : "smooth"),
            ("differential", rolls is null ? null : $"{Number(rolls.Differential)} : 1"),
            ("fast roll", rolls is null ? null : $"{Number(rolls.FastMetresPerSecond)} m/s"),
            ("detacher", passage.Detacher ? "yes" : null),
            ("cloth area", $"{Number(passage.ClothSquareMetres)} m²"),
            ("air", passage.AirMetresPerSecond is { } air ? $"{Number(air)} m/s" : null),
            ("what the air lifts", passage.Lifted.Count > 0 ? $"to {SpoutText.Write(passage.Lifted)}" : null),
            .. passage.Cloths.Select((c, i) => ($"cloth {i + 1}", (string?)$"{c.Words} to {SpoutText.Write(c.To)}{(string.IsNullOrWhiteSpace(c.Note) ? "" : $" ({c.Note})")}")),
            ("the rest", $"to {SpoutText.Write(passage.Rest)}"),
        ];
        return [.. set.Where(l => l.Says is not null).Select(l => (l.Name, l.Says!))];
    }
}
