using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Quantities;

namespace Evengrist.Planning.Tests.Mix;

/// <summary>Invented questions for a mix: 19 bins and 15 ends of limits about a mix that is there, so that each can be kept.</summary>
internal static class MadeMix
{
    private static readonly (Property What, double Least, double Most, Basis Basis, bool Windowed, double Own)[] Limited =
    [
        (Property.Protein, 9.6, 15.2, Basis.At12, true, 0.15), (Property.Ash, 1.45, 1.7, Basis.At14, true, 0.02), (Property.FallingNumber, 230, 420, default, true, 10),
        (Property.TestWeight, 74, 82, default, true, 0.3), (Property.WetGluten, 20, 36, Basis.At14, true, 0.8), (Property.Moisture, 10, 13.5, default, true, 0.1),
        (Property.Hardness, 30, 85, default, true, 2), (Property.Don, 0.05, 1.2, Basis.Dry, false, 0.1),
    ];

    /// <summary>A question.</summary>
    /// <param name="seed">Another seed, another mill.</param>
    /// <param name="gates">How gates may be set.</param>
    /// <param name="confidence">How sure each limit has to be kept; null for the mean alone.</param>
    public static MixSpec Of(int seed, GateRules gates, double? confidence)
    {
        var dice = new Random(seed);
        double Between(double least, double most) => least + ((most - least) * dice.NextDouble());
        MixBin[] bins = [.. Enumerable.Range(1, 19).Select(b => new MixBin($"B{b:00}", "HW", Math.Round(Between(190, 300), 2))
        {
            MoisturePercent = 12,
            Values = Limited.ToDictionary(l => l.What, l => new MixValue(Between(l.Least, l.Most), l.Basis, l.Own) { Instrument = "one", InstrumentUncertainty = l.Own / 2 }),
        })];

        // Four bins in the shares 40, 30, 20 and 10 % are a mix that keeps every limit, with room for the margin.
        (MixBin, double)[] known = [(bins[0], 0.4), (bins[1], 0.3), (bins[2], 0.2), (bins[3], 0.1)];
        MixLimit Limit((Property What, double Least, double Most, Basis Basis, bool Windowed, double Own) of)
        {
            var (at, room) = (MixBlend.WheatOf(known, of.What, of.Basis)!.Value, (0.06 * (of.Most - of.Least)) + (confidence is null ? 0 : 2.5 * of.Own));
            return new MixLimit(of.What) { Basis = of.Basis, Least = of.Windowed ? at - room : null, Most = at + room, Confidence = confidence };
        }

        return new MixSpec { Bins = bins, Limits = [.. Limited.Select(Limit)], Gates = gates };
    }
}
