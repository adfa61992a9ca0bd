using Microsoft.AspNetCore.Http.Features;

namespace Evengrist.Web.Security;

/// <summary>How much one request may bring.</summary>
public static class UploadBound
{
    /// <summary>Most megabytes of one request: a file of the size that an import reads, and the fields beside it.</summary>
    public const int MegaBytes = 21;

    /// <summary>The same in bytes.</summary>
    public const int Bytes = MegaBytes * 1024 * 1024;

    /// <summary>Longest first line of a request, bytes: an address with a sheet in it.</summary>
    public const int LongestLine = 32 * 1024;

    /// <summary>Refuses a body that says it is larger before a byte of it is read.</summary>
    public static void UseUploadBound(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        if (context.Request.ContentLength > Bytes)
        {
            context.Response.StatusCode = StatusCodes.Status413PayloadTooLarge;
            return Task.CompletedTask;
        }

        return next(context);
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
