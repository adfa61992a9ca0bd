using Evengrist.Intake;
using Evengrist.Intake.Deciding;
using Evengrist.Ledger;

namespace Evengrist.Demo;

/// <summary>What the demonstration mill takes, and where it keeps it apart; invented.</summary>
public static class HousePolicy
{
    /// <summary>The rules.</summary>
    public static HouseRules Rules { get; } = new()
    {
        Markets = ["US"],
        Rules =
        [
            new(Property.FallingNumber, "s", LoadDecisionKind.Divert, "sprouted wheat spoils a bread mix; B07 takes it as a budgeted diluent") { Below = 300m },
            new(Property.Moisture, "%", LoadDecisionKind.SetAside, "it would not keep in a bin") { Above = 15m },
            new(Property.Don, "mg/kg", LoadDecisionKind.Divert, "kept apart until the lot is tested after cleaning") { Above = 1m, Basis = "12mb" },
        ],
    };
}
