using Evengrist.Milling.OnPaper;
using Evengrist.Milling.Sheet;
using Evengrist.Quantities;
using Evengrist.Streams;

namespace Evengrist.Web.Sights.Flow;

/// <summary>The ash curve of a mill on paper: its flour streams from the least ash to the most.</summary>
public static class TrialCurves
{
    /// <summary>The curve; null where fewer than two flour streams flow.</summary>
    /// <param name="sheet">The flow sheet.</param>
    /// <param name="forecast">The mill, as it is set or as tried.</param>
    /// <param name="basis">Basis of ash and protein.</param>
    public static AshCurve? Of(FlowSheet sheet, MillForecast forecast, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(forecast);
        MillStream[] streams = [.. sheet.Products.Index().Where(p => p.Item.Kind == ProductKind.Flour).Select(p => Stream(forecast.Products[p.Index], basis)).Where(s => s.Yield > 0)];
        var table = new StreamTable(streams, basis);
        return streams.Length > 1 && table.Faults().Count == 0 ? AshCurve.Of(table) : null;
    }

    private static MillStream Stream(SetForecast stream, Basis basis) =>
        new(stream.Name, stream.YieldPercent.Value, stream.AshPercentDry.Value / basis.ToDry) { ProteinPercent = stream.ProteinPercentDry.Value / basis.ToDry };
}
