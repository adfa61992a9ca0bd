using Evengrist.Plant.Cases;
using Evengrist.Tempering;
using Evengrist.Web.Sights.Season;
using NodaTime;

namespace Evengrist.Web.Sights.Tempering;

/// <summary>Tempering water as a person asks for it on the worksheet.</summary>
/// <param name="Fields">What was typed.</param>
/// <param name="Posed">What is to be reckoned; null where nothing was asked or something cannot be.</param>
public sealed record TemperAsk(TypedFields Fields, TemperWaterCase? Posed)
{
    /// <summary>Reads the fields.</summary>
    /// <param name="aims">The mill's aims.</param>
    /// <param name="read">Reads a moment on the mill's clock; null where the text is none.</param>
    /// <param name="typed">What was typed, by field.</param>
    public static TemperAsk Of(TemperAims aims, Func<string?, Instant?> read, Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(aims);
        ArgumentNullException.ThrowIfNull(read);
        var fields = new TypedFields(typed);
        double? Number(string key, string words) => fields.Number(key, words);
        var (rate, tonnes, moisture, wanted) = (Number("rate", "Clean wheat, t/h"), Number("tonnes", "Clean wheat, t"), Number("moisture", "Moisture before water"), Number("aim", "Aim at first break"));
        var (ceiling, evaporation, water) = (Number("ceiling", "Most moisture of the flour"), Number("evaporation", "Evaporation to first break"), Number("water", "Temperature of the water"));
        double[] stages = [.. new[] { Number("stage1", "After the first stage"), Number("stage2", "After the second stage") }.OfType<double>()];
        var (hours, holds, celsius) = (Number("rest", "Rest"), Number("holds", "Temperature the rest holds at") ?? DiffusionLaw.ReferenceCelsius, Number("celsius", "Temperature of the wheat"));
        var aim = Chosen(fields, "hardness", "Hardness", TemperWords.Hardnesses, Hardness.Hard) is { } hardness ? aims.Of(hardness) : null;
        var season = Chosen(fields, "season", "Season", TemperWords.Seasons, TemperSeason.Mild);
        var (from, until) = (Moment(fields, "from", "First wheat in", read), Moment(fields, "until", "Last wheat in", read));
        var asked = new[] { "rate", "tonnes", "moisture", "aim" }.Any(k => fields[k].Length > 0);
        if (!asked && fields.Faults.Count == 0)
        {
            return new TemperAsk(fields, null);
        }

        if (moisture is null)
        {
            fields.Fault("Moisture before water: give it in per cent, wet basis.");
        }

        if (wanted is null && aim is null)
        {
            fields.Fault("Aim at first break: the mill's aims have no line for this hardness; type the aim.");
        }

        if (ceiling is not null and not (>= 10 and <= 20))
        {
            fields.Fault("Most moisture of the flour: it lies from 10 to 20 %, wet basis.");
        }

        var rest = hours ?? aim?.Hours ?? 0;
        foreach (var fault in RestCorrection.Faults(rest, holds, celsius ?? holds))
        {
            fields.Fault(fault);
        }

        if (from is null != until is null || until < from)
        {
            fields.Fault("Filling of the bin: give when the first and the last wheat ran in, the last not before the first; or leave both empty.");
        }

        if (fields.Faults.Count > 0)
        {
            return new TemperAsk(fields, null);
        }

        var advice = wanted is null ? AimAdvice.Of(aim!, season!.Value, ceiling) : null;
        var spec = new TemperWaterSpec(moisture!.Value, wanted ?? advice!.Percent) { TonnesPerHour = rate, Tonnes = tonnes, EarlierStages = stages, EvaporationPercent = evaporation ?? 0, WaterCelsius = water };
        foreach (var fault in spec.Faults())
        {
            fields.Fault(fault);
        }

        var corrected = fields.Faults.Count > 0 ? null : RestCorrection.Of(rest, holds, celsius ?? holds);
        return new TemperAsk(fields, corrected is null ? null : new TemperWaterCase(
            spec, advice, corrected, from is { } first ? new RestWindow(first, until!.Value, Duration.FromHours(corrected.LongerHours)) : null));
    }

    /// <summary>One of a list by its name, case not mattering; the usual one where nothing was chosen.</summary>
    internal static T? Chosen<T>(TypedFields fields, string key, string words, IReadOnlyList<T> all, T usual)
        where T : struct, Enum
    {
        var text = fields.Text(key, usual.ToString());
        foreach (var each in all.Where(a => a.ToString().Equals(text, StringComparison.OrdinalIgnoreCase)))
        {
            return each;
        }

        fields.Fault($"{words}: choose one of {string.Join(", ", all)}; read “{text}”.");
        return null;
    }

    private static Instant? Moment(TypedFields fields, string key, string words, Func<string?, Instant?> read)
    {
        var text = fields.Text(key, "");
        if (text.Length > 0 && read(text) is null)
        {
            fields.Fault($"{words}: a moment such as 2026-01-14T08:00 is needed; read “{text}”.");
        }

        return text.Length > 0 ? read(text) : null;
    }
}
