using System.Globalization;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http.Features;

namespace Evengrist.Web.Security;

/// <summary>How much one request may bring.</summary>
public static class UploadBound
{
    /// <summary>Most megabytes of one request: a document of events of the size that is read (32 MiB, on the command line too), and the fields beside it.</summary>
    public const int MegaBytes = 33;

    /// <summary>The same in bytes.</summary>
    public const int Bytes = MegaBytes * 1024 * 1024;

    /// <summary>What is said to whoever sent more.</summary>
    public static string Advice { get; } = string.Create(CultureInfo.InvariantCulture, $"At most {MegaBytes} MB are taken at once. Nothing was recorded. Send it in parts: by month, by bin or by day.");

    /// <summary>Longest first line of a request, bytes: an address with a sheet in it.</summary>
    public const int LongestLine = 32 * 1024;

    // Up to here a body that is too large is read past and thrown away: a browser that is cut off while it sends shows no answer.
    private const long ReadPast = 256L * 1024 * 1024;

    /// <summary>Refuses a body that says it is larger; nothing of it is kept.</summary>
    public static void UseUploadBound(this IApplicationBuilder app) => app.Use(async (context, next) =>
    {
        // The page that says so is asked for with the same request, and is not refused again.
        if (context.Request.ContentLength is not > Bytes || context.Features.Get<IStatusCodeReExecuteFeature>() is not null)
        {
            await next(context);
            return;
        }

        if (context.Request.ContentLength <= ReadPast && context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } bound)
        {
            bound.MaxRequestBodySize = ReadPast;
            await context.Request.Body.CopyToAsync(Stream.Null, context.RequestAborted);
        }

        context.Response.StatusCode = StatusCodes.Status413PayloadTooLarge;
    });

    /// <summary>Sets the bound for bodies and forms.</summary>
    public static void BoundUploads(this WebApplicationBuilder builder)
    {
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = Bytes;

            // A sheet that is worked on stands in its address, so that it can be kept and sent: a survey of many streams is longer than the usual line.
            kestrel.Limits.MaxRequestLineSize = LongestLine;
        });
        builder.Services.Configure<FormOptions>(form =>
        {
            form.MultipartBodyLengthLimit = Bytes;
            form.ValueCountLimit = 512;
        });
    }
}
