namespace Evengrist.Season.Futures;

/// <summary>Flour that has to lie in store at the end of each period because the unit then stands still: what is wanted of it until it mills again, and by how much that may be more.</summary>
/// <remarks>A plan counts on the demand it was given, and so has a store run out to the very tonne on such a day. No miller would. Model: docs/model/season-promise.md.</remarks>
internal static class FrameStores
{
    public static double[] Of(FuturesSpec spec, SeasonFlour flour)
    {
        var hours = spec.Plan.Spec.Units.Single(u => u.Code == flour.Unit).Hours;
        var spread = spec.Demands.FirstOrDefault(d => d.Flour == flour.Code);
        var more = 1 + (FutureRule.Standing * double.Hypot(spread?.YearShare ?? 0, spread?.PeriodShare ?? 0));
        var least = new double[hours.Count];
        var ahead = 0.0;
        for (var t = least.Length - 2; t >= 0; t--)
        {
            ahead = hours[t + 1] > 0 ? 0 : ahead + flour.Demand[t + 1];
            least[t] = Math.Min(ahead * more, flour.StockMost);
        }

        return least;
    }
}
