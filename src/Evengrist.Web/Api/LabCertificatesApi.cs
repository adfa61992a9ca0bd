using System.ComponentModel;
using System.Globalization;
using System.Text.Json;
using Evengrist.Laboratory.Certificates;
using Evengrist.Plant.Answers;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Certificates of analysis over HTTP.</summary>
internal static class LabCertificatesApi
{
    /// <summary>Adds them.</summary>
    public static void MapCertificates(this RouteGroupBuilder lab)
    {
        lab.MapGet("certificates", (MillDoor door, [Description("of one lot alone")] string? lot) => Results.Ok(IssuedCertificates.All(door.Mill!).Where(c => lot is null || c.Lot.Equals(lot, StringComparison.OrdinalIgnoreCase)).Select(CertificateAnswer.Of).ToArray()))
            .WithSummary("Certificates that were issued, by number and version").Produces<CertificateAnswer[]>();
        lab.MapGet("certificates/schema", () => Results.Text(CertificateSchema.Of().ToJsonString(new JsonSerializerOptions { WriteIndented = true }), "application/schema+json")).WithSummary("JSON schema of a certificate's twin");
        lab.MapGet("certificates/keys", (MillDoor door) => Results.Ok(CertificateKeys.All(door.Mill!))).WithSummary("The mill's public keys, ECDSA P-256: a twin's signature is over SHA-256 of its canonical text").Produces<CertificateKey[]>();
        lab.MapGet("certificates/{number}", Show).WithSummary("A certificate's JSON twin: the newest version, or another with ?version=").ProducesProblem(StatusCodes.Status404NotFound);
        lab.MapPost("lots/{code}/certificates", Issue).WithSummary("Issue a certificate of a released lot against ?specification=; say who signs with ?by=. A reissue is the next version").Produces<CertificateAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        lab.MapPost("certificates/check", (Delegate)CheckAsync).WithSummary("Whether a code (?code=) or a JSON twin (the body) is of a certificate that was issued").Accepts<object>("application/json").Produces<CertificateCheckAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static IResult Show(MillDoor door, string number, string? version)
    {
        int? which = string.IsNullOrWhiteSpace(version) ? null : int.TryParse(version, NumberStyles.None, CultureInfo.InvariantCulture, out var read) ? read : 0;
        return IssuedCertificates.Find(door.Mill!, number, which) is { } certificate ? Results.Text(CertificateTwin.Write(certificate), "application/json")
            : Results.Problem($"No certificate {number}{(which is null ? "" : $" in version {version}")} is kept. GET /api/lab/certificates lists them.", statusCode: StatusCodes.Status404NotFound, title: "No such certificate");
    }

    private static IResult Issue(MillDoor door, IClock clock, string code, string? specification, string? by, [Description("when: mill time or with an offset; now when left out")] string? at)
    {
        if (ApiMoment.OrNow(at, door.Mill!.Settings, clock) is not { } moment)
        {
            return MixApi.Refuse([$"“{at}” is no moment: write it like 2026-01-14T10:40."], "Not issued");
        }

        var (certificate, refused) = IssuedCertificates.Issue(door.Mill!, code, specification ?? "", by ?? "", moment);
        return certificate is null ? MixApi.Refuse(refused, "Not issued") : Results.Json(CertificateAnswer.Of(certificate), statusCode: StatusCodes.Status201Created);
    }

    private static async Task<IResult> CheckAsync(HttpContext context, MillDoor door, string? code)
    {
        if (!string.IsNullOrWhiteSpace(code))
        {
            return Results.Ok(CertificateCheckAnswer.Of(IssuedCertificates.Check(door.Mill!, code)));
        }

        using var reader = new StreamReader(context.Request.Body);
        return CertificateTwin.TryRead(await reader.ReadToEndAsync(context.RequestAborted), out var twin, out var faults) ? Results.Ok(CertificateCheckAnswer.Of(IssuedCertificates.Check(door.Mill!, twin))) : MixApi.Refuse(faults, "No certificate");
    }
}
