using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Web.Visiting;

/// <summary>What a person has chosen for this browser, kept in cookies: name, look, units and the moment looked at.</summary>
public static class Choices
{
    internal const string Look = "evengrist-look";
    internal const string Units = "evengrist-units";
    internal const string Name = "evengrist-name";
    internal const int LongestName = 60;
    internal const string Newest = "newest";

    /// <summary>Moments as a browser's date and time field writes them.</summary>
    internal static readonly LocalDateTimePattern Moment = LocalDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mm");
    private static readonly LocalDateTimePattern MomentWithSeconds = LocalDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mm':'ss");

    /// <summary>Name of the cookie that keeps the moment: a demonstration's moment says nothing about one's own mill.</summary>
    internal static string AsOf(bool demonstration) => demonstration ? "evengrist-asof-demonstration" : "evengrist-asof";

    /// <summary>Reads a moment of the mill's clock; null where the text is none.</summary>
    internal static LocalDateTime? ReadMoment(string? text)
    {
        var trimmed = (text ?? "").Trim().Replace(' ', 'T');
        return Moment.Parse(trimmed) is { Success: true } minutes ? minutes.Value
            : MomentWithSeconds.Parse(trimmed) is { Success: true } seconds ? seconds.Value
            : null;
    }

    /// <summary>Keeps a choice for a year.</summary>
    internal static void Keep(this HttpContext context, string cookie, string value) => context.Response.Cookies.Append(cookie, value, new CookieOptions
    {
        HttpOnly = true, SameSite = SameSiteMode.Lax, MaxAge = TimeSpan.FromDays(365), IsEssential = true,
    });

    /// <summary>What was kept; null where nothing was.</summary>
    internal static string? Kept(this HttpContext context, string cookie) =>
        context.Request.Cookies.TryGetValue(cookie, out var value) && !string.IsNullOrEmpty(value) ? value : null;

    /// <summary>Takes the choices made in the head of every page.</summary>
    public static void MapChoices(this WebApplication app) => app.MapPost("/choose", (HttpContext context, [FromForm] string? look, [FromForm] string? units, [FromForm] string? name, [FromForm] string? back) =>
    {
        if (look is "light" or "dark" or "auto")
        {
            context.Keep(Look, look);
        }

        if (units is "si" or "us")
        {
            context.Keep(Units, units);
        }

        if (CleanName(name) is { } clean)
        {
            context.Keep(Name, clean);
        }

        return Results.LocalRedirect(LocalPath.Of(back));
    }).ExcludeFromDescription();

    private static string? CleanName(string? name)
    {
        var clean = new string([.. (name ?? "").Where(c => !char.IsControl(c) && CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.Format)]).Trim();
        return clean.Length is > 0 and <= LongestName ? clean : null;
    }
}
