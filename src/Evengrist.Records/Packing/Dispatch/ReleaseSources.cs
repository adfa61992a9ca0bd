using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;
using Evengrist.Tracing;

namespace Evengrist.Records.Packing.Dispatch;

/// <summary>The sources of what one load released: every package traced back, and the shares added up.</summary>
public static class ReleaseSources
{
    /// <summary>The record of a load that left; null where it has not, or none is kept.</summary>
    public static ReleaseRecord? RecordOf(Mill mill, string? number) => DispatchShelf.Find(mill, number) is { Departed: { } left } load
        ? ReleaseRecords.Of(mill, left.At, left.At + NodaTime.Duration.FromMilliseconds(1)).FirstOrDefault(r => r.Load == load.Number) : null;

    /// <summary>Its sources, the largest expected first: Σ over packages of share times what left on the package, under the usual beliefs of how bins empty.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="record">The record.</param>
    public static IReadOnlyList<ReleaseSource> Of(Mill mill, ReleaseRecord record)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(record);
        return mill.Ask(view =>
        {
            var (tracer, sums) = (view.Tracer(), new Dictionary<(PlaceId Origin, PlaceId Truck), ReleaseSource>());
            foreach (var code in record.Lots.SelectMany(l => l.Packages))
            {
                var package = view.Book.Named(code).Id;
                var kilograms = view.Book.MovementsOf(package).Select(m => view.Book.Movements[m]).Where(m => m.From == package && m.At == record.At).Sum(m => (double)m.Mass.Kilograms);
                foreach (var root in tracer.Roots(new TraceQuestion(code) { AsOf = record.At }).Roots)
                {
                    var key = (root.Origin.Id, root.Truck?.Id ?? default);
                    var before = sums.GetValueOrDefault(key) ?? new ReleaseSource(root.Origin, root.Truck, 0, 0);
                    sums[key] = before with { ExpectedKilograms = before.ExpectedKilograms + (root.Share.Expected * kilograms), MostKilograms = before.MostKilograms + (root.Share.Most * kilograms) };
                }
            }

            return sums.Values.OrderByDescending(s => s.ExpectedKilograms).ThenBy(s => s.Origin.Code, StringComparer.Ordinal).ThenBy(s => s.Truck?.Code, StringComparer.Ordinal).ToArray();
        });
    }
}
