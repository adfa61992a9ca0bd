using Evengrist.Bins.Storage;
using Evengrist.Web.Face;

namespace Evengrist.Web.Sights.Storage;

/// <summary>Levels of risk as a shape and a word.</summary>
public static class RiskWords
{
    /// <summary>The shape; null where nothing presses: then no shape is shown, because nothing has been cleared.</summary>
    public static StateKind? Kind(this RiskLevel level) => level switch { RiskLevel.Act => StateKind.Stop, RiskLevel.Look => StateKind.Watch, _ => null };

    /// <summary>The word.</summary>
    public static string Word(this RiskLevel level) => level switch { RiskLevel.Act => "act", RiskLevel.Look => "look", RiskLevel.Note => "note", _ => "nothing found" };

    /// <summary>Heights, or the name of a layer.</summary>
    public static string Where(this StoredLayer layer)
    {
        ArgumentNullException.ThrowIfNull(layer);
        return layer.Metres is { } m ? m.To - m.From < 0.1 ? FormattableString.Invariant($"{m.From:0.00} to {m.To:0.00} m") : FormattableString.Invariant($"{m.From:0.0} to {m.To:0.0} m") : layer.Name.Length > 0 ? layer.Name : "no height known";
    }
}
