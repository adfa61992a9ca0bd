using System.Text.Json;
using Evengrist.Ledger;

namespace Evengrist.Intake;

/// <summary>What was decided of a load, as far as the scale house must know it: where it goes, or that it goes nowhere. Kept as particulars of a decided happening.</summary>
/// <param name="Kind">Accepted, discounted, diverted, set aside or turned away.</param>
/// <param name="Bin">Code of the bin; empty where it goes to none.</param>
/// <param name="Way">Codes of pit and leg in order; empty for straight into the bin.</param>
public sealed record LoadDecision(LoadDecisionKind Kind, string Bin = "", IReadOnlyList<string>? Way = null)
{
    /// <summary>The sender's own key of the decision, so that one sent again is the same; may be empty.</summary>
    public string Key { get; init; } = "";

    /// <summary>The stage a truck is in once this was decided.</summary>
    public TruckStage Stage => Kind switch
    {
        LoadDecisionKind.SetAside => TruckStage.SetAside,
        LoadDecisionKind.TurnAway => TruckStage.TurnedAway,
        _ => TruckStage.SentTo,
    };

    /// <summary>Codes from the first stop to the bin.</summary>
    public IReadOnlyList<string> Stops => Bin.Length == 0 ? [] : [.. Way ?? [], Bin];

    /// <summary>A decision in words: <c>set aside</c>.</summary>
    public static string WordsOf(LoadDecisionKind kind) => kind switch
    {
        LoadDecisionKind.SetAside => "set aside",
        LoadDecisionKind.TurnAway => "turn away",
        _ => kind.ToString().ToLowerInvariant(),
    };

    /// <summary>Reads a decision from its words; null where they are none.</summary>
    public static LoadDecisionKind? KindOf(string? words) => Enum.GetValues<LoadDecisionKind>().Cast<LoadDecisionKind?>().FirstOrDefault(k => WordsOf(k!.Value).Equals((words ?? "").Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>The particulars as JSON: <c>{"decision":"accept","bin":"B05","way":["PIT1","LEG1"],"key":"k9"}</c>.</summary>
    public string ToJson() => JsonSerializer.Serialize(new Dictionary<string, object> { ["decision"] = WordsOf(Kind), ["bin"] = Bin, ["way"] = Way ?? [], ["key"] = Key });

    /// <summary>The decision a happening tells; null where its particulars name none.</summary>
    public static LoadDecision? Read(Happening happening)
    {
        ArgumentNullException.ThrowIfNull(happening);
        return ParticularsJson.Read(happening) is { } said && KindOf(ParticularsJson.Text(said, "decision")) is { } kind
            ? new LoadDecision(kind, ParticularsJson.Text(said, "bin"), ParticularsJson.Texts(said, "way")) { Key = ParticularsJson.Text(said, "key") }
            : null;
    }
}
