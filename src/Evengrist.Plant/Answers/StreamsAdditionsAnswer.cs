using Evengrist.Plant.Cases;
using Evengrist.Streams.Additions;

namespace Evengrist.Plant.Answers;

/// <summary>Additions in plain values; a part that was not asked is null.</summary>
public sealed record StreamsAdditionsAnswer(
    MaltAnswer? Malt, GlutenAnswer? Gluten, AscorbicNeed? Ascorbic, EnrichmentAnswer? Enrichment, FoundDose? Feeder, double? TonnesWithout, double? AshBefore, ReworkAnswer? Rework, string Note)
{
    /// <summary>Answers a case.</summary>
    public static StreamsAdditionsAnswer Of(StreamsAdditionsCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        var found = AdditionsModel.Of(posed.Ask, posed.Tables);
        return new StreamsAdditionsAnswer(
            found.Malt is { } malt ? new MaltAnswer(malt.Line.Slope, malt.Line.SlopeUncertainty, malt.Line.StartSeconds, malt.GramsPer100Kg, malt.StandardUncertainty, malt.Rate, malt.Remarks) : null,
            found.Gluten is { } gluten ? new GlutenAnswer(gluten.Dose.Percent, gluten.Dose.KilogramsPer100Kg, gluten.Rate) : null, found.Ascorbic,
            found.Enrichment is { } rich ? new EnrichmentAnswer(rich.Table.Market, $"{rich.Table.From:uuuu-MM-dd}", rich.Table.Source, rich.Rate, [.. rich.Dose.Nutrients.Select(n => new NutrientAnswer(n.Aim.Name, n.Aim.MilligramsPerKg, n.Own, n.NeedsGramsPerTonne, n.MilligramsPerKg, n.OverPercent))]) : null,
            found.Feeder, found.TonnesWithout, found.AshBefore,
            found.Rework is { } rework ? new ReworkAnswer(rework.Against, rework.MostPercent, [.. rework.Values.Select(v => new ReworkedAnswer(v.Of.What, v.With))], rework.Remarks) : null, AdditionCautions.Advice + " " + AdditionCautions.Law);
    }
}

/// <summary>Malt: slope in LN for 1 g in 100 kg.</summary>
public sealed record MaltAnswer(double Slope, double SlopeUncertainty, double StartSeconds, double GramsPer100Kg, double StandardUncertainty, FeedRate Rate, IReadOnlyList<string> Remarks);

/// <summary>Gluten: share of the blend, and kilograms to 100 kg of flour.</summary>
public sealed record GlutenAnswer(double PercentOfBlend, double KilogramsPer100Kg, FeedRate Rate);

/// <summary>Enrichment by a market's table.</summary>
public sealed record EnrichmentAnswer(string Market, string From, string Source, FeedRate Rate, IReadOnlyList<NutrientAnswer> Nutrients);

/// <summary>A nutrient, mg/kg.</summary>
public sealed record NutrientAnswer(string Name, double Aim, double Own, double NeedsGramsPerTonne, double ComesTo, double OverPercent);

/// <summary>Rework.</summary>
public sealed record ReworkAnswer(IReadOnlyList<string> Against, double MostPercent, IReadOnlyList<ReworkedAnswer> Values, IReadOnlyList<string> Remarks);

/// <summary>A value of the run with the rework in it.</summary>
public sealed record ReworkedAnswer(string What, double With);
