using Evengrist.Intake.Trade;

namespace Evengrist.Plant.Answers.Paying;

/// <summary>A scale or meter with its certificates. State: NoneEntered, NotYet, InForce, EndsSoon, Expired; days left are negative after the end.</summary>
public sealed record InstrumentAnswer(string Instrument, string State, string? InForce, int? DaysLeft, int Tickets, int AffectedTickets, IReadOnlyList<string> Affected, IReadOnlyList<CertificateAnswer> Certificates)
{
    /// <summary>The instrument in plain values.</summary>
    public static InstrumentAnswer Of(InstrumentWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        return new(watch.Code, watch.State.ToString(), watch.Now?.Number, watch.DaysLeft, watch.Tickets, watch.Affected.Count, [.. watch.Affected.Select(l => l.Truck.Code)],
            [.. watch.Certificates.Select(c => new CertificateAnswer(c.Instrument, c.Number, c.Body, $"{c.From:R}", $"{c.Until:R}"))]);
    }
}

/// <summary>One certificate; both dates are included.</summary>
public sealed record CertificateAnswer(string Kind, string Number, string Body, string From, string Until);
