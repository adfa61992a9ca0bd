using Evengrist.Plant.Prints.Labels;
using Evengrist.Records.Packing;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Packing;

/// <summary>Labels to print.</summary>
public static class LabelFiles
{
    /// <summary>Adds the files.</summary>
    public static void MapLabelFiles(this IEndpointRouteBuilder app)
    {
        app.MapGet("/packing/labels/pallets.pdf", Pallets).ExcludeFromDescription();
        app.MapGet("/packing/labels/bag.pdf", Bag).ExcludeFromDescription();
    }

    private static IResult Pallets(Visit visit, string? codes, string? size)
    {
        if (LabelSize.Find(size) is not { } sheet)
        {
            return Refuse(LabelSize.None(size));
        }

        var pallets = LabelPick.Typed(codes).Select(c => PalletOnLedger.Of(visit.Mill, c, visit.AsOf)).ToArray();
        string[] against = [.. pallets.SelectMany(p => p.Against), .. pallets.Where(p => p.Against.Count == 0 && LabelMade.Last(visit.Mill, p.Code) is null).Select(p => $"No label of {p.Code} was made yet: make it on the page of labels, with a name.")];
        var labels = pallets.Where(p => p.Facts is not null).Select(p => PalletLabel.Draw(p.Facts!, sheet, visit.AsOf.InUtc().Year)).ToArray();
        string[] faults = [.. against, .. labels.SelectMany(l => l.Faults).Select(f => $"{f}")];
        return pallets.Length == 0 ? Refuse("Say which pallets: ?codes=") : faults.Length > 0 ? Refuse(string.Join(" ", faults)) : Results.File(Label.Pdf([.. labels.Select(l => l.Value)]), "application/pdf", $"pallet-labels-{sheet.Name}.pdf");
    }

    private static IResult Bag(Visit visit, string? product, string? lot, string? size)
    {
        if (LabelSize.Find(size) is not { } sheet)
        {
            return Refuse(LabelSize.None(size));
        }

        var label = LabelPick.Bag(visit.Mill, product ?? "", lot ?? "", sheet, visit.AsOf.InUtc().Year);
        return label.Ok ? Results.File(label.Value.Pdf(), "application/pdf", $"bag-label-{lot}-{sheet.Name}.pdf") : Refuse(string.Join(" ", label.Faults.Select(f => $"{f}")));
    }

    private static IResult Refuse(string words) => Results.Problem(words, statusCode: StatusCodes.Status400BadRequest, title: "No label");
}
