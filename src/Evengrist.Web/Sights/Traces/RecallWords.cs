using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tracing.Recall;

namespace Evengrist.Web.Sights.Traces;

/// <summary>Words of a recall as pages and prints show them.</summary>
public static class RecallWords
{
    /// <summary>A net in a word or two.</summary>
    public static string Short(NetKind kind) => kind == NetKind.Union ? "cautious union" : kind.ToString().ToLowerInvariant();

    /// <summary>A net in words.</summary>
    public static string Of(NetKind kind) => kind switch
    {
        NetKind.Wide => "wide: any possible contact",
        NetKind.Union => "cautious union: over the threshold under any hypothesis",
        _ => "narrow: over the threshold with the chance asked",
    };

    /// <summary>A gap as a sentence that says what to do.</summary>
    public static string Of(StillUnknown gap, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(gap);
        var grams = gap.Grams is { } g ? $"up to {TraceWords.Tonnes(g, units)}" : "";
        var others = string.Join(", ", gap.Others.Select(o => o.Code));
        var code = gap.Place?.Code ?? "";
        return gap.Kind switch
        {
            UnknownKind.FieldBehindElevator => $"{code} is an elevator: which field it came from is unknown. Ask the elevator.",
            UnknownKind.OriginUnknown => $"{code}: {gap.Place!.Kind.Words()}, origin unknown.",
            UnknownKind.NeverProvenEmpty => $"{code} can hold {grams} and was not proven empty since: hold what leaves it, or empty it and prove it.",
            UnknownKind.GoneAstray => $"{code}: {grams} went there ({gap.Place!.Kind.Words()}) and is not followed further.",
            UnknownKind.SecondaryUse => $"{code} can have {grams}: what was made of it (mixes, rework, baking) and to whom that went, ask on the first day.",
            UnknownKind.PartLeft => $"{code} left in parts{(others.Length > 0 ? $" (to {others})" : "")}: which of its bags went where is not recorded.",
            UnknownKind.Rework => others.Length > 0 ? $"{code} ({grams}) went into {others}: what was made there since is in the lists as far as it was packed." : $"{code} ({grams}) is rework not fed back yet: hold it.",
            UnknownKind.Returned => $"{code} came back from {others}: which package it was is not recorded.",
            UnknownKind.Unexplained => $"{grams} were taken from places that by the ledger held nothing; counted as not suspect. Look for movements that are missing.",
            _ => $"{code}: {grams} under way or in the place, not packed yet.",
        };
    }

    /// <summary>A heading over gaps of a kind.</summary>
    public static string Heading(UnknownKind kind) => kind switch
    {
        UnknownKind.FieldBehindElevator => "Fields behind elevators",
        UnknownKind.OriginUnknown => "Origin unknown",
        UnknownKind.NeverProvenEmpty => "Stores not proven empty since",
        UnknownKind.GoneAstray => "Samples, waste, loss",
        UnknownKind.SecondaryUse => "Secondary users",
        UnknownKind.PartLeft => "Left in parts",
        UnknownKind.Rework => "Rework",
        UnknownKind.Returned => "Returned",
        UnknownKind.Unexplained => "Taken from nowhere",
        _ => "Not packed yet",
    };

    /// <summary>Money with two decimals, no currency.</summary>
    public static string Money(decimal cost) => cost.ToString("N2", CultureInfo.InvariantCulture);
}
