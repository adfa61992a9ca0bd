using Evengrist.Quantities;

namespace Evengrist.Intake;

/// <summary>What comes of settling a load: a <see cref="Settlement"/>, or the reasons why there is none.</summary>
public abstract record SettlementOutcome;

/// <summary>A load settled, line by line.</summary>
/// <param name="Lines">Every step from gross to pay in order, each with its reason; values not rounded but the last.</param>
/// <param name="Net">What was unloaded.</param>
/// <param name="Clean">Net less dockage, to the gram.</param>
/// <param name="Settled">The mass paid for, to the gram.</param>
/// <param name="Bushels">The mass paid for in bushels of 60 lb, not rounded.</param>
/// <param name="Price">Base price plus every effect, not rounded.</param>
/// <param name="Pay">What is paid, rounded once, half up, at the smallest unit of the currency.</param>
public sealed record Settlement(
    IReadOnlyList<Figure> Lines, Mass Net, Mass Clean, Mass Settled, decimal Bushels, Price Price, Money Pay) : SettlementOutcome
{
    /// <summary>The contract and every scale with their versions, so that the ticket can be settled again.</summary>
    public required string Under { get; init; }

    /// <summary>The net at the base price, not rounded: what would be paid if nothing moved it.</summary>
    public required Money AtBase { get; init; }

    /// <summary>What moved the pay from there, by cause, not rounded; they and <see cref="AtBase"/> sum to the pay before its rounding.</summary>
    public required IReadOnlyList<PriceMove> Moves { get; init; }

    /// <summary>Taken from the mass for water above the base moisture, all dry matter kept.</summary>
    public required Mass WaterShrink { get; init; }

    /// <summary>Taken from the mass by the contract's own scales, apart from water; negative where they give.</summary>
    public required Mass ContractShrink { get; init; }
}

/// <summary>The load cannot be settled as it stands.</summary>
/// <param name="Reasons">Each a sentence that says what is missing or broken and what to do; at least one.</param>
public sealed record NotSettled(IReadOnlyList<string> Reasons) : SettlementOutcome;
