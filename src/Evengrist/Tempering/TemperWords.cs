namespace Evengrist.Tempering;

/// <summary>The words for hardness, season and marks.</summary>
public static class TemperWords
{
    /// <summary>Every hardness a wheat can have, softest first.</summary>
    public static IReadOnlyList<Hardness> Hardnesses { get; } = [.. Enum.GetValues<Hardness>().Where(h => h != Hardness.None)];

    /// <summary>Every season there is, driest first.</summary>
    public static IReadOnlyList<TemperSeason> Seasons { get; } = [.. Enum.GetValues<TemperSeason>().Where(s => s != TemperSeason.None)];

    /// <summary>The hardness in words.</summary>
    public static string Words(this Hardness hardness) => hardness switch
    {
        Hardness.Soft => "soft",
        Hardness.SemiHard => "semi-hard",
        Hardness.Hard => "hard",
        Hardness.VeryHard => "very hard, durum",
        _ => "not said",
    };

    /// <summary>The season in words.</summary>
    public static string Words(this TemperSeason season) => season switch
    {
        TemperSeason.Dry => "dry air",
        TemperSeason.Mild => "middling air",
        TemperSeason.Damp => "damp air",
        _ => "not said",
    };

    /// <summary>The act in words.</summary>
    public static string Words(this TemperAct act) => act switch
    {
        TemperAct.FillingBegun => "filling begun",
        TemperAct.FillingEnded => "filling ended",
        TemperAct.WaterSet => "water set",
        TemperAct.DrawingBegun => "drawing begun",
        TemperAct.DrawingEnded => "drawing ended",
        _ => "not said",
    };

    /// <summary>The mark in words.</summary>
    public static string Words(this TemperMark mark) => mark switch
    {
        TemperMark.Read => "read",
        TemperMark.Memory => "from memory",
        TemperMark.Derived => "derived",
        TemperMark.Ours => "ours, not tuned to a mill",
        TemperMark.Mill => "the mill's own",
        _ => "not said",
    };
}
