using System.Globalization;
using System.Text.RegularExpressions;
using Evengrist.Plant.Prints;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Web.Start;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Web.Visiting;

/// <summary>One request seen as a visit: who, in which look and units, and which moment is looked at.</summary>
public sealed partial class Visit(IHttpContextAccessor accessor, MillDoor door, IClock clock)
{
    // So many pages no list has, and so many lines can still be counted.
    private const int LastPage = 1_000_000;

    private Instant? asOf;
    private MillSettings? settings;

    private HttpContext Context => accessor.HttpContext ?? throw new InvalidOperationException("There is no request to read choices from.");

    /// <summary>The mill; only pages behind the starting gate ask.</summary>
    public Mill Mill => door.Mill ?? throw new InvalidOperationException("The mill is not open yet.");

    /// <summary>The mill, or null while it is being opened.</summary>
    public Mill? MillIfOpen => door.Mill;

    /// <summary><c>light</c>, <c>dark</c>, or <c>auto</c> for the system's own choice.</summary>
    public string Theme => Context.Kept(Choices.Look) is "light" or "dark" ? Context.Kept(Choices.Look)! : "auto";

    /// <summary>Whether masses and temperatures are shown in US customary units.</summary>
    public bool UsCustomary => Context.Kept(Choices.Units) == "us";

    /// <summary>The units numbers are shown in.</summary>
    public UnitSystem Units => UsCustomary ? UnitSystem.UsCustomary : UnitSystem.Si;

    /// <summary>The name this browser's facts carry; null until it is chosen.</summary>
    public string? Name => Context.Kept(Choices.Name) is { Length: <= Choices.LongestName } name ? name : null;

    /// <summary>The head of what is printed for this visit.</summary>
    public PrintHead Head => new(Settings.Name, Settings.IsDemonstration, Zone, Units, clock.GetCurrentInstant());

    /// <summary>What is said where the name went while a form was filled in.</summary>
    public const string Nameless = "Nobody is named: say who you are (in another tab, so that nothing typed is lost) and send it again.";

    /// <summary>Path and query of this request, to come back to.</summary>
    public string Here => Context.Request.Path + Context.Request.QueryString;

    /// <summary>Path of this request without its query.</summary>
    public string Path => Context.Request.Path;

    /// <summary>Whether a form was just sent: what an earlier one did is not said again beside the answer to it.</summary>
    public bool Sends => HttpMethods.IsPost(Context.Request.Method);

    /// <summary>Whether the address says that the form sent before was taken (<c>done=true</c>) and none is just sent; anything else it may say there is not heeded.</summary>
    public bool IsDone => !Sends && bool.TryParse(Context.Request.Query["done"], out var done) && done;

    /// <summary>The page of a long list that is asked for, from 1; 1 where the address says nothing or no number.</summary>
    public int ListPage => int.TryParse(Context.Request.Query["page"], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var page) ? Math.Clamp(page, 1, LastPage) : 1;

    /// <summary>The query's fields but the moment, to be kept when another moment is asked for.</summary>
    public IEnumerable<KeyValuePair<string, string>> OtherQuery => Context.Request.Query.Where(q => q.Key != "asof").Select(q => KeyValuePair.Create(q.Key, q.Value.ToString()));

    /// <summary>What the mill says about itself, read once a request.</summary>
    public MillSettings Settings => settings ??= Mill.Settings;

    /// <summary>The mill's time zone.</summary>
    public DateTimeZone Zone => Settings.Zone;

    /// <summary>The moment that is looked at: what has happened by then counts.</summary>
    public Instant AsOf => asOf ??= Asked() ?? Default;

    /// <summary>The newest moment there is to look at.</summary>
    public Instant Newest => Settings.IsDemonstration ? Mill.Ask(view => view.Book.Newest) ?? clock.GetCurrentInstant() : clock.GetCurrentInstant();

    /// <summary>The latest moment anything can have happened: the present, or the newest in the demonstration, which plays ahead of the clock.</summary>
    public Instant Latest => Instant.Max(clock.GetCurrentInstant(), Newest);

    /// <summary>Whether the newest moment is looked at.</summary>
    public bool IsNewest => AsOf >= Newest.Minus(Duration.FromMinutes(1));

    /// <summary>What was asked for as a moment and is none; null where nothing is wrong.</summary>
    public string? BadMoment => Context.Request.Query["asof"].ToString() is { Length: > 0 } text && text != Choices.Newest && Choices.ReadMoment(text) is null ? text : null;

    private Instant Default => Settings.OpeningOr(Newest);

    /// <summary>A moment on the mill's clock: <c>14 Jan 2026 10:40</c>.</summary>
    public string Say(Instant moment) => moment.InZone(Zone).LocalDateTime.ToString("d MMM uuuu HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A moment on the mill's clock, without the date where it is the day looked at: <c>10:40</c>, <c>13 Jan 22:00</c>.</summary>
    public string SayShort(Instant moment)
    {
        var (local, looked) = (moment.InZone(Zone).LocalDateTime, AsOf.InZone(Zone).LocalDateTime);
        return local.ToString(local.Date == looked.Date ? "HH:mm" : local.Year == looked.Year ? "d MMM HH:mm" : "d MMM uuuu HH:mm", CultureInfo.InvariantCulture);
    }

    /// <summary>A sentence of the ledger's with its moments on the mill's clock.</summary>
    public string InMillTime(string sentence) => Moments().Replace(sentence, found =>
        InstantPattern.ExtendedIso.Parse(found.Value) is { Success: true, Value: var moment } ? Say(moment) : found.Value);

    /// <summary>A moment as a date and time field takes it.</summary>
    public string Field(Instant moment) => Choices.Moment.Format(moment.InZone(Zone).LocalDateTime);

    /// <summary>Reads a moment of the mill's clock; null where the text is none. A time the clock skips or has twice is read leniently.</summary>
    public Instant? Read(string? text) => Choices.ReadMoment(text) is { } local ? Zone.AtLeniently(local).ToInstant() : null;

    /// <summary>Says in the answer's status that what was asked clashes with what somebody else has done.</summary>
    public void Conflicts() => Context.Response.StatusCode = StatusCodes.Status409Conflict;

    /// <summary>Says in the answer's status that what was asked for is not there; the page says so in words.</summary>
    public void IsNotThere() => Context.Response.OnStarting(() =>
    {
        // As the answer sets out: told earlier, the framework would put its own page in place of these words.
        if (Context.Response.StatusCode == StatusCodes.Status200OK)
        {
            Context.Response.StatusCode = StatusCodes.Status404NotFound;
        }

        return Task.CompletedTask;
    });

    private Instant? Asked()
    {
        var cookie = Choices.AsOf(Settings.IsDemonstration);
        var text = Context.Request.Query["asof"].ToString();
        if (text == Choices.Newest || Choices.ReadMoment(text) is not null)
        {
            if (!Context.Response.HasStarted)
            {
                Context.Keep(cookie, text);
            }
        }
        else
        {
            text = Context.Kept(cookie);
        }

        return text == Choices.Newest ? Newest : Read(text);
    }

    [GeneratedRegex(@"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?Z")]
    private static partial Regex Moments();
}
