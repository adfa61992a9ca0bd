using Evengrist.Ledger;
using Evengrist.Milling.Clock;
using Evengrist.Web.Sights.Season;
using NodaTime;

namespace Evengrist.Web.Sights.Clock;

/// <summary>A change and the times of a way, as a person typed them.</summary>
/// <param name="Fields">The fields.</param>
/// <param name="Changed">When the gates were changed; null where nothing was typed.</param>
/// <param name="Tune">The change the way is tuned from; null for none.</param>
/// <param name="What">The property it is tuned by.</param>
/// <param name="Times">What the ledger does not have.</param>
public sealed record ClockAsk(TypedFields Fields, Instant? Changed, Instant? Tune, Property What, WayTimes Times)
{
    /// <summary>Properties a step can be seen in.</summary>
    public static IReadOnlyList<Property> Properties { get; } = [Property.Protein, Property.Ash, Property.Moisture, Property.WetGluten];

    /// <summary>Reads the fields.</summary>
    /// <param name="typed">What was typed, by field.</param>
    /// <param name="read">Reads a moment on the mill's clock; null where the text is none.</param>
    /// <param name="now">The moment looked at.</param>
    public static ClockAsk Of(Func<string, string?> typed, Func<string?, Instant?> read, Instant now)
    {
        ArgumentNullException.ThrowIfNull(read);
        var (fields, usual) = (new TypedFields(typed), new WayTimes());
        Instant? Moment(string key, string words)
        {
            var text = fields.Text(key, "");
            if (text.Length == 0)
            {
                return null;
            }

            var moment = read(text);
            if (moment is null || moment > now)
            {
                fields.Fault(moment is null ? $"{words}: a moment such as 2026-01-14T08:00 is needed; read “{text}”." : $"{words}: it lies after the moment looked at; choose one before it.");
                return null;
            }

            return moment;
        }

        double Minutes(string key, string words, double otherwise)
        {
            var minutes = fields.Needed(key, words, otherwise);
            if (!(minutes is >= 0 and <= 1440))
            {
                fields.Fault(FormattableString.Invariant($"{words}: it lies from 0 to 1440 minutes; read {minutes}."));
                return otherwise;
            }

            return minutes;
        }

        var name = fields.Text("what", Property.Protein.ToString());
        var what = Properties.FirstOrDefault(p => p.ToString().Equals(name, StringComparison.OrdinalIgnoreCase));
        if (what == Property.None)
        {
            fields.Fault($"Tuned by: choose one of {string.Join(", ", Properties)}; read “{name}”.");
        }

        return new ClockAsk(fields, Moment("at", "Changed at"), Moment("tune", "Tuned from the change at"), what, usual with
        {
            GateMinutes = Minutes("gate", "Gate to temper bin", usual.GateMinutes), RollsMinutes = Minutes("rolls", "First break to flour spout", usual.RollsMinutes),
            RollsStirredMinutes = Minutes("stirred", "Stirred over the rolls", usual.RollsStirredMinutes),
        });
    }
}
