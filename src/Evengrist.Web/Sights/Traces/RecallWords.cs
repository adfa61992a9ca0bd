using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tracing.Recall;
using NodaTime;

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
    public static string Of(StillUnknown gap, UnitSystem units, Func<Instant, string> say)
    {
        ArgumentNullException.ThrowIfNull(gap);
        ArgumentNullException.ThrowIfNull(say);
        var grams = gap.Grams is { } g ? $"up to {TraceWords.Tonnes(g, units)}" : "";
        var others = string.Join(", ", gap.Others.Select(o => o.Code));
        var code = gap.Place?.Code ?? "";
        var whole = gap.Grams is { } all ? TraceWords.Tonnes(all, units) : "";
        var span = gap.From is not { } begin ? "" : gap.Until is { } end ? $"from {say(begin)} to {say(end)}" : $"on {say(begin)}";
        return gap.Kind switch
        {
            UnknownKind.FieldBehindElevator => $"{code} is an elevator: which field it came from is unknown. Ask the elevator.",
            UnknownKind.OriginUnknown => $"{code}: {gap.Place!.Kind.Words()}, origin unknown.",
            UnknownKind.NeverProvenEmpty => $"{code} can hold {grams} and was not proven empty since: hold what leaves it, or empty it and prove it.",
            UnknownKind.GoneAstray => $"{code}: {grams} went there ({gap.Place!.Kind.Words()}) and is not followed further.",
            UnknownKind.SecondaryUse => $"{code} can have {grams}: what was made of it (mixes, rework, baking) and to whom that went, ask on the first day.",
            UnknownKind.PartLeft => $"{code} left in parts{(others.Length > 0 ? $" (to {others})" : "")}: which of its bags went where is not recorded.",
            UnknownKind.Rework => others.Length > 0 ? $"{code} ({grams}) went into {others}: what was made there since is in the lists as far as it was packed." : $"{code} ({grams}) is rework not fed back yet: hold it.",
            UnknownKind.Returned => $"{code} ({grams}) came back from {others} {span}: the hypotheses cannot tell which package it was, only the bounds follow it. Read its label, and hold it.",
            UnknownKind.LevelNotRead => $"{code}: nobody took its level {span}, while {grams} went through; what lay there is in less out as recorded. Sound it, or look for a sounding that was not entered.",
            UnknownKind.WeightNotRead => $"{code} ({grams}): no gross and tare stand in the ledger, so its kilograms are as stated. Look for the weighbridge slip.",
            UnknownKind.FoundByCount => $"{code}: a count found {whole} more or less ({others}) {span}, while some of it lay there; when and where it came or went is not recorded. Look for a movement that was not entered.",
            UnknownKind.DoseNotRecorded => $"{code} gave {whole} {span} in hours without a dose of {others} or its like: the feeder stood, or its record is missing. Compare the hopper’s count and the feeder’s log; hold what was made then if it cannot be told.",
            UnknownKind.Flushed => gap.Place?.Kind == PlaceKind.ReworkTote ? $"{code} ({grams}) came off {others} {span}: flushed out or left over, under no lot. Hold it."
                : others.Length > 0 ? $"{whole} went from {code} to {others} {span}, flushed or swept out: not followed further. Ask where it was carried."
                : $"{code} was cleaned down {span}: what was flushed out stands in no movement. Ask who signed it where that went.",
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
        UnknownKind.LevelNotRead => "Levels not taken",
        UnknownKind.WeightNotRead => "Loads not weighed",
        UnknownKind.FoundByCount => "Found or missed at a count",
        UnknownKind.DoseNotRecorded => "Hours without a dose",
        UnknownKind.Flushed => "Flushed off a line",
        _ => "Not packed yet",
    };

    /// <summary>Money with two decimals, no currency.</summary>
    public static string Money(decimal cost) => cost.ToString("N2", CultureInfo.InvariantCulture);
}
