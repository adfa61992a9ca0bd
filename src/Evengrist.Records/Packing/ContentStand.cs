using Evengrist.Packing.NetContent;
using Evengrist.Packing.Products;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>How the packages of one line and product stand against their label, by the last hour weighed and the days before it. Model: docs/model/net-content.md.</summary>
/// <param name="Line">Code of the line.</param>
/// <param name="Product">The product.</param>
/// <param name="Label">What its label declares.</param>
/// <param name="Hours">Figures of the hours looked at, the first first; net by the tare that the checkweigher took off.</param>
/// <param name="Last">Every package of the last hour.</param>
/// <param name="Tares">Empty packages weighed by hand by then, the first first.</param>
/// <param name="Options">By which rules.</param>
public sealed record ContentStand(string Line, Product Product, NetLabel Label, IReadOnlyList<HourOfWeights> Hours, WeighedHour Last, IReadOnlyList<(TareSample Sample, string By)> Tares, ContentOptions Options)
{
    /// <summary>Days looked back.</summary>
    public const int Days = 21;

    /// <summary>Hours in which the line packed it, up to the last, from which the spread is taken.</summary>
    public const int SpreadHours = 24;

    /// <summary>Every line and product with weights in the days before a moment, by line and product.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="options">By which rules.</param>
    /// <param name="asOf">The moment.</param>
    public static IReadOnlyList<ContentStand> All(Mill mill, ContentOptions options, Instant asOf)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(options);
        var (products, tares) = (Products.Newest(mill).ToDictionary(p => p.Product.Code, p => p.Product, StringComparer.OrdinalIgnoreCase), TareSamples.Of(mill, null, asOf).ToLookup(t => t.Sample.Product, StringComparer.OrdinalIgnoreCase));
        return [.. WeighedHours.Within(mill, asOf - Duration.FromDays(Days), asOf).Where(h => products.ContainsKey(h.Key.Product)).OrderBy(h => h.Key.Line, StringComparer.Ordinal).ThenBy(h => h.Key.Product, StringComparer.Ordinal)
            .Select(h => new ContentStand(h.Key.Line, products[h.Key.Product], LabelOf(products[h.Key.Product], options.Rules), h.Value, WeighedHours.Find(mill, h.Key.Line, h.Key.Product, h.Value[^1].From)!, [.. tares[h.Key.Product]], options))];
    }

    /// <summary>The label of a product. In the United States one of whole pounds, to the gram, counts as one in pounds.</summary>
    public static NetLabel LabelOf(Product product, NetRules rules)
    {
        ArgumentNullException.ThrowIfNull(product);
        var pounds = Math.Round(product.PackGrams / (double)Quantities.Mass.GramsPerPound);
        return rules == NetRules.US && pounds >= 1 && Math.Abs(NetLabel.OfPounds(pounds).Grams - product.PackGrams) < 1 ? NetLabel.OfPounds(pounds) : NetLabel.OfGrams(product.PackGrams);
    }

    /// <summary>The newest empty packages weighed by hand; null where none were.</summary>
    public TareSample? Tare => Tares.Count > 0 ? Tares[^1].Sample : null;

    /// <summary>Tare the checkweigher took off in the last hour, grams.</summary>
    public double TareUsed => Hours[^1].Tare;

    /// <summary>By how much every net weight of the last hour is corrected for the tare, grams; 0 where no empty package was weighed.</summary>
    public double Correction => Tare?.Correction(TareUsed) ?? 0;

    /// <summary>Whether the tare taken off is contradicted by the empty packages weighed last.</summary>
    public bool IsTareWrong => Tare?.Contradicts(TareUsed) == true;

    /// <summary>The tare that net weights of an hour are corrected to: of the empty packages weighed last before its end; null where none were.</summary>
    /// <param name="hour">The hour.</param>
    public TareSample? TareAt(HourOfWeights hour)
    {
        ArgumentNullException.ThrowIfNull(hour);
        return Tares.Select(t => t.Sample).LastOrDefault(s => s.At < hour.From + Duration.FromHours(1));
    }

    /// <summary>Mean net weight of an hour by the tare weighed last before its end, grams.</summary>
    /// <param name="hour">The hour.</param>
    public double Corrected(HourOfWeights hour)
    {
        ArgumentNullException.ThrowIfNull(hour);
        return hour.Mean + (TareAt(hour)?.Correction(hour.Tare) ?? 0);
    }

    /// <summary>When the tare that is contradicted now was taken off first in the hours looked at, without a break; null where it is not contradicted.</summary>
    public Instant? WrongSince => IsTareWrong ? Hours.Reverse().TakeWhile(h => TareAt(h)?.Contradicts(h.Tare) == true).Last().From : null;

    /// <summary>Net weights of the last hour's packages that passed, corrected, grams.</summary>
    public IReadOnlyList<double> Net => [.. Last.Passed.Select(p => p.NetGrams + Correction)];

    /// <summary>Packages in the lot: as asked for, or those of the last hour.</summary>
    public int Lot => Options.Lot ?? Last.Passed.Count;

    /// <summary>Packages of the sample that is drawn from the last hour; null where the hour has too few, or no plan is stated for so many.</summary>
    public IReadOnlyList<WeighedPackage>? Sample => Lot < 2 || (Options.Rules == NetRules.EU && Lot > BatchPlan.MostBatch) || ContentInspection.SizeOf(Options.Rules, Lot) is var size && size > Last.Passed.Count ? null : Last.Sample(ContentInspection.SizeOf(Options.Rules, Lot));

    /// <summary>The sample by the rules of the United States; null where those are not asked or there is none.</summary>
    public PackageFinding? American => Options.Rules == NetRules.US && Sample is { } sample ? PackageCheck.Of(Label, Lot, Corrected(sample)) : null;

    /// <summary>The sample by those of the European Union.</summary>
    public BatchFinding? European => Options.Rules == NetRules.EU && Sample is { } sample ? BatchCheck.Of(Label, Lot, Corrected(sample), []) : null;

    /// <summary>Whether the sample passes; null where there is none, or a second one is asked for.</summary>
    public bool? Passes => American is { } us ? us.Passes : European is { Count: not CountVerdict.SecondSample } eu ? eu.Passes : null;

    /// <summary>Of all packages of the last hour, how many are short: by more than the allowed variation in the United States; below T1 and below T2 in the European Union.</summary>
    public (int Short, int Very) Short => Options.Rules == NetRules.US ? (Net.Count(w => Label.Grams - w > AllowedVariation.Grams(Label)), 0)
        : (Net.Count(w => w < TolerableError.First(Label)), Net.Count(w => w < TolerableError.Second(Label)));

    /// <summary>Number, mean (corrected) and standard deviation of the last <see cref="SpreadHours"/> hours together, within and between hours.</summary>
    public (int Count, double Mean, double Deviation) Spread => HourOfWeights.Together([.. Hours.TakeLast(SpreadHours).Select(h => h with { Mean = Corrected(h) })])!.Value;

    /// <summary>The fill to aim at when packed, grams; null where the spread is 0 or the lot too small for a plan.</summary>
    public TargetFill? Target => Spread.Deviation <= 0 || Lot < 2 ? null : Options.Rules == NetRules.US ? TargetFill.InAmerica(Label, Spread.Deviation, Lot, Options.Drift) : TargetFill.InEurope(Label, Spread.Deviation, Options.Drift);

    /// <summary>The same with drying reckoned in: what has to be in the package when it is packed, grams.</summary>
    public double? ToPack => Target is { } target ? Options.Drying?.ToPack(target.Grams) ?? target.Grams : null;

    /// <summary>Packages of a day on which the line packed it, by the days looked at.</summary>
    public double PackagesADay => Hours.GroupBy(h => h.From.InUtc().Date).Average(d => d.Sum(h => (double)h.Count));

    /// <summary>What is given away now.</summary>
    public Giveaway Now => new(Spread.Mean - Label.Grams, PackagesADay, Options.PricePerTonne);

    /// <summary>What would be given away at the fill to aim at; null where there is none.</summary>
    public Giveaway? Aimed => ToPack is { } fill ? new(fill - Label.Grams, PackagesADay, Options.PricePerTonne) : null;

    private double[] Corrected(IReadOnlyList<WeighedPackage> packages) => [.. packages.Select(p => p.NetGrams + Correction)];
}
