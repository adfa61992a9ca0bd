using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Mix;

/// <summary>What a property of the mix, or of its flour, may be.</summary>
/// <param name="What">The property.</param>
public sealed record MixLimit(Property What)
{
    /// <summary>The least; null for none. Usual unit of the property.</summary>
    public double? Least { get; init; }

    /// <summary>The most; null for none.</summary>
    public double? Most { get; init; }

    /// <summary>The moisture basis of a share of solids; default otherwise.</summary>
    public Basis Basis { get; init; }

    /// <summary>The chance with which each end has to be kept, from 0.5 up to, not including, 1; null where the mean has to keep it.</summary>
    public double? Confidence { get; init; }

    /// <summary>Whether it speaks of the wheat or of its flour.</summary>
    public LimitOn On { get; init; }

    /// <summary>The ends that are set, the least first.</summary>
    public IReadOnlyList<LimitEnd> Ends => [.. Least is null ? Array.Empty<LimitEnd>() : [new LimitEnd(this, true)], .. Most is null ? Array.Empty<LimitEnd>() : [new LimitEnd(this, false)]];
}

/// <summary>One end of a limit.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="IsLeast">Whether it is the least; the most otherwise.</param>
public sealed record LimitEnd(MixLimit Limit, bool IsLeast)
{
    /// <summary>Its value.</summary>
    public double Value => (IsLeast ? Limit.Least : Limit.Most)!.Value;

    /// <summary>In words: <c>protein of the wheat at least 13.2 % 12mb, 95 % sure</c>.</summary>
    public string Words => string.Create(
        CultureInfo.InvariantCulture,
        $"{Limit.What.Words()} of the {(Limit.On == LimitOn.Wheat ? "wheat" : "flour")} at {(IsLeast ? "least" : "most")} {Value:0.####} {(Readings.UnitsOf(Limit.What) is [var unit, ..] ? unit : "")}{(Limit.Basis.IsStated ? " " + Limit.Basis : "")}{(Limit.Confidence is { } sure ? FormattableString.Invariant($", {sure * 100:0.##} % sure") : "")}");

    /// <summary>The same with its value moved.</summary>
    public LimitEnd At(double value) => this with { Limit = IsLeast ? Limit with { Least = value } : Limit with { Most = value } };
}
