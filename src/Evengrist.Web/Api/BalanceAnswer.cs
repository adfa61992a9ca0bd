using Evengrist.Ledger;
using Evengrist.Web.Sights;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>In, out and stock of a kind of place or of one place, grams.</summary>
public sealed record BalanceLineAnswer(string Kind, string? Place, int Places, long InGrams, long OutGrams, long StockGrams, bool AddsUp)
{
    internal static BalanceLineAnswer Of(BalanceLine line) => new(line.Kind.Words(), line.Place?.Code, line.Places, line.In.Grams, line.Out.Grams, line.Stock.Grams, line.AddsUp);
}

/// <summary>The balance of the plant: the sum over all places is 0 when the ledger is sound.</summary>
public sealed record BalanceAnswer(DateTimeOffset AsOf, long SumOfStocksGrams, bool AddsUp, IReadOnlyList<BalanceLineAnswer> Kinds, IReadOnlyList<BalanceLineAnswer> PlacesThatDiffer)
{
    internal static BalanceAnswer Of(BalanceSight sight, Instant at) => new(
        at.ToDateTimeOffset(), sight.Sum.Grams, sight.Sum.Grams == 0 && sight.Faults.Count == 0, [.. sight.Kinds.Select(BalanceLineAnswer.Of)], [.. sight.Faults.Select(BalanceLineAnswer.Of)]);
}
