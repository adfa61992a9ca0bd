using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Records.Browsing;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights;

/// <summary>The filter of the Ledger page as it stands in the address.</summary>
/// <param name="Place">Code of a place.</param>
/// <param name="Sort">One of <see cref="FactSort"/>.</param>
/// <param name="By">Who recorded it.</param>
/// <param name="Text">Words.</param>
/// <param name="From">Happened at or after, mill time.</param>
/// <param name="Before">Number of a fact: only those recorded before it.</param>
public sealed record LedgerFilter(string? Place, string? Sort, string? By, string? Text, string? From, long? Before)
{
    private const int PageSize = 50;

    /// <summary>The sort; null for all.</summary>
    public FactSort? SortRead => Enum.TryParse<FactSort>(Sort, ignoreCase: true, out var sort) && Enum.IsDefined(sort) ? sort : null;

    /// <summary>The question for the records, whenever it happened.</summary>
    public FactFilter ToQuestion(int size) => new()
    {
        Place = Place, Sort = SortRead, By = By, Text = Text, Before = Before is > 0 ? new FactId(Before.Value) : null, Size = size,
    };

    /// <summary>The question for the records: what had happened by the moment looked at.</summary>
    public FactFilter ToQuestion(Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return ToQuestion(PageSize) with { From = visit.Read(From), Until = visit.IsNewest ? null : Micros.ToInstant(visit.AsOf.ToMicros() + 1) };
    }

    /// <summary>The address of the page of facts before a number; of the newest where it is null.</summary>
    public string Address(FactId? before)
    {
        (string Key, string? Value)[] fields =
            [("place", Place), ("sort", Sort), ("by", By), ("text", Text), ("from", From), ("before", before?.Value.ToString(CultureInfo.InvariantCulture))];
        return "/ledger" + QueryString.Create(fields.Where(f => !string.IsNullOrEmpty(f.Value)).Select(f => KeyValuePair.Create(f.Key, f.Value)));
    }
}
