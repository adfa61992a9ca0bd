using Evengrist.Quantities;

namespace Evengrist.Bins.BestBin;

/// <summary>Puts what was reckoned of one bin for one load into figures that open to how.</summary>
internal sealed class BestBinFigures(TruckLoad load, BinCandidate bin, string currency)
{
    private const string Page = "docs/model/best-bin.md";

    public Figure? Chance(double? chance) => chance is not { } share ? null : Figure.Reckoned("Chance that the load belongs to the band", (decimal)(100 * share), "%", 0, new Because(
        "Φ((to − p)/u) − Φ((from − p)/u), the reading's error taken as normal; none where falling number or test weight as read lie outside.",
        [Protein("Protein of the load", load.ProteinPercentAt12, "As read.")! with { StandardUncertainty = (decimal)load.ProteinUncertainty }, Edge("from", bin.Band!.ProteinFrom), Edge("to", bin.Band.ProteinTo)], Page));

    public Figure? Purity(string what, double? share, string how) =>
        share is { } known ? Figure.Reckoned(what, (decimal)(100 * known), "%", 1, new Because(how, [Edge("band from", bin.Band!.ProteinFrom), Edge("band to", bin.Band.ProteinTo)], Page)) : null;

    public Figure? Room() => bin.CapacityTonnes is { } capacity
        ? Figure.Reckoned("Room left", (decimal)(capacity - bin.StockTonnes - load.Tonnes), "t", 1, new Because("Capacity − stock − load.", [Tonnes("Capacity", capacity), Tonnes("Stock", bin.StockTonnes), Tonnes("Load", load.Tonnes)], "the ledger"))
        : null;

    public static Figure? Protein(string what, double? percentAt12, string how) =>
        percentAt12 is { } known ? Figure.Reckoned(what, (decimal)known, "%", 2, new Because(how, [], Page)) with { Basis = Basis.At12 } : null;

    public Figure? Falling()
    {
        if (load.FallingNumber is not { } comes || (bin.StockTonnes > 0 && bin.FallingNumber is null))
        {
            return null;
        }

        var blend = FallingNumberBlend.Of([(Mass.FromTonnes((decimal)bin.StockTonnes), FallingNumber.FromSeconds((decimal)(bin.FallingNumber ?? comes))), (Mass.FromTonnes((decimal)load.Tonnes), FallingNumber.FromSeconds((decimal)comes))]);
        return Figure.Reckoned("Falling number with the load", blend.FallingNumber.Seconds, "s", 0, new Because("6000/LN + 50, the liquefaction number LN = 6000/(FN − 50) weighted by tonnes.", [], "docs/model/quantities.md"));
    }

    public Figure? Money((double OfBin, double OfLoad)? money, double? uncertainty)
    {
        if (money is not var (ofBin, ofLoad))
        {
            return null;
        }

        Figure Part(string what, double amount, string how) => Figure.Reckoned(what, (decimal)amount, currency, 2, new Because(how, [], Page));
        return Figure.Reckoned("Money of blending, for a tonne of the load", (decimal)((ofBin + ofLoad) / load.Tonnes), $"{currency}/t", 2, new Because(
            "(what the bin's tonnes gain or lose + what the load's tonnes gain or lose) / load. Against the load kept by itself; ± from the protein reading alone.",
            [
                Part("Bin's tonnes", ofBin, "Stock × (value at the mean with the load − value at the mean now)."),
                Part("Load's tonnes", ofLoad, "Load × (value at the bin's mean with it − value at its own protein)."),
            ],
            "the values entered; " + Page)) with
        {
            StandardUncertainty = (decimal?)(uncertainty / load.Tonnes),
        };
    }

    public Figure? Year((double PerTonne, double Uncertainty)? known) => known is not var (worth, uncertainty) ? null : Figure.Reckoned("Worth to the year of a tonne of the load here", (decimal)worth, $"{currency}/t", 2, new Because(
        "(tonnes × worth of the bin's wheat + what the load changes of the bin's quality × its worth in every planned use − the load's worth in a bin of its own) / load: exact for a small load.", [], "the newest plan of the year; docs/model/season.md")) with { StandardUncertainty = (decimal)uncertainty };

    private static Figure Edge(string what, double percent) => Figure.Seen(what, (decimal)percent, "%", Basis.At12);

    private static Figure Tonnes(string what, double tonnes) => Figure.Reckoned(what, (decimal)tonnes, "t", 1, new Because("As the ledger holds it.", [], "the ledger"));
}
