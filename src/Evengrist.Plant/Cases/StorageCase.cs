using Evengrist.Bins.Storage;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Plant.Cases;

/// <summary>A bin of stored wheat posed in JSON.</summary>
/// <param name="Bin">What lies in it and what its cables show.</param>
/// <param name="Constants">Equilibrium constants of its wheat.</param>
/// <param name="At">The moment asked as of.</param>
public sealed record StorageCase(StoredBin Bin, EmcConstants Constants, Instant At)
{
    private const int MostLayers = 500;
    private const int MostReadings = 5000;

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        $$"""
        {
        {{EmcCase.Schema.Replace("  \"equation\":  \"Henderson\", \"ChungPfost\", \"Oswin\" or \"Halsey\"; the first there are constants for when left out\n", "", StringComparison.Ordinal)}}
          "asOf":     date and time with its offset
          "layers":   [ { "name": text, "t": number, "moisturePercent": number (left out: not read), "arrived": date and time,
                          "deliveryCelsius": number (left out: not read), "temperatures": [ { "at": date and time, "celsius": number } ... ] } ... ]   bottom first
          "cables":   [ { "point": "C2 at 4.0 m", "at": date and time, "celsius": number } ... ]   may be left out
          "seasonPerWeek": what the season does to all points, °C a week; not known when left out
        }
        """,
        """
        { "wheat": "hard", "asOf": "2025-09-01T08:00-06:00",
          "layers": [ { "name": "lower half", "t": 300, "moisturePercent": 14.5, "arrived": "2025-08-01T08:00-06:00",
                        "temperatures": [ { "at": "2025-08-08T08:00-06:00", "celsius": 27 }, { "at": "2025-08-29T08:00-06:00", "celsius": 24 } ] } ] }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<StorageCase> Read(Stream stream) => JsonCase.Read<StorageCase>(stream, (root, _) => Of(root));

    private static StorageCase? Of(JsonNode root)
    {
        if (!root.IsObject("wheat", "constants", "asOf", "layers", "cables", "seasonPerWeek"))
        {
            return null;
        }

        var table = EmcCase.Table(root);
        var (wheat, at) = (EmcCase.Wheat(root, table), root.Time("asOf"));
        StoredLayer?[] layers = [.. (root.Member("layers")?.Items(MostLayers) ?? []).Select(l => Layer(l, at))];
        CableReading?[] cables = [.. (root.Member("cables", required: false)?.Items(MostReadings) ?? []).Select(Cable)];
        var season = EmcCase.Double(root, "seasonPerWeek", -20, 20, required: false);
        if (table is null || wheat is null || at is null || layers.Contains(null) || cables.Contains(null))
        {
            return null;
        }

        CableReading[] read = [.. cables.OfType<CableReading>().Where(c => c.At <= at).OrderBy(c => c.At)];
        return new StorageCase(
            new StoredBin(new Place(new PlaceId(1), "posed", PlaceKind.Bin, Material: wheat), [.. layers.OfType<StoredLayer>()], CableModel.Of(read, season)) { LevelsBy = "layers as posed, without heights" },
            table.Constants.First(c => c.Wheat.Equals(wheat, StringComparison.OrdinalIgnoreCase)), at.Value);
    }

    private static StoredLayer? Layer(JsonNode node, Instant? at)
    {
        if (!node.IsObject("name", "t", "kg", "moisturePercent", "arrived", "deliveryCelsius", "temperatures"))
        {
            return null;
        }

        var (name, mass, moisture, arrived) = (node.Text("name", ""), node.Mass(), EmcCase.Double(node, "moisturePercent", 1, 59, required: false), node.Time("arrived"));
        var delivery = EmcCase.Double(node, "deliveryCelsius", -60, 80, required: false);
        TemperatureAt?[] read = [.. (node.Member("temperatures", required: false)?.Items(MostReadings) ?? []).Select(Temperature)];
        if (arrived is { } came && at is { } asked && came > asked)
        {
            node.Member("arrived")!.Fault("a moment not after asOf");
            return null;
        }

        return mass is null || arrived is null || read.Contains(null) ? null
            : new StoredLayer((double)mass.Value.Tonnes, arrived.Value, moisture, delivery, [.. read.OfType<TemperatureAt>()]) { Name = name, MoistestPercent = moisture };
    }

    private static TemperatureAt? Temperature(JsonNode node) => node.IsObject("at", "celsius") && node.Time("at") is { } at && EmcCase.Double(node, "celsius", -60, 80) is { } celsius
        ? new TemperatureAt(at, celsius) : null;

    private static CableReading? Cable(JsonNode node)
    {
        if (!node.IsObject("point", "at", "celsius"))
        {
            return null;
        }

        var (point, at, celsius) = (CablePoint.Parse(node.Text("point")), node.Time("at"), EmcCase.Double(node, "celsius", -60, 80));
        if (point is null)
        {
            node.Member("point", required: false)?.Fault(CablePoint.Form);
        }

        return point is null || at is null || celsius is null ? null : new CableReading(point, at.Value, celsius.Value);
    }
}
