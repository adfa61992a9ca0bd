using NodaTime;

namespace Evengrist.Intake;

/// <summary>A stage and when it was reached.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="At">When.</param>
public sealed record StageReached(TruckStage Stage, Instant At);

/// <summary>Where a truck stands between booking and payment; reckoned from its facts and never stored.</summary>
/// <param name="Stage">The stage it is in.</param>
/// <param name="Since">When it reached it.</param>
/// <param name="Reached">Every stage reached up to now, in the order of the way; a stage that left no fact is missing.</param>
/// <param name="Bin">Code of the bin it was sent to; empty where it was sent to none.</param>
public sealed record TruckState(TruckStage Stage, Instant Since, IReadOnlyList<StageReached> Reached, string Bin = "")
{
    /// <summary>When it is first known to have been here.</summary>
    public Instant Came => Reached.Min(r => r.At);

    /// <summary>Whether it stands in the yard: it has come, and has neither left nor been weighed empty.</summary>
    public bool InYard => Stage is TruckStage.AtGate or TruckStage.Weighed or TruckStage.Probed or TruckStage.Graded or TruckStage.SentTo or TruckStage.SetAside;

    /// <summary>The stage in words: <c>at gate</c>, <c>sent to B05</c>.</summary>
    public string Words => WordsOf(Stage) + (Stage == TruckStage.SentTo ? " " + (Bin.Length > 0 ? Bin : "a bin") : "");

    /// <summary>When a stage was reached; null where it was not, or left no fact.</summary>
    public Instant? When(TruckStage stage) => Reached.FirstOrDefault(r => r.Stage == stage)?.At;

    /// <summary>A stage in words, the bin left out.</summary>
    public static string WordsOf(TruckStage stage) => stage switch
    {
        TruckStage.AtGate => "at gate",
        TruckStage.SentTo => "sent to",
        TruckStage.SetAside => "set aside",
        TruckStage.TurnedAway => "turned away",
        _ => stage.ToString().ToLowerInvariant(),
    };
}
