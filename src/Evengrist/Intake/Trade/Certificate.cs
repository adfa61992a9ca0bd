using NodaTime;

namespace Evengrist.Intake.Trade;

/// <summary>A certificate that a scale or meter may be bought and sold by, for a span of dates.</summary>
/// <remarks>Each certificate is a version of the paper of its instrument; of several with one number the newest counts, so that one withdrawn early is kept again with its true end.</remarks>
public sealed record Certificate : ITradePaper
{
    /// <summary>The kind of paper it is kept under.</summary>
    public const string Kind = "certificate";

    /// <summary>The scale or instrument as readings name it: <c>scale 1</c>, <c>NIR-1</c>.</summary>
    public required string Code { get; init; }

    /// <summary>What sort of instrument: truck scale, moisture meter.</summary>
    public required string Instrument { get; init; }

    /// <summary>Number of the certificate.</summary>
    public required string Number { get; init; }

    /// <summary>Who issued it.</summary>
    public required string Body { get; init; }

    /// <summary>First day on which it is in force.</summary>
    public required LocalDate From { get; init; }

    /// <summary>Last day on which it is in force.</summary>
    public required LocalDate Until { get; init; }

    /// <summary>Whether it is in force on a day of the site's calendar.</summary>
    public bool InForceOn(LocalDate day) => day >= From && day <= Until;

    /// <summary>Days from a day to its last one: 0 on the last, negative after it.</summary>
    public int DaysLeft(LocalDate day) => Period.DaysBetween(day, Until);

    /// <inheritdoc/>
    public IReadOnlyList<string> Faults() =>
    [
        .. PaperText.Lines("A certificate", ("instrument's code", Code, true), ("kind of instrument", Instrument, true), ("number", Number, true), ("issuing body", Body, true)),
        .. Until < From ? [FormattableString.Invariant($"The certificate ends on {Until:R} before it begins on {From:R}. Are the two swapped?")] : Array.Empty<string>(),
    ];
}
