using System.Diagnostics.CodeAnalysis;
using Evengrist.Packing.Products;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Packing.Orders;

/// <summary>What a customer wants packed, and by when.</summary>
/// <param name="Number">The order's number, unique; of the customer or the mill.</param>
/// <param name="Customer">Code of the customer in the ledger; empty for the mill's own warehouse.</param>
/// <param name="Product">Code of the product.</param>
/// <param name="Quantity">How much, above 0.</param>
/// <param name="Unit">What the quantity counts.</param>
/// <param name="Due">When it should be packed.</param>
/// <param name="Taken">When it was taken: what was packed before is not for it unless <paramref name="FromStock"/>.</param>
/// <param name="FromStock">Whether what stood packed before it was taken may serve it.</param>
public sealed record PackingOrder(string Number, string Customer, string Product, decimal Quantity, OrderUnit Unit, Instant Due, Instant Taken, bool FromStock = false)
{
    /// <summary>Kind of its paper.</summary>
    public const string PaperKind = "packing-order";

    /// <summary>Highest priority: being late counts so many times as much as at 1 [ours].</summary>
    public const int MostPriority = 9;

    private const int LongestNumber = 40, LongestWords = 300;
    private const long MostGrams = 10_000_000_000;

    /// <summary>How much being late counts, 1 to <see cref="MostPriority"/>; 1 for an ordinary order.</summary>
    public int Priority { get; init; } = 1;

    /// <summary>What else is agreed; may be empty.</summary>
    public string Remark { get; init; } = "";

    /// <summary>Why this version differs from the one before; empty for the first.</summary>
    public string Reason { get; init; } = "";

    /// <summary>Whether it was called off, for <see cref="Reason"/>.</summary>
    public bool IsCancelled { get; init; }

    /// <summary>Net mass wanted: packs times their net mass; kilograms of a packed product are made up to whole packs. Zero where the sum cannot be made.</summary>
    public Mass Wanted(Product product)
    {
        ArgumentNullException.ThrowIfNull(product);
        if (Unit == OrderUnit.Packs)
        {
            return Mass.FromGrams((long)Math.Min(Quantity * product.PackGrams, MostGrams));
        }

        var grams = (long)Math.Min(Quantity * 1000, MostGrams);
        return Mass.FromGrams(product.PackGrams == 0 ? grams : (grams + product.PackGrams - 1) / product.PackGrams * product.PackGrams);
    }

    /// <summary>What is wrong with it, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Number) || Number.Length > LongestNumber || Number.Any(c => char.IsControl(c) || c is '/' or '?' or '#') ? [$"An order has a number of at most {LongestNumber} characters, without / ? #."] : Array.Empty<string>(),
        .. string.IsNullOrWhiteSpace(Product) ? ["Say which product is ordered."] : Array.Empty<string>(),
        .. Quantity is > 0 and <= 10_000_000 ? Array.Empty<string>() : [FormattableString.Invariant($"The quantity is above 0 and at most 10,000,000; read {Quantity}.")],
        .. Unit == OrderUnit.Packs && Quantity != Math.Floor(Quantity) ? [FormattableString.Invariant($"Packs are whole; read {Quantity}.")] : Array.Empty<string>(),
        .. Priority is >= 1 and <= MostPriority ? Array.Empty<string>() : [$"A priority is 1 to {MostPriority}; read {Priority}."],
        .. Remark.Length > LongestWords || Reason.Length > LongestWords ? [$"A remark or reason has at most {LongestWords} characters."] : Array.Empty<string>(),
        .. IsCancelled && string.IsNullOrWhiteSpace(Reason) ? ["Say why it is called off."] : Array.Empty<string>(),
    ];

    /// <summary>What is wrong with it beside the mill's products and customers, each a sentence that says what to do.</summary>
    /// <param name="product">The product of its code; null where there is none.</param>
    /// <param name="customerIsKnown">Whether the ledger has the customer.</param>
    public IReadOnlyList<string> Against(Product? product, bool customerIsKnown) =>
    [
        .. product is null ? [$"There is no product {Product}: keep it among the products first, or mend the code."] : Array.Empty<string>(),
        .. product is { Kind: PackKind.Bulk } && Unit == OrderUnit.Packs ? [$"{product.Code} is loose: order it in kilograms."] : Array.Empty<string>(),
        .. product is not null && Quantity > 0 && Wanted(product) == Mass.Zero ? ["It comes to less than a gram."] : Array.Empty<string>(),
        .. Customer.Length == 0 || customerIsKnown ? Array.Empty<string>() : [$"There is no customer {Customer} in the ledger: enter the customer there first, or leave it empty for the mill's own warehouse."],
    ];

    /// <summary>What a person should look at though it can be taken, each a sentence; empty where nothing is.</summary>
    /// <param name="product">The product of its code.</param>
    /// <param name="now">The present moment.</param>
    public IReadOnlyList<string> Warnings(Product product, Instant now)
    {
        ArgumentNullException.ThrowIfNull(product);
        return
        [
            .. product.Label is null ? [$"{product.Code} has no approved label: no run of it is planned until a named person approves one."] : Array.Empty<string>(),
            .. Due < now ? ["It is due in the past: it counts as late from the start of the plan."] : Array.Empty<string>(),
        ];
    }

    /// <summary>It as JSON.</summary>
    public string ToJson() => PackingJson.Write(this);

    /// <summary>Reads one and checks it; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out PackingOrder? order, out IReadOnlyList<string> faults) => PackingJson.TryRead(json, o => o.Faults(), out order, out faults);
}
