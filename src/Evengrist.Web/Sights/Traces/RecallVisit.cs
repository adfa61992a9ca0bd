using Evengrist.Plant.Recalls;
using Evengrist.Records;
using Evengrist.Records.Tracing;
using Evengrist.Web.Visiting;
using NodaTime;

namespace Evengrist.Web.Sights.Traces;

/// <summary>A recall asked in an address, and its answer.</summary>
/// <param name="Ask">What was asked, as typed.</param>
/// <param name="Sight">The answer; null where nothing was asked or it cannot be answered.</param>
/// <param name="Faults">What is wrong and what to do.</param>
public sealed record RecallVisit(RecallAsk Ask, RecallSight? Sight, IReadOnlyList<string> Faults)
{
    /// <summary>Fields of the address in common.</summary>
    public string Query(string? net = null, int? page = null, string? what = null) => QueryString.Create(Ask.Query(net, page, what)!).ToString();

    /// <summary>Reads the address and answers.</summary>
    public static RecallVisit Of(Visit visit, IQueryCollection query)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var ask = Read(query);
        return ask.What.Length == 0 ? new(ask, null, []) : Of(visit.Mill, ask, visit.Read, visit.AsOf);
    }

    /// <summary>Answers a recall as typed.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="ask">What was typed.</param>
    /// <param name="moment">Reads a moment; null where the text is none.</param>
    /// <param name="asOf">The moment looked back from.</param>
    public static RecallVisit Of(Mill mill, RecallAsk ask, Func<string, Instant?> moment, Instant asOf)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(ask);
        var (lines, unread) = RecallLines.Read(ask.What, moment, asOf.InZone(mill.Settings.Zone).Year);
        var starts = RecallStarts.Of(mill, lines, asOf);
        IReadOnlyList<string> faults = [.. unread, .. starts.Faults, .. ask.NumberFaults()];
        if (faults.Count > 0)
        {
            return new RecallVisit(ask, null, faults);
        }

        string? nothing = null;
        var sight = mill.Ask(view => RecallSight.Of(view, ask, ask.Question(starts.Starts, asOf), [.. starts.Words, ask.Bounds.Words], out nothing));
        sight = sight is null ? null : sight with { Outcome = RecallGaps.With(mill, sight.Outcome) };
        return new RecallVisit(ask, sight, nothing is null ? [] : [nothing]);
    }

    /// <summary>The recall in an address.</summary>
    public static RecallAsk Read(IQueryCollection query)
    {
        ArgumentNullException.ThrowIfNull(query);
        string Field(string name) => query[name].ToString().Trim();
        return new RecallAsk
        {
            What = Field("what"), ChancePercent = Field("chance"), NetName = Field("net"), Order = Field("order"), Prices = Field("prices"), Destruction = Field("destruction"), Freight = Field("freight"),
            Numbers = TraceVisit.Read(query) with { Code = "", From = "", Until = "", Way = "" },
        };
    }
}
