using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake;

/// <summary>From gross to the mass paid for, in kilograms that are never rounded.</summary>
internal sealed class MassLines
{
    public MassLines(Delivery delivery, ContractTerms terms, IReadOnlyList<ScaleLine> scales)
    {
        var (gross, tare) = (Seen("gross", delivery.Weighing.Gross), Seen("tare", delivery.Weighing.Tare));
        var net = Reckoned("net", delivery.Weighing.Net.Kilograms, 0, "gross − tare", "by definition", gross, tare);
        Lines.AddRange([gross, tare, net]);
        Clean = net.Value;
        var last = net;
        if (terms.DeductDockage)
        {
            var dockage = Found(delivery, Property.Dockage, terms.DockageDecimals);
            Clean *= 1m - dockage.Value / 100m;
            Taken("dockage", Clean - net.Value);
            last = Reckoned("after dockage", Clean, 1, "net × (1 − dockage/100)", terms.Title, net, dockage);
            Lines.AddRange([dockage, last]);
        }

        Settled = Clean;
        if (terms.DryMatterShrink)
        {
            var moisture = Found(delivery, Property.Moisture, terms.MoistureDecimals);
            var agreed = Figure.Seen("base moisture", terms.BaseMoisture.Percent, "%");
            var wet = moisture.Value > agreed.Value;
            Settled *= wet ? (100m - moisture.Value) / (100m - agreed.Value) : 1m;
            WaterShrink = Clean - Settled;
            Taken("water above the base", -WaterShrink);
            last = Reckoned("at base moisture", Settled, 1, wet ? "mass × (100 − moisture)/(100 − base moisture)" : "not above the base moisture: nothing taken, nothing given", terms.Title, last, moisture, agreed);
            Lines.AddRange([moisture, last]);
        }

        foreach (var scale in scales.Where(s => s.Kind == ScaleEffect.MultipliesMass))
        {
            var effect = scale.Figure("%", scale.Effect);
            Taken(scale.Title, Settled * scale.Effect / 100m);
            Settled *= 1m + scale.Effect / 100m;
            last = Reckoned("after " + effect.What, Settled, 1, "mass × (1 + effect/100)", terms.Title, last, effect);
            Lines.AddRange([effect, last]);
        }

        Bushels = Settled * 1000m / Mass.GramsPerPound / Mass.PoundsPerWheatBushel;
        Quantity = terms.Base.Per == PriceUnit.Bushel
            ? Figure.Reckoned("bushels", Bushels, "bu", 2, new Because("settled mass ÷ 0.45359237 kg ÷ 60 lb, whatever the test weight", [last], "by definition"))
            : Figure.Reckoned("tonnes", Settled / 1000m, "t", 3, new Because("settled mass ÷ 1000 kg", [last], "by definition"));
        Lines.Add(Quantity);
    }

    public List<Figure> Lines { get; } = [];

    /// <summary>What each deduction took from the mass, kg, negative where it took; not rounded.</summary>
    public List<(string What, decimal Kilograms)> Moved { get; } = [];

    /// <summary>Taken for water above the base, kg.</summary>
    public decimal WaterShrink { get; }

    public decimal Clean { get; }

    public decimal Settled { get; }

    public decimal Bushels { get; }

    /// <summary>What the price is multiplied by: bushels or tonnes.</summary>
    public Figure Quantity { get; }

    private void Taken(string what, decimal kilograms)
    {
        if (kilograms != 0m)
        {
            Moved.Add((what, kilograms));
        }
    }

    private static Figure Seen(string what, Mass mass) => Figure.Seen(what, mass.Kilograms, "kg");

    private static Figure Reckoned(string what, decimal kilograms, int decimals, string formula, string source, params IReadOnlyList<Figure> inputs) =>
        Figure.Reckoned(what, kilograms, "kg", decimals, new Because(formula, inputs, source));

    // The recorded value counts; where recording changed what was read, both are shown.
    private static Figure Found(Delivery delivery, Property what, int decimals)
    {
        var finding = delivery.Findings.Single(f => f.What == what);
        var recorded = Recorded.To(finding.Value, decimals);
        return recorded == finding.Value
            ? finding.AsFigure()
            : Figure.Reckoned(what.Words(), recorded, finding.Unit, decimals, new Because("recorded half up", [finding.AsFigure()], "7 CFR 810.104")) with { StandardUncertainty = finding.StandardUncertainty };
    }
}
