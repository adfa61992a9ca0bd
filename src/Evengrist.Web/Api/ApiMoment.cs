using Evengrist.Records;
using Evengrist.Web.Visiting;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Web.Api;

/// <summary>The moment an API question is asked as of.</summary>
public static class ApiMoment
{
    /// <summary>What <c>asof</c> takes, for the document of the API.</summary>
    public const string Says = "Moment asked as of: 2026-01-14T16:40:00Z, one with an offset, or mill time without (2026-01-14T10:40). "
        + "Left out: now, or the opening moment of the demonstration.";

    /// <summary>Reads <c>asof</c>; null where it is no moment.</summary>
    public static Instant? Read(string? text, MillSettings settings, IClock clock)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return settings.OpeningOr(clock.GetCurrentInstant());
        }

        // A plus sign in an address means a space; a person who wrote an offset meant the plus.
        var offset = OffsetDateTimePattern.ExtendedIso.Parse(text.Trim().Replace(' ', '+'));
        return offset.Success ? offset.Value.ToInstant()
            : Choices.ReadMoment(text) is { } local ? settings.Zone.AtLeniently(local).ToInstant()
            : null;
    }

    /// <summary>Reads when something happened, as sent with an entry: now where nothing was; null where it is no moment.</summary>
    public static Instant? OrNow(string? text, MillSettings settings, IClock clock)
    {
        ArgumentNullException.ThrowIfNull(clock);
        return string.IsNullOrWhiteSpace(text) ? clock.GetCurrentInstant() : Read(text, settings, clock);
    }

    /// <summary>The refusal of an <c>asof</c> that is no moment.</summary>
    public static IResult Bad(string? text) => Results.Problem($"\"{text}\" is no moment. {Says}", statusCode: StatusCodes.Status400BadRequest, title: "asof is no moment");
}
