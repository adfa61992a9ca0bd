using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Evengrist.Intake;
using Evengrist.Quantities;
using Evengrist.Season.Futures;
using NodaTime;

namespace Evengrist.Season.Terms;

/// <summary>What a mill plans its crop year by, apart from what the ledger says lies there: demand, limits, prices, offers, what is to come. A paper, versioned.</summary>
/// <remarks>Everything goes by dates, so that one version serves for every day of the year: <see cref="SpecFromTerms"/> cuts it into periods. Page: docs/model/season.md.</remarks>
public sealed record SeasonTerms
{
    /// <summary>Kind of the paper.</summary>
    public const string Kind = "season-terms";

    /// <summary>Code of the paper: a mill has one.</summary>
    public const string Code = "SITE";

    /// <summary>Last day of the crop year.</summary>
    public required LocalDate End { get; init; }

    /// <summary>Currency of every price, three letters.</summary>
    public required string Currency { get; init; }

    /// <summary>What it costs to keep a t for a week, 0 or more.</summary>
    public double StoragePerTonneWeek { get; init; }

    /// <summary>The mill units.</summary>
    public required IReadOnlyList<UnitTerms> Units { get; init; }

    /// <summary>The flours.</summary>
    public required IReadOnlyList<FlourTerms> Flours { get; init; }

    /// <summary>Wheats that can be bought.</summary>
    public IReadOnlyList<OfferTerms> Offers { get; init; } = [];

    /// <summary>Wheat that is expected.</summary>
    public IReadOnlyList<ArrivalTerms> Arrivals { get; init; } = [];

    /// <summary>What is to be left at the end.</summary>
    public IReadOnlyList<CarryOut> CarryOut { get; init; } = [];

    /// <summary>What wheat left at the end is worth, by class; a class that is missing is worth nothing.</summary>
    public IReadOnlyList<EndWorth> EndWorths { get; init; } = [];

    /// <summary>What classes are taken to be where nothing was read.</summary>
    public IReadOnlyList<UsualTerms> Usual { get; init; } = [];

    /// <summary>What thin kernels cost in extraction; null for no such rule.</summary>
    public ExtractionRule? Extraction { get; init; }

    /// <summary>By how much readings of a property may differ from the truth.</summary>
    public IReadOnlyList<InstrumentSpread> Instruments { get; init; } = [];

    /// <summary>By how much a flour may be off a limit and still count as on target in a promise; nothing for a property that is not named.</summary>
    public IReadOnlyList<LimitTolerance> Tolerances { get; init; } = [];

    /// <summary>The probability a promise is stated at, above 0 and below 1.</summary>
    public double Stated { get; init; } = 0.85;

    /// <summary>Where the figures come from; shown beside them.</summary>
    public string Source { get; init; } = "";

    /// <summary>What cannot be, each a sentence; empty where all can.</summary>
    public IReadOnlyList<string> Faults() => TermsFaults.Of(this);

    /// <summary>A wheat as the terms see it: what was not read put in, its worth at the end, its extraction.</summary>
    public SeasonWheat Seen(SeasonWheat wheat)
    {
        var filled = UsualTerms.Fill(wheat, Usual);
        return filled with { EndValuePerTonne = EndWorths.FirstOrDefault(w => w.WheatClass == filled.WheatClass)?.PerTonne ?? 0, ExtractionPoints = Extraction?.PointsOf(filled) ?? 0 };
    }

    /// <summary>The terms as JSON.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, TermsJson.Options);

    /// <summary>Reads terms and checks them.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out SeasonTerms? terms, out IReadOnlyList<string> faults)
    {
        return StrictJson.TryRead(json, TermsJson.Options, read => read?.Faults() ?? ["The terms are an object; read null."], out terms, out faults);
    }
}
