using System.Globalization;
using Evengrist.Laboratory.Certificates;
using Evengrist.Plant.Prints;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Certificates as files: to print, and for programs.</summary>
public static class CertificateFiles
{
    /// <summary>Adds the files.</summary>
    public static void MapCertificateFiles(this IEndpointRouteBuilder app)
    {
        app.MapGet("/laboratory/certificates/{number}/certificate.pdf", Pdf).ExcludeFromDescription();
        app.MapGet("/laboratory/certificates/{number}/certificate.json", Json).ExcludeFromDescription();
        app.MapGet("/laboratory/certificates/keys/{id}.pem", (Visit visit, string id) => CertificateKeys.All(visit.Mill).FirstOrDefault(k => k.Id == id) is { } key ? Results.Text(key.Pem, "application/x-pem-file") : Results.NotFound()).ExcludeFromDescription();
    }

    private static IResult Pdf(Visit visit, string number, string? version, string? paper)
    {
        if (PaperSize.Find(paper) is not { } size)
        {
            return Results.Problem($"\"{paper}\" is no paper that certificates are printed on. Ask for a4 or letter.", statusCode: StatusCodes.Status400BadRequest, title: "No such paper");
        }

        if (Find(visit, number, version) is not { } certificate)
        {
            return Results.NotFound();
        }

        return Results.File(CertificatePdf.Write(certificate, IssuedCertificates.Find(visit.Mill, number)!.Version, visit.Head, size), "application/pdf", $"certificate-{certificate.Number}-{certificate.Version}-{size.Name}.pdf");
    }

    private static IResult Json(Visit visit, string number, string? version) =>
        Find(visit, number, version) is { } certificate ? Results.Text(CertificateTwin.Write(certificate), "application/json") : Results.NotFound();

    private static AnalysisCertificate? Find(Visit visit, string number, string? version) =>
        string.IsNullOrWhiteSpace(version) ? IssuedCertificates.Find(visit.Mill, number)
            : int.TryParse(version, NumberStyles.None, CultureInfo.InvariantCulture, out var which) ? IssuedCertificates.Find(visit.Mill, number, which) : null;
}
