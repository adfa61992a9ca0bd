using Evengrist.Packing.NetContent;
using Evengrist.Plant.Prints;
using Evengrist.Records.Packing;
using NodaTime.Text;

namespace Evengrist.Web.Api;

/// <summary>How the packages of a line and product stand. Weights in grams, net by the empty packages weighed last where there are some.</summary>
/// <param name="Line">Code of the line.</param>
/// <param name="Product">Code of the product.</param>
/// <param name="LabelGrams">What the label declares.</param>
/// <param name="Rules">US or EU.</param>
/// <param name="LastHour">When the last hour weighed begins.</param>
/// <param name="Packages">Packages of it that passed.</param>
/// <param name="MeanGrams">Mean net weight of the last 24 hours weighed.</param>
/// <param name="DeviationGrams">Standard deviation within and between them.</param>
/// <param name="Short">Of the hour's packages: short by more than the allowed variation (US), or below T1 (EU).</param>
/// <param name="Very">Below T2 (EU).</param>
/// <param name="Passes">Whether the sample by the plan passes; null where there is none or a second one is asked for.</param>
/// <param name="TareUsedGrams">Tare the checkweigher takes off.</param>
/// <param name="TareWeighedGrams">Mean of the empty packages weighed last; null where none were.</param>
/// <param name="IsTareWrong">Whether these contradict it.</param>
/// <param name="WrongSince">Since when at the latest.</param>
/// <param name="AimGrams">The fill to aim at when packed.</param>
/// <param name="GiveawayKilogramsADay">Given away as it is, kg a day.</param>
/// <param name="AimedKilogramsADay">The same at the fill to aim at.</param>
/// <param name="GiveawayMoneyADay">Money given away a day as it is; null without a price.</param>
/// <param name="Source">Where the figures of the law come from.</param>
public sealed record ContentStandAnswer(string Line, string Product, double LabelGrams, string Rules, string LastHour, int Packages, double MeanGrams, double DeviationGrams, int Short, int Very, bool? Passes, double TareUsedGrams, double? TareWeighedGrams, bool IsTareWrong,
    string? WrongSince, double? AimGrams, double GiveawayKilogramsADay, double? AimedKilogramsADay, decimal? GiveawayMoneyADay, string Source)
{
    /// <summary>The answer of a stand.</summary>
    public static ContentStandAnswer Of(ContentStand s)
    {
        ArgumentNullException.ThrowIfNull(s);
        return new(s.Line, s.Product.Code, s.Label.Grams, s.Options.Rules.ToString(), InstantPattern.General.Format(s.Last.From), s.Last.Passed.Count, s.Spread.Mean, s.Spread.Deviation, s.Short.Short, s.Short.Very, s.Passes, s.TareUsed, s.Tare?.Mean, s.IsTareWrong,
            s.WrongSince is { } since ? InstantPattern.General.Format(since) : null, s.ToPack, s.Now.KilogramsADay, s.Aimed?.KilogramsADay, s.Now.MoneyADay, Sights.Packing.ContentAsk.SourceOf(s.Options.Rules));
    }
}

/// <summary>What became of a checkweigher's file.</summary>
/// <param name="Rows">Packages read.</param>
/// <param name="Hours">Hours of lines and products they lie in.</param>
/// <param name="Added">Packages kept.</param>
/// <param name="AlreadyKnown">Packages that were kept before and were not again.</param>
/// <param name="Questions">What was asked about.</param>
public sealed record WeighingAnswer(int Rows, int Hours, int Added, int AlreadyKnown, string[] Questions);

/// <summary>An inspection that was signed.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Inspection">Every weight and who.</param>
/// <param name="Found">What it found, line by line.</param>
public sealed record InspectionAnswer(string Number, ContentInspection Inspection, IReadOnlyList<string> Found)
{
    /// <summary>The answer of one.</summary>
    public static InspectionAnswer Of((string Number, ContentInspection Inspection, NodaTime.Instant Kept) found)
    {
        ArgumentNullException.ThrowIfNull(found.Inspection);
        return new(found.Number, found.Inspection, InspectionPdf.Said(found.Inspection));
    }
}
