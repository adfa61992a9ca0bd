using System.Diagnostics.CodeAnalysis;
using NodaTime;

namespace Evengrist.Packing.Lines;

/// <summary>What packaging is.</summary>
public enum PackagingKind
{
    /// <summary>Bags.</summary>
    Bags,

    /// <summary>Film or paper on a reel.</summary>
    Film,

    /// <summary>Labels.</summary>
    Labels,

    /// <summary>Cases or shrink-wrap round several packs.</summary>
    Cases,
}

/// <summary>One lot of packaging on a line for a time: the way from a lot of bags to the pallets packed in them.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Lot">The supplier's lot.</param>
/// <param name="Supplier">The supplier.</param>
/// <param name="Line">Code of the line.</param>
/// <param name="Product">Code of the product packed; empty where several.</param>
/// <param name="From">When it was loaded.</param>
/// <param name="Until">When it was taken off or used up, left out; null while it is on the line.</param>
/// <param name="LabelVersion">The version printed, where it is labels or printed packs; may be empty.</param>
public sealed record PackagingUse(PackagingKind Kind, string Lot, string Supplier, string Line, string Product, Instant From, Instant? Until = null, string LabelVersion = "")
{
    /// <summary>Kind of its paper.</summary>
    public const string PaperKind = "packaging-use";

    /// <summary>Whether it was on the line at a moment.</summary>
    public bool IsOnAt(Instant at) => From <= at && !(Until <= at);

    /// <summary>What is wrong with it, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Lot) || Lot.Length > 60 ? ["Packaging has the supplier's lot, of at most 60 characters."] : Array.Empty<string>(),
        .. string.IsNullOrWhiteSpace(Supplier) || Supplier.Length > 80 ? ["Say who supplied it."] : Array.Empty<string>(),
        .. string.IsNullOrWhiteSpace(Line) ? ["Say on which line it was loaded."] : Array.Empty<string>(),
        .. Until <= From ? ["It comes off the line after it was loaded."] : Array.Empty<string>(),
    ];

    /// <summary>It as JSON.</summary>
    public string ToJson() => PackingJson.Write(this);

    /// <summary>Reads one and checks it; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out PackagingUse? use, out IReadOnlyList<string> faults) => PackingJson.TryRead(json, u => u.Faults(), out use, out faults);
}
