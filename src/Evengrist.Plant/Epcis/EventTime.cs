using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;

namespace Evengrist.Plant.Epcis;

/// <summary>Times of a document (RFC 3339): a date, T, a time of day, an offset or Z.</summary>
internal static partial class EventTime
{
    /// <summary>The moment to the nanosecond, what is finer cut off; null where the text is no such time.</summary>
    public static Instant? Of(string text)
    {
        var form = Form().Match(text);
        if (!form.Success)
        {
            return null;
        }

        int Part(string name) => int.Parse(form.Groups[name].Value, CultureInfo.InvariantCulture);
        try
        {
            var seconds = Part("s");
            var leap = seconds == 60;
            var local = new LocalDateTime(Part("y"), Part("m"), Part("d"), Part("h"), Part("n"), leap ? 59 : seconds)
                .PlusNanoseconds(long.Parse((form.Groups["f"].Value + "000000000")[..9], CultureInfo.InvariantCulture)).PlusSeconds(leap ? 1 : 0);
            var offset = form.Groups["z"].Success ? Offset.Zero
                : Offset.FromSeconds((form.Groups["sign"].Value == "-" ? -60 : 60) * ((60 * Part("oh")) + Part("on")));
            return Part("s") <= 60 && (!form.Groups["oh"].Success || (Part("oh") < 24 && Part("on") < 60)) ? local.WithOffset(offset).ToInstant() : null;
        }
        catch (ArgumentOutOfRangeException)
        {
            // A 30th of February, an hour 25, an offset of more than 18 hours.
            return null;
        }
    }

    /// <summary>In UTC with exactly three decimals, the fourth rounding up from 5; as the event hash wants it.</summary>
    public static string ToMilliseconds(Instant at)
    {
        var ticks = at.ToUnixTimeTicks() + (5 * NodaConstants.TicksPerMillisecond / 10);
        var floor = ticks >= 0 ? ticks / NodaConstants.TicksPerMillisecond : ((ticks + 1) / NodaConstants.TicksPerMillisecond) - 1;
        return Instant.FromUnixTimeMilliseconds(floor).InUtc().LocalDateTime.ToString("uuuu-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"\A(?<y>\d{4})-(?<m>\d{2})-(?<d>\d{2})[Tt](?<h>\d{2}):(?<n>\d{2}):(?<s>\d{2})(?:\.(?<f>\d+))?(?:(?<z>[Zz])|(?<sign>[+-])(?<oh>\d{2}):(?<on>\d{2}))\z", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Form();
}
