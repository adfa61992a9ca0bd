using System.Globalization;
using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Intake;
using Evengrist.Web.Sights.Advice;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>One step of a ticket as far as it can be read, with what is wrong and what is still needed; whole, it can be recorded.</summary>
public sealed class StepEntry
{
    private readonly TicketStep step;
    private readonly StepForm form;
    private readonly Instant? at;
    private Mass weight;
    private SampleEntry? sample;
    private LoadDecision? decision;

    private StepEntry(TicketStep step, StepForm form, Instant? at) => (this.step, this.form, this.at) = (step, form, at);

    /// <summary>What was typed, as read.</summary>
    public Typed Typed { get; } = new();

    /// <summary>Number of the newest fact that was seen on the ticket.</summary>
    public FactId? Seen { get; private set; }

    /// <summary>Reads a form.</summary>
    /// <param name="step">Which step.</param>
    /// <param name="form">The form.</param>
    /// <param name="at">The moment typed; null where none was, or it is none.</param>
    /// <param name="now">The present, past which nothing has happened.</param>
    public static StepEntry Read(TicketStep step, StepForm form, Instant? at, Instant now)
    {
        ArgumentNullException.ThrowIfNull(form);
        var entry = new StepEntry(step, form, at);
        entry.ReadHead(now);
        switch (step)
        {
            case TicketStep.WeighIn:
                entry.ReadWeight("Gross", form.Gross, "the gross");
                break;
            case TicketStep.WeighOut:
                entry.ReadWeight("Tare", form.Tare, "the tare");
                break;
            case TicketStep.Sample:
                entry.sample = SampleEntry.Read(form, entry.Typed);
                entry.Typed.Text(entry.sample.Findings.Count > 0 || entry.Typed.Faults.Count > 0 ? "read" : "", "at least one reading");
                break;
            default:
                entry.ReadDecision();
                break;
        }

        return entry;
    }

    /// <summary>Records the step.</summary>
    /// <exception cref="ArgumentException">It is not whole.</exception>
    /// <exception cref="LedgerRefusal">A rule is broken, or the ticket was changed meanwhile; nothing was recorded.</exception>
    public Receipt Record(Mill mill, string ticket, string by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (!Typed.IsWhole)
        {
            throw new ArgumentException("The step is not whole.", nameof(ticket));
        }

        var (key, scale) = ((form.Key ?? "").Trim(), (form.Scale ?? "").Trim());
        return step switch
        {
            TicketStep.WeighIn => new WeighIn(ticket, weight) { Scale = scale, At = at, Seen = Seen }.In(mill, by, now),
            TicketStep.WeighOut => new WeighOut(ticket, weight) { Scale = scale, At = at, Seen = Seen }.In(mill, by, now),
            TicketStep.Sample => new ReadSample(ticket, key, at ?? now, sample!.Readings) { Seen = Seen }.In(mill, by),
            _ => new DecideLoad(ticket, key, decision!, (form.Why ?? "").Trim()) { At = at, Seen = Seen, Advice = AdviceSight.Advise(mill, ticket, at ?? now) }.In(mill, by, now),
        };
    }

    private void ReadHead(Instant now)
    {
        if (Typed.Text(form.Seen, "the number of the newest fact you have seen on the ticket") is { Length: > 0 } seen)
        {
            if (long.TryParse(seen, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            {
                Seen = new FactId(number);
            }
            else
            {
                Typed.Fault("Seen", $"“{seen}” is no number of a fact. Give the newest that the ticket showed, as a whole number.");
            }
        }

        if (Typed.Text(form.At) is { Length: > 0 } moment && at is null)
        {
            Typed.Fault("At", $"“{moment}” is no date and time. Write it like 2025-07-09T10:40, or leave it empty for now.");
        }
        else if (at > now)
        {
            Typed.Fault("At", "That moment has not come yet. Leave it empty for now.");
        }

        if (step is TicketStep.Sample or TicketStep.Send)
        {
            Typed.Text(form.Key, "a key of your own for this step, so that it is not recorded twice");
        }
    }

    private void ReadWeight(string field, string? text, string needed)
    {
        if (Typed.Number(field, text, "kg", needed) is not { } kilograms)
        {
            return;
        }

        if (kilograms is > 0m and < 500m)
        {
            Typed.Fault(field, $"A truck of {kilograms} kg cannot be. Were tonnes typed where kilograms are asked for?");
        }
        else if (kilograms is <= 0m or > 120_000m)
        {
            Typed.Fault(field, $"A truck of {kilograms} kg cannot be. Type the weight the scale shows, in kilograms, above 0 and at most {Weighing.Most}.");
        }
        else
        {
            weight = Mass.FromKilograms(kilograms);
        }
    }

    private void ReadDecision()
    {
        var words = Typed.Text(form.Decision, "what is decided: accept, discount, divert, set aside or turn away");
        var kind = LoadDecision.KindOf(words);
        if (words.Length > 0 && kind is null)
        {
            Typed.Fault("Decision", $"“{words}” is no decision. Choose accept, discount, divert, set aside or turn away.");
        }

        if (kind is not { } decided)
        {
            return;
        }

        var goes = new LoadDecision(decided).Stage == TruckStage.SentTo;
        var bin = goes ? Typed.Text(form.Bin, "the bin") : "";
        var way = goes ? Typed.Text(form.Way).Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) : [];
        Typed.Text(decided == LoadDecisionKind.Accept ? "accepted" : form.Why, "the reason");
        decision = new LoadDecision(decided, bin, way);
    }
}
