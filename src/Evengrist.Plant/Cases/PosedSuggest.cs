using Evengrist.Milling.Learning;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Suggesting;
using Evengrist.Quantities;

namespace Evengrist.Plant.Cases;

/// <summary>A wish for the best small set of moves, posed.</summary>
/// <param name="Wish">What is wished.</param>
public sealed record PosedSuggest(PosedWish Wish)
{
    /// <summary>What has to stay within bounds.</summary>
    public IReadOnlyList<PosedKept> Keep { get; init; } = [];

    /// <summary>What may be moved.</summary>
    public MoveRules Rules { get; init; } = new();

    /// <summary>Chance with which the wished amount and each bound on a change shall hold, above 0.5; null for the mean alone.</summary>
    public double? Sure { get; init; }

    /// <summary>How many sets to look for.</summary>
    public int Sets { get; init; } = 3;

    /// <summary>The question to a mill.</summary>
    public SuggestSpec Of(FlowSheet sheet, PosedWheat wheat, MillTuning tuning, Basis basis, IReadOnlyDictionary<string, decimal>? prices)
    {
        ArgumentNullException.ThrowIfNull(wheat);
        return new(sheet, wheat.Of(), tuning, Wish.Of(basis)) { Keep = [.. Keep.Select(k => k.Of(basis))], Rules = Rules, PricePerTonne = prices, Sure = Sure, Sets = Sets };
    }
}

/// <summary>A figure to be moved.</summary>
/// <param name="What">Which figure.</param>
/// <param name="Raise">Whether it is to rise; else to fall.</param>
public sealed record PosedWish(WishKind What, bool Raise)
{
    /// <summary>Products it is of, or the passage of a load; none for all flour and for money.</summary>
    public IReadOnlyList<string> Products { get; init; } = [];

    /// <summary>By how much, in its unit, ash and protein on the case's basis; null for as much as possible.</summary>
    public double? By { get; init; }

    internal Wish Of(Basis basis) => new(new WishFigure(What, Products), Raise, By * PosedKept.ToDry(What, basis));
}

/// <summary>A figure to be kept within bounds, on its change against now or on itself; ash and protein on the case's basis.</summary>
/// <param name="What">Which figure.</param>
public sealed record PosedKept(WishKind What)
{
    /// <summary>Products it is of, or the passage of a load; none for all flour and for money.</summary>
    public IReadOnlyList<string> Products { get; init; } = [];

    /// <summary>Least change.</summary>
    public double? LeastChange { get; init; }

    /// <summary>Most change.</summary>
    public double? MostChange { get; init; }

    /// <summary>Least value.</summary>
    public double? Least { get; init; }

    /// <summary>Most value.</summary>
    public double? Most { get; init; }

    internal static double ToDry(WishKind what, Basis basis) => what is WishKind.Ash or WishKind.Protein ? basis.ToDry : 1;

    internal KeptFigure Of(Basis basis)
    {
        var dry = ToDry(What, basis);
        return new KeptFigure(new WishFigure(What, Products)) { LeastChange = LeastChange * dry, MostChange = MostChange * dry, Least = Least * dry, Most = Most * dry };
    }
}
