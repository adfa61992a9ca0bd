using System.Globalization;
using Evengrist.Demo;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Edge.Tests.Web.Trucks;

/// <summary>One truck of the demonstration's harvest as it came to the scale house, in the texts a station types.</summary>
internal sealed record HarvestTruck(string Plate, string Source, string Class, string Contract, Mass Gross, Mass Tare, string Bin, string Way, Instant At, IReadOnlyDictionary<string, string> Sample)
{
    public Mass Net => Gross - Tare;
}

/// <summary>The trucks of 9 July 2025 in the demonstration, and everything that was recorded before the first of them.</summary>
internal sealed record HarvestDay(IReadOnlyList<DemoBatch> Before, IReadOnlyList<HarvestTruck> Trucks)
{
    private const string Day = "25-0709-";

    /// <summary>Read from the demonstration's own drafts.</summary>
    public static HarvestDay Read()
    {
        var before = new List<DemoBatch>();
        var trucks = new List<HarvestTruck>();
        foreach (var batch in DemonstrationMill.Drafts())
        {
            var opened = batch.Drafts.OfType<OpenPlace>().Where(p => p.Kind == PlaceKind.Truck && p.Code.StartsWith(Day, StringComparison.Ordinal)).ToArray();
            trucks.AddRange(opened.Select(p => Truck(p, batch.Drafts)));
            if (trucks.Count == 0)
            {
                before.Add(batch);
            }
            else if (batch.Drafts.OfType<OpenPlace>().Any(p => p.Code.StartsWith("25-0710-", StringComparison.Ordinal)))
            {
                break;
            }
        }

        return new HarvestDay(before, [.. trucks.OrderBy(t => t.At)]);
    }

    private static HarvestTruck Truck(OpenPlace place, IReadOnlyList<Draft> drafts)
    {
        var readings = drafts.OfType<Measure>().Where(m => m.On == place.Code).ToArray();
        var moves = drafts.OfType<Move>().ToArray();
        var (into, tipped) = (Array.Find(moves, m => m.To == place.Code)!, Array.Find(moves, m => m.From == place.Code)!);
        var lifted = Array.Find(moves, m => m.From == tipped.To && m.At == tipped.At && m.Mass == tipped.Mass)!;
        var binned = Array.Find(moves, m => m.From == lifted.To && m.At == lifted.At && m.Mass == lifted.Mass)!;
        string Read(Property what) => Array.Find(readings, r => r.What == what)?.Value.ToString(CultureInfo.InvariantCulture) ?? "";
        Mass Weight(Property what) => Mass.FromKilograms(Array.Find(readings, r => r.What == what)!.Value);
        return new HarvestTruck(
            place.Name, into.From, place.Material, drafts.OfType<Happen>().FirstOrDefault(h => h.On == place.Code && h.Kind == HappeningKind.Contract)?.Text ?? "",
            Weight(Property.GrossWeight), Weight(Property.TareWeight), binned.To, $"{tipped.To} | {lifted.To}", Array.Find(readings, r => r.What == Property.GrossWeight)!.At,
            new Dictionary<string, string>
            {
                ["moisture"] = Read(Property.Moisture), ["protein"] = Read(Property.Protein), ["proteinBasis"] = "12mb", ["dockage"] = Read(Property.Dockage),
                ["testWeight"] = Read(Property.TestWeight), ["testWeightUnit"] = "kg/hL", ["fallingNumber"] = Read(Property.FallingNumber), ["don"] = Read(Property.Don), ["donBasis"] = "12mb",
            });
    }
}
