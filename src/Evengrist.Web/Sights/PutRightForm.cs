using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Ledger;
using Evengrist.Web.Visiting;
using NodaTime;

namespace Evengrist.Web.Sights;

/// <summary>What a person filled in to put a fact right: a further fact that names it and says why.</summary>
public sealed class PutRightForm
{
    /// <summary>Made with the form, so that the same form sent twice is one fact.</summary>
    public string? Key { get; set; }

    /// <summary>Code of the place it left; movements alone.</summary>
    public string? From { get; set; }

    /// <summary>Code of the place it went to, was read on or happened to.</summary>
    public string? To { get; set; }

    /// <summary>Kilograms; 0 for a movement that never was.</summary>
    public string? MassKilograms { get; set; }

    /// <summary>The value of a reading, in the unit it was read in.</summary>
    public string? Value { get; set; }

    /// <summary>When, mill time.</summary>
    public string? At { get; set; }

    /// <summary>When it ended; empty for at once.</summary>
    public string? Until { get; set; }

    /// <summary>The words of a happening.</summary>
    public string? Text { get; set; }

    /// <summary>Why it is put right.</summary>
    public string? Reason { get; set; }

    /// <summary>Whether facts of this sort can be put right.</summary>
    public static bool Can(Fact fact) => fact is Moved or Measured or Happened;

    /// <summary>The form filled in with the fact as it stands.</summary>
    public static PutRightForm Of(FactSight fact, Visit visit)
    {
        ArgumentNullException.ThrowIfNull(fact);
        ArgumentNullException.ThrowIfNull(visit);
        var form = new PutRightForm { Key = Guid.NewGuid().ToString("N"), At = visit.Field(fact.When), To = fact.Places[^1].Code };
        switch (fact.Line.Fact)
        {
            case Moved { Movement: var m }:
                (form.From, form.MassKilograms) = (fact.Places[0].Code, m.Mass.Kilograms.ToString("0.###", CultureInfo.InvariantCulture));
                form.Until = m.IsFlow ? visit.Field(m.Until) : null;
                break;
            case Measured { Reading: var r }:
                form.Value = r.Value.ToString(CultureInfo.InvariantCulture);
                break;
            case Happened { Happening: var h }:
                form.Text = h.Text;
                break;
        }

        return form;
    }

    /// <summary>Records the correction under the visitor's name, or says what cannot be read of the form.</summary>
    /// <exception cref="LedgerRefusal">A rule is broken; nothing was recorded.</exception>
    public (Receipt? Receipt, string? Fault) Record(FactSight fact, Visit visit)
    {
        ArgumentNullException.ThrowIfNull(fact);
        ArgumentNullException.ThrowIfNull(visit);
        if (string.IsNullOrWhiteSpace(Key) || Moment(At, fact.When, visit) is not { } at)
        {
            return (null, "The date and time could not be read: write it like 2026-01-14T10:40.");
        }

        var (name, to, reason) = (visit.Name!, (To ?? "").Trim(), (Reason ?? "").Trim());
        return fact.Line.Fact switch
        {
            Moved { Movement: var m } when Number(MassKilograms) is { } kilograms =>
                (Correction(m, kilograms, to, at, reason, visit).In(visit.Mill, name), null),
            Measured { Reading: var r } when Number(Value) is { } value =>
                (Say(new Measure(Key, to, at, r.What, value, r.Unit, r.Basis, r.Method, r.Instrument, r.StandardUncertainty) { Corrects = fact.Id, Note = reason }, name, visit), null),
            Happened { Happening: var h } =>
                (Say(new Happen(Key, to, at, h.Kind, (Text ?? "").Trim()) { Corrects = fact.Id, Note = reason }, name, visit), null),
            _ => (null, "The number could not be read: digits with a decimal point, no comma, no unit."),
        };
    }

    private PutRight Correction(Movement movement, decimal kilograms, string to, Instant at, string reason, Visit visit) => new(movement.Id, reason)
    {
        Mass = Mass.FromKilograms(kilograms), From = (From ?? "").Trim(), To = to, At = at,
        Until = string.IsNullOrWhiteSpace(Until) ? at : Moment(Until, movement.Until, visit) ?? at,
    };

    private static Receipt Say(Draft draft, string name, Visit visit) => visit.Mill.Record([draft], name, "ledger page");

    // A date field shows minutes: left as it was, it means the very moment that was recorded, seconds and all.
    private static Instant? Moment(string? text, Instant recorded, Visit visit) => text == visit.Field(recorded) ? recorded : visit.Read(text);

    private static decimal? Number(string? text) =>
        decimal.TryParse((text ?? "").Trim(), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && Math.Abs(number) < 1_000_000_000m ? number : null;
}
