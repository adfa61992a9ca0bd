using Evengrist.Plant.Prints;
using Evengrist.Records.Packing;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Packing;

/// <summary>Inspections of net content to print.</summary>
public static class InspectionFiles
{
    /// <summary>Adds the file.</summary>
    public static void MapInspectionFiles(this IEndpointRouteBuilder app) => app.MapGet("/packing/content/inspections/{number}/inspection.pdf", Pdf).ExcludeFromDescription();

    private static IResult Pdf(Visit visit, string number, string? paper)
    {
        if (PaperSize.Find(paper) is not { } size)
        {
            return Results.Problem($"\"{paper}\" is no paper that inspections are printed on. Ask for a4 or letter.", statusCode: StatusCodes.Status400BadRequest, title: "No such paper");
        }

        if (ContentInspections.Find(visit.Mill, number) is not { } found)
        {
            return Results.NotFound();
        }

        return Results.File(InspectionPdf.Write(found.Number, found.Inspection, ContentAsk.SourceOf(found.Inspection.Rules), visit.Head, size), "application/pdf", $"{found.Number}-{size.Name}.pdf");
    }
}
