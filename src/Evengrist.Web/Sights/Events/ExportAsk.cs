using Evengrist.Ledger;
using Evengrist.Plant.Epcis.Sending;
using Evengrist.Plant.Imports;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Web.Sights.Events;

/// <summary>What a document of events is to tell.</summary>
/// <param name="Code">The lot whose way it tells; null for a span.</param>
/// <param name="From">What happened from then on.</param>
/// <param name="Until">What happened before then.</param>
/// <param name="Outflow">How bins are taken to empty.</param>
/// <param name="To">Whom it is for; null for anybody.</param>
public sealed record ExportAsk(string? Code, Instant? From, Instant? Until, Outflow Outflow, string? To)
{
    /// <summary>Its fields as an address or a form says them.</summary>
    public IReadOnlyList<(string Name, string Value)> Fields =>
    [
        .. Code is { } code ? [("code", code)] : new[] { ("from", InstantPattern.General.Format(From!.Value)), ("until", InstantPattern.General.Format(Until!.Value)) },
        ("outflow", Outflow.Code()),
        .. To is { } to ? new[] { ("to", to) } : [],
    ];

    /// <summary>The address of the document, to be looked at.</summary>
    public string Address => "/api/epcis/export?" + string.Join('&', Fields.Select(f => $"{f.Name}={Uri.EscapeDataString(f.Value)}"));

    /// <summary>Reads it as an address says it; null with every fault a sentence.</summary>
    public static (ExportAsk? Ask, IReadOnlyList<string> Faults) Read(string? code, string? from, string? until, string? outflow, string? to)
    {
        var ((begin, beginSays), (end, endSays)) = (Moment(from), Moment(until));
        var hypothesis = string.IsNullOrEmpty(outflow) ? Outflow.FirstInFirstOut : OutflowWords.Read(outflow);
        var isSpan = string.IsNullOrWhiteSpace(code);
        string[] faults =
        [
            .. hypothesis is null ? ["outflow: fifo, core or stirred."] : Array.Empty<string>(),
            .. beginSays.Length + endSays.Length > 0 ? [$"A moment looks like {(beginSays.Length > 0 ? beginSays : endSays)}."]
                : (isSpan ? begin is null || end is null || end <= begin : begin is not null || end is not null) ? ["Give either code, or both from and a later until."] : Array.Empty<string>(),
            .. !string.IsNullOrEmpty(to) && Earlier.Fault(to) is { } fault ? [fault] : Array.Empty<string>(),
        ];
        return faults.Length > 0 ? (null, faults) : (new(isSpan ? null : code!.Trim(), begin, end, hypothesis!.Value, string.IsNullOrWhiteSpace(to) ? null : to.Trim()), []);
    }

    private static (Instant? At, string Expected) Moment(string? text)
    {
        var (at, expected) = string.IsNullOrWhiteSpace(text) ? (null, "") : Moments.Of(text, null);
        return (at, at is null ? expected : "");
    }
}
