using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using NodaTime;

// Writes batches for as long as it lives and says of each, once it is acknowledged, how far the ledger has come. It is there to be killed.
// Arguments: file or postgres, where, and a word that no run before has used.
var (where, run) = (args[1], args[2]);
var random = new Random(run.GetHashCode(StringComparison.Ordinal));
using var mill = Mill.Open(args[0] == "file" ? MillOptions.InFile(where) : MillOptions.Shared(where), SystemClock.Instance);
mill.Record([new OpenPlace("f", "F1", PlaceKind.Field), new OpenPlace("b", "B1", PlaceKind.Bin), new OpenPlace("p", "PIT", PlaceKind.Pit), new Connect("c", "PIT", "B1")], "killed", "plant");
var at = Instant.FromUtc(2026, 7, 1, 6, 0);
for (var n = 0; ; n++)
{
    // Every batch opens trucks and empties them, and its last fact says that it is whole.
    var batch = new List<Draft>();
    for (var t = random.Next(1, 200); t > 0; t--)
    {
        var (truck, mass) = ($"{run}-{n}-{t}", Mass.FromGrams(random.Next(1, 40_000_000)));
        batch.Add(new OpenPlace(truck, truck, PlaceKind.Truck));
        batch.Add(new Move(truck + "/net", "F1", truck, mass, at));
        batch.Add(new Measure(truck + "/m", truck, at, Property.Moisture, 11.40m, "%", default, "NIR"));
        batch.Add(new Move(truck + "/pit", truck, "PIT", mass, at));
        batch.Add(new Move(truck + "/bin", "PIT", "B1", mass, at));
    }

    batch.Add(new Happen($"{run}-{n}", "B1", at, HappeningKind.Note, $"whole {batch.Count + 1}"));
    Console.WriteLine(mill.Record(batch, "killed", "killed").Last!.Value.Value);
}
