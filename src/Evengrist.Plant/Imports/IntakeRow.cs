using Evengrist.Ledger;

namespace Evengrist.Plant.Imports;

/// <summary>A row of an intake file: a truck opened, loaded at its field, weighed, sampled and tipped.</summary>
internal static class IntakeRow
{
    public static IReadOnlyList<Draft> Read(RowReader row)
    {
        var (ticket, from, wheat) = (row.Text("ticket"), row.Text("from"), row.Text("class"));
        var (at, tipped) = (row.Time("at"), row.Time("tipped"));
        var (gross, tare) = (row.Mass("gross"), row.Mass("tare"));
        var (through, bin) = (row.Codes("through"), row.Text("bin"));
        if (gross is not null && tare >= gross)
        {
            row.Fault("tare", "a tare below the gross weight");
        }

        if (tipped < at)
        {
            row.Fault("tipped", "a time not before the truck was weighed in");
        }

        if (bin.Length == 0 && (through.Count > 0 || tipped is not null))
        {
            row.Fault("bin", "the place it was tipped into, or no time and no way of tipping either");
        }

        var readings = ReadingCells.Read(row, ticket, at ?? default, $"ticket {ticket}");
        var contract = row.Text("contract");
        if (at is not { } weighed || gross is not { } full || tare is not { } empty)
        {
            return [];
        }

        var net = full - empty;
        var drafts = new List<Draft>
        {
            new OpenPlace($"ticket {ticket}", ticket, PlaceKind.Truck, row.Text("plate"), wheat),
            new Move($"ticket {ticket} loaded", from, ticket, net, weighed),
            new Measure($"ticket {ticket} gross", ticket, weighed, Property.GrossWeight, full.Kilograms, "kg", default, "truck scale"),
            new Measure($"ticket {ticket} tare", ticket, tipped ?? weighed, Property.TareWeight, empty.Kilograms, "kg", default, "truck scale"),
        };
        drafts.AddRange(readings);
        if (contract.Length > 0)
        {
            drafts.Add(new Happen($"ticket {ticket} contract", ticket, weighed, HappeningKind.Contract, contract));
        }

        if (bin.Length > 0)
        {
            string[] way = [ticket, .. through, bin];
            drafts.AddRange(way.Zip(way.Skip(1), (here, next) => new Move($"ticket {ticket} {here} to {next}", here, next, net, tipped ?? weighed)));
        }

        return drafts;
    }
}
