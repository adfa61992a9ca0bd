using Evengrist.Ledger;
using Evengrist.Records.Browsing;
using NodaTime;

namespace Evengrist.Records.Tempering;

/// <summary>What was recorded at a temper bin, for those who come after: what persons did and noted, newest first.</summary>
public static class TemperLog
{
    private const int PageSize = 1000;

    /// <summary>The newest lines that count.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="bin">Code of the temper bin.</param>
    /// <param name="at">What is said to have happened later is left out.</param>
    /// <param name="most">Most lines.</param>
    public static IReadOnlyList<(FactId Id, Happening Happening, string By)> Of(Mill mill, string bin, Instant at, int most)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var page = mill.Facts(new FactFilter { Place = bin, Sort = FactSort.Happening, Until = at + Duration.FromTicks(10), Size = PageSize });
        return [.. page.Lines.Where(l => l.Counts).Select(l => (l.Fact.Id, Fact: l.Fact as Happened)).Where(l => l.Fact?.Happening.Kind is HappeningKind.Tempered or HappeningKind.Note)
            .OrderByDescending(l => l.Fact!.Happening.At).ThenByDescending(l => l.Id).Take(most).Select(l => (l.Id, l.Fact!.Happening, l.Fact.Attribution.By))];
    }
}
