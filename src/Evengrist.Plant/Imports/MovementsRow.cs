using Evengrist.Ledger;

namespace Evengrist.Plant.Imports;

/// <summary>A row of a movements file: one movement, and where the row says so the pallet, load or tote it fills.</summary>
internal static class MovementsRow
{
    private static readonly PlaceKind[] Openable = [PlaceKind.Pallet, PlaceKind.BulkLoad, PlaceKind.ReworkTote, PlaceKind.Truck];

    public static IReadOnlyList<Draft> Read(RowReader row)
    {
        var (number, from, to) = (row.Text("number"), row.Text("from"), row.Text("to"));
        var (mass, at, until) = (row.Mass("mass"), row.Time("at"), row.Time("until"));
        var (note, material) = (row.Text("note"), row.Text("material"));
        if (until < at)
        {
            row.Fault("until", "an end that is not before the beginning");
        }

        if (from.Length > 0 && from.Equals(to, StringComparison.OrdinalIgnoreCase))
        {
            row.Fault("to", "another place than the one it left");
        }

        var opens = row.Has("opens") ? BinsRow.Kind(row, "opens", Openable) : PlaceKind.None;
        if (material.Length > 0 && opens == PlaceKind.None)
        {
            row.Fault("material", "nothing, since the row opens no place");
        }

        if (mass is null || at is null)
        {
            return [];
        }

        var key = number.Length > 0 ? number : $"{from} to {to} {at}";
        var move = new Move(key, from, to, mass.Value, at.Value, until) { Note = note.Length > 0 ? note : null };
        return opens == PlaceKind.None ? [move] : [new OpenPlace($"place {to}", to, opens, Material: material), move];
    }
}
