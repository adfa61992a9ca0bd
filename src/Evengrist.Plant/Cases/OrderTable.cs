using Evengrist.Packing.Orders;
using Evengrist.Plant.Imports;
using Evengrist.Plant.Tables;
using NodaTime;

namespace Evengrist.Plant.Cases;

/// <summary>Orders read from CSV text or a workbook: one row for each.</summary>
/// <param name="Rows">Each with its line.</param>
public sealed record OrderTable(IReadOnlyList<(int Line, PackingOrder Order)> Rows)
{
    private static readonly Limits Most = new() { Bytes = 2 * 1024 * 1024, Rows = 5_000, Columns = 16 };

    /// <summary>Reads a file: all of it, or every fault with line and column. Whether the orders can be taken is asked when they are to be kept.</summary>
    /// <param name="stream">The file.</param>
    /// <param name="zone">Zone of times without an offset.</param>
    /// <param name="now">When orders are taken that do not say it.</param>
    public static Parsed<OrderTable> Read(Stream stream, DateTimeZone zone, Instant now) => CsvRows.Of(stream, Most, OrderColumns.All, "one for each order", line => Row(line, zone, now))
        .Then(rows => Parsing.Got(new OrderTable([.. rows.Select(r => r!.Value)])));

    private static (int, PackingOrder)? Row(FileLine line, DateTimeZone zone, Instant now)
    {
        foreach (var (heading, expected) in new[] { ("number", "the number of the order"), ("product", "the code of a product") })
        {
            if (line[heading].Length == 0)
            {
                line.Fault(heading, expected);
            }
        }

        var quantity = line.Reported("quantity");
        if (quantity is null && line["quantity"].Length == 0)
        {
            line.Fault("quantity", "how much; the cell is empty");
        }
        else if (quantity <= 0)
        {
            line.Fault("quantity", "a number above 0");
        }

        OrderUnit? unit = line["unit"].ToUpperInvariant() switch { "" or "KG" => OrderUnit.Kilograms, "PACKS" or "PACK" => OrderUnit.Packs, _ => null };
        if (unit is null)
        {
            line.Fault("unit", "packs or kg");
        }

        var (due, expectedDue) = Moments.Of(line["due"], zone);
        if (due is null)
        {
            line.Fault("due", expectedDue);
        }

        var (taken, expectedTaken) = line["taken"].Length == 0 ? (now, "") : Moments.Of(line["taken"], zone);
        if (taken is null)
        {
            line.Fault("taken", expectedTaken);
        }

        var priority = line["priority"].Length == 0 ? 1 : line.Reported("priority") ?? 0;
        if (priority is < 1 or > PackingOrder.MostPriority || priority != Math.Floor(priority))
        {
            line.Fault("priority", "a whole number from 1 to 9");
        }

        bool? fromStock = line["from stock"].ToUpperInvariant() switch { "" or "NO" => false, "YES" => true, _ => null };
        if (fromStock is null)
        {
            line.Fault("from stock", "yes or no");
        }

        return quantity > 0 && unit is { } counted && due is { } by && taken is { } from && fromStock is { } stock
            ? (line.Line, new PackingOrder(line["number"], line["customer"], line["product"], quantity.Value, counted, by, from, stock) { Priority = (int)priority, Remark = line["remark"] }) : null;
    }
}
