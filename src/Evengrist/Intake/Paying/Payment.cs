using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake.Paying;

/// <summary>A payment for a load: the particulars of a <see cref="HappeningKind.Settled"/> fact.</summary>
public sealed record Payment
{
    /// <summary>What it is.</summary>
    public required PaymentKind Kind { get; init; }

    /// <summary>The amount in <see cref="Currency"/>, rounded; negative where it was got back.</summary>
    public required decimal Amount { get; init; }

    /// <summary>Three letters.</summary>
    public required string Currency { get; init; }

    /// <summary>What the load was worth in all as it was reckoned then; null for an advance by the tonne on a load that could not be settled yet.</summary>
    public decimal? Pay { get; init; }

    /// <summary>The contract version and its scales: <c>HW-2025 v1, HRW-FIFTHS v1</c>; empty where the load could not be settled yet.</summary>
    public string Under { get; init; } = "";

    /// <summary>How the amount came about: <c>70 % of the provisional pay</c>.</summary>
    public required string Rule { get; init; }

    /// <summary>The net it was reckoned on, kg.</summary>
    public required decimal NetKg { get; init; }

    /// <summary>The readings it was reckoned from.</summary>
    public required IReadOnlyList<FactUsed> From { get; init; }

    /// <summary>Who paid it out.</summary>
    public required string By { get; init; }

    /// <summary>The amount as money.</summary>
    public Money Money => Money.Of(Amount, Currency);

    /// <summary>The text of the fact: words for people, particulars below.</summary>
    public string ToText() => Happening.TextOf(
        FormattableString.Invariant($"{Words(Kind)} {Money}: {Rule}"), JsonSerializer.Serialize(this, Compact));

    /// <summary>Reads the particulars of a Settled fact; false where there are none or they cannot be read.</summary>
    public static bool TryRead(Happening happening, [NotNullWhen(true)] out Payment? payment)
    {
        ArgumentNullException.ThrowIfNull(happening);
        payment = null;
        if (happening.Kind != HappeningKind.Settled || happening.Particulars.Length == 0)
        {
            return false;
        }

        try
        {
            payment = JsonSerializer.Deserialize<Payment>(happening.Particulars, Compact) is { Kind: not PaymentKind.None, Currency.Length: 3 } read && read.Currency.All(char.IsAsciiLetterUpper) ? read : null;
        }
        catch (JsonException)
        {
            // Written by another program: it stands on the page as words and counts for no money.
        }

        return payment is not null;
    }

    /// <summary>The kind in words: <c>advance</c>, <c>final settlement</c>, <c>difference</c>.</summary>
    public static string Words(PaymentKind kind) => kind switch { PaymentKind.Advance => "advance", PaymentKind.Final => "final settlement", _ => "difference" };

    private static readonly JsonSerializerOptions Compact = new(TermsJson.Options) { WriteIndented = false };
}
