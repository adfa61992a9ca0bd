namespace Evengrist.Laboratory.Sampling;

/// <summary>Looked at one by one: the lot is accepted once the bad ones are at most −a + s n, rejected once they are at least r + s n; between the lines one goes on. Wald's test [from memory]. Model: docs/model/acceptance-sampling.md.</summary>
/// <param name="AcceptOffset">a.</param>
/// <param name="RejectOffset">r.</param>
/// <param name="Slope">s.</param>
public sealed record SequentialPlan(double AcceptOffset, double RejectOffset, double Slope)
{
    /// <summary>The lines for two points, logarithms natural: k = ln(p₂(1 − p₁)/(p₁(1 − p₂))), a = ln((1 − α)/β)/k, r = ln((1 − β)/α)/k, s = ln((1 − p₁)/(1 − p₂))/k.</summary>
    public static SequentialPlan For(TwoPoints points)
    {
        ArgumentNullException.ThrowIfNull(points);
        points.Check();
        var k = Math.Log(points.BadShare * (1 - points.GoodShare) / (points.GoodShare * (1 - points.BadShare)));
        return new(
            Math.Log((1 - points.SellersRisk) / points.BuyersRisk) / k, Math.Log((1 - points.BuyersRisk) / points.SellersRisk) / k, Math.Log((1 - points.GoodShare) / (1 - points.BadShare)) / k);
    }

    /// <summary>What to do after so many looked at: true accept, false reject, null go on.</summary>
    /// <param name="seen">Looked at.</param>
    /// <param name="bad">Bad ones among them.</param>
    public bool? Verdict(int seen, int bad) => bad <= (Slope * seen) - AcceptOffset ? true : bad >= (Slope * seen) + RejectOffset ? false : null;

    /// <summary>How many good ones in a row accept.</summary>
    public int FewestToAccept => (int)Math.Ceiling(AcceptOffset / Slope);
}
