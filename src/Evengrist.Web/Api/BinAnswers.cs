using Evengrist.Bins;
using Evengrist.Bins.States;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Web.Sights;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>A bin in short. Masses are grams as they lie.</summary>
public sealed record BinAnswer(
    string Code, string Kind, string Name, string Material, long StockGrams, long? CapacityGrams, bool OnHold, string? HoldReason, IReadOnlyList<string> States, string? BarredBy, DateTimeOffset AsOf)
{
    internal static BinAnswer Of(BinSight bin, Instant at) => new(
        bin.Place.Code, bin.Place.Kind.Words(), bin.Place.Name, bin.Place.Material, bin.Stock.Grams, bin.Place.Capacity?.Grams, bin.Hold is not null, bin.Hold?.Words,
        [.. bin.Standing.States.Select(s => s.Words())], bin.Standing.Bars.Gravest?.Words, at.ToDateTimeOffset());
}

/// <summary>Protein of a blend from truck readings; one standard uncertainty, the trucks' errors taken as independent.</summary>
public sealed record ProteinAnswer(
    double PercentAt12mb, double? StandardUncertaintyPercentAt12mb, double LeastPercentAt12mb, double MostPercentAt12mb, int LoadsRead, double ShareOfMassRead)
{
    internal static ProteinAnswer? Of(BlendProtein? blend)
    {
        var scale = (100 - (double)Basis.At12.MoisturePercent) / 100;
        return blend is null ? null : new(
            blend.PercentDry * scale, blend.StandardUncertaintyPercentDry * scale, blend.LeastPercentDry * scale, blend.MostPercentDry * scale, blend.LoadsRead, blend.ShareRead);
    }
}

/// <summary>Part of something by district, reckoned.</summary>
public sealed record OriginAnswer(string Origin, double Grams)
{
    internal static OriginAnswer[] Of(IReadOnlyList<(string Origin, double Grams)> groups) => [.. groups.Select(g => new OriginAnswer(g.Origin, g.Grams))];
}

/// <summary>One layer; the layers of a bin sum to its stock to the gram.</summary>
public sealed record LayerAnswer(
    long Grams, DateTimeOffset SetDownFrom, IReadOnlyList<OriginAnswer> Origins, IReadOnlyList<string> Loads, IReadOnlyList<string> Sources, ProteinAnswer? Protein);

/// <summary>What would come out next if so much were drawn and nothing filled in.</summary>
public sealed record NextAnswer(string Outflow, long DrawnGrams, IReadOnlyList<OriginAnswer> Origins, IReadOnlyList<string> Loads, ProteinAnswer? Protein);

/// <summary>What lies in a bin under one hypothesis of outflow, bottom first.</summary>
public sealed record ContentAnswer(
    BinAnswer Bin, string Outflow, IReadOnlyList<LayerAnswer> LayersBottomFirst, ProteinAnswer? Protein, IReadOnlyList<NextAnswer> NextUnderEachOutflow)
{
    internal static ContentAnswer Of(BinSight bin, string outflow, Instant at) => new(
        BinAnswer.Of(bin, at), outflow,
        [.. bin.Bands.SelectMany(b => b.Layers).Select(l => new LayerAnswer(l.Mass.Grams, l.From.ToDateTimeOffset(), OriginAnswer.Of(l.Groups), l.Loads, l.Sources, ProteinAnswer.Of(l.Protein)))],
        ProteinAnswer.Of(bin.Protein),
        [.. bin.Next.Select(n => new NextAnswer(n.Outflow.Code(), n.Drawn.Grams, OriginAnswer.Of(n.Groups), n.Loads, ProteinAnswer.Of(n.Protein)))]);
}
