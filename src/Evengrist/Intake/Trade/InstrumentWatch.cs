using Evengrist.Intake.Paying;
using NodaTime;

namespace Evengrist.Intake.Trade;

/// <summary>A scale or meter that tickets are paid by: its certificates, how it stands on a day, and the tickets that fall where none was in force.</summary>
/// <param name="Code">The instrument as readings name it.</param>
/// <param name="Certificates">Its certificates, by beginning.</param>
/// <param name="State">How it stands.</param>
/// <param name="Now">The certificate in force; null where there is none.</param>
/// <param name="DaysLeft">Days until nothing is in force, certificates that follow on included; negative is how long ago it ended; null where none was ever entered or the first begins later.</param>
/// <param name="Tickets">How many tickets hang on it.</param>
/// <param name="Affected">Tickets that may not be settled for want of a certificate, by time.</param>
public sealed record InstrumentWatch(
    string Code, IReadOnlyList<Certificate> Certificates, CertificateState State, Certificate? Now, int? DaysLeft, int Tickets, IReadOnlyList<LoadFacts> Affected)
{
    private const int Soon = 30;

    /// <summary>Every instrument that a ticket hangs on or that has a certificate, by code.</summary>
    /// <param name="papers">The certificates.</param>
    /// <param name="loads">The tickets.</param>
    /// <param name="today">The day of the site's calendar that is looked at.</param>
    public static IReadOnlyList<InstrumentWatch> Of(TradePapers papers, IReadOnlyCollection<LoadFacts> loads, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(papers);
        ArgumentNullException.ThrowIfNull(loads);
        var used = loads.Where(l => l.Voided is null).SelectMany(l => l.PaidBy().Select(LoadReader.InstrumentOf).Distinct(StringComparer.OrdinalIgnoreCase).Select(i => (Instrument: i, Load: l)))
            .ToLookup(u => u.Instrument, u => u.Load, StringComparer.OrdinalIgnoreCase);
        return
        [
            .. used.Select(u => u.Key).Concat(papers.Certificates.Select(c => c.Code)).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase)
                .Select(code => Of(code, [.. papers.CertificatesOf(code)], [.. used[code]], today)),
        ];
    }

    private static InstrumentWatch Of(string code, List<Certificate> certificates, List<LoadFacts> loads, LocalDate today)
    {
        var now = certificates.LastOrDefault(c => c.InForceOn(today));
        var left = now is not null ? Period.DaysBetween(today, End(certificates, now.Until))
            : certificates.LastOrDefault(c => c.Until < today) is { } ended ? ended.DaysLeft(today) : (int?)null;
        var state = certificates.Count == 0 ? CertificateState.NoneEntered
            : now is not null ? left <= Soon ? CertificateState.EndsSoon : CertificateState.InForce
            : left is null ? CertificateState.NotYet : CertificateState.Expired;
        return new(code, certificates, state, now, left, loads.Count, [.. loads.Where(l => l.Uncertified.Any(u => u.Instrument.Equals(code, StringComparison.OrdinalIgnoreCase)))]);
    }

    // A certificate that begins by the day after carries on.
    private static LocalDate End(List<Certificate> certificates, LocalDate until)
    {
        while (certificates.Where(c => c.From <= until.PlusDays(1) && c.Until > until).Select(c => (LocalDate?)c.Until).Max() is { } later)
        {
            until = later;
        }

        return until;
    }
}
