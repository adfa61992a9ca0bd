using Evengrist.Records.Laboratory;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Photographs of bakes as the pages show them.</summary>
public static class BakeFiles
{
    /// <summary>Adds the pictures.</summary>
    public static void MapBakeFiles(this IEndpointRouteBuilder app) => app.MapGet("/laboratory/bake/photographs/{hash}", Picture).ExcludeFromDescription();

    private static IResult Picture(Visit visit, string hash) => BakePhotographs.Picture(visit.Mill, hash) is { } picture ? Results.File(picture.Bytes, picture.MediaType) : Results.NotFound();
}
