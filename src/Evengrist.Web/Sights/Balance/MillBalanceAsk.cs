using System.Globalization;
using Evengrist.Milling.Balance;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Web.Sights.Season;
using NodaTime;

namespace Evengrist.Web.Sights.Balance;

/// <summary>The span, the section and the assumptions of a mill's balance, as a person typed them.</summary>
/// <param name="Fields">The fields.</param>
/// <param name="Day">A milling day of the span.</param>
/// <param name="IsMonth">Whether its whole month is asked for.</param>
/// <param name="Errors">One standard uncertainty of each weigher.</param>
public sealed record MillBalanceAsk(TypedFields Fields, LocalDate Day, bool IsMonth, UsualErrors Errors)
{
    /// <summary>Moisture of by-products where none is typed: assumed, per cent wet basis, and its uncertainty, points [ours].</summary>
    public const double AssumedMoisture = 14, AssumedMoistureError = 1;

    /// <summary>What is typed for a moisture, by the field's key; null where nothing is.</summary>
    public MeanMoisture? Typed(string key, string words, double? otherwise = null, double? otherwiseError = null)
    {
        var (percent, error) = (Fields.Number(key, words, otherwise), Fields.Number($"{key}-u", $"{words}, its uncertainty", otherwiseError));
        return percent is { } value ? new MeanMoisture(value, error ?? Errors.MoisturePoints) : null;
    }

    /// <summary>First milling day and the one after the last.</summary>
    public (LocalDate First, LocalDate Next) Days => IsMonth ? (new LocalDate(Day.Year, Day.Month, 1), new LocalDate(Day.Year, Day.Month, 1).PlusMonths(1)) : (Day, Day.PlusDays(1));

    /// <summary>The span in moments.</summary>
    public (Instant From, Instant Until) Span(MillSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        Instant Begin(LocalDate day) => MillingDay.Begin(day, settings.Zone, settings.DayStart);
        return (Begin(Days.First), Begin(Days.Next));
    }

    /// <summary>Reads the span and the weighers' errors; where nothing is said, the last milling day that is over.</summary>
    /// <param name="typed">What was typed, by field.</param>
    /// <param name="settings">The mill's clock.</param>
    /// <param name="at">The moment looked at.</param>
    public static MillBalanceAsk Of(Func<string, string?> typed, MillSettings settings, Instant at)
    {
        ArgumentNullException.ThrowIfNull(settings);
        var (fields, usual) = (new TypedFields(typed), new UsualErrors());
        var last = MillingDay.Of(at, settings.Zone, settings.DayStart).PlusDays(-1);
        var day = fields.Day("day", "Milling day", last);
        if (day.Year is < 1900 or > 3000)
        {
            fields.Fault(string.Create(CultureInfo.InvariantCulture, $"Milling day: no mill has records of the year {day.Year}."));
            day = last;
        }

        var over = fields.Text("over", "day");
        if (over is not ("day" or "month"))
        {
            fields.Fault($"Over: choose day or month; read “{over}”.");
        }

        double Error(string key, string words, double otherwise)
        {
            var error = fields.Needed(key, words, otherwise);
            if (!(error is >= 0 and <= 50))
            {
                fields.Fault(string.Create(CultureInfo.InvariantCulture, $"{words}: it lies from 0 to 50; read {error}."));
            }

            return error;
        }

        return new MillBalanceAsk(fields, day, over == "month", usual with
        {
            WheatPercent = Error("u-wheat", "± of the wheat scales", usual.WheatPercent), ScreeningsPercent = Error("u-screenings", "± of the screenings", usual.ScreeningsPercent),
            WaterPercent = Error("u-water", "± of the water meter", usual.WaterPercent), FlourPercent = Error("u-flour", "± of the flour scales", usual.FlourPercent),
            ByProductPercent = Error("u-feed", "± of the by-products", usual.ByProductPercent), TemperRiseTonnes = Error("u-rise", "± of the temper bins", usual.TemperRiseTonnes),
            FirstBreakPercent = Error("u-first", "± of the scale before first break", usual.FirstBreakPercent),
        });
    }
}
