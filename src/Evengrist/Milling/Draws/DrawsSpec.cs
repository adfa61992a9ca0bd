using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Draws;

/// <summary>Mills that are to be drawn as the one there is may be, each solved whole at a setting and, where something is tried, at that too. Page: docs/model/mill-tuning.md.</summary>
/// <param name="Sheet">The flow sheet as it is set.</param>
/// <param name="Wheat">The wheat.</param>
/// <param name="Tuning">What is known of the mill.</param>
public sealed record DrawsSpec(FlowSheet Sheet, MillWheat Wheat, MillTuning Tuning)
{
    /// <summary>Fewest mills drawn: of fewer, what 5 % lie below is hardly told from the least.</summary>
    public const int Fewest = 200;

    /// <summary>Most mills drawn, so that other work does not wait for long.</summary>
    public const int Most = 100_000;

    /// <summary>Settings tried; null for none.</summary>
    public SheetChange? Try { get; init; }

    /// <summary>Wheat tried; null for the same.</summary>
    public MillWheat? OtherWheat { get; init; }

    /// <summary>Products to take together.</summary>
    public IReadOnlyList<ProductSet> Sets { get; init; } = [];

    /// <summary>Price of each product by its code, money a tonne; null for no money.</summary>
    public IReadOnlyDictionary<string, decimal>? PricePerTonne { get; init; }

    /// <summary>How many mills; <see cref="Fewest"/> to <see cref="Most"/>.</summary>
    public int Draws { get; init; } = 10_000;

    /// <summary>Start of the draws: the same seed gives the same figures, on however many cores.</summary>
    public long Seed { get; init; } = 1;

    /// <summary>Why this many cannot be drawn, a sentence that says what to do; null where they can.</summary>
    public static string? FaultOf(double draws) => draws is >= Fewest and <= Most && draws == Math.Floor(draws) ? null : FormattableString.Invariant($"{Fewest} to {Most:N0} mills can be drawn; asked for {draws:#,##0.##}.");
}
