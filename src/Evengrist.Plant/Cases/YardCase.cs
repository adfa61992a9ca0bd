using Evengrist.Intake;

namespace Evengrist.Plant.Cases;

/// <summary>A yard posed in JSON: lanes, how long a truck is served, who is being served and who comes when.</summary>
public static class YardCase
{
    private const int MostTrucks = 2000, MostLanes = 100;
    private const decimal MostMinutes = 10_000m;

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "lanes":     whole number 1 to 100, trucks served at once; 1 when left out
          "service":   number above 0, minutes for which one truck is served
          "deviation": number, standard deviation of it between trucks in minutes; 0 when left out
          "underWay":  [ number ... ]   minutes for which each truck that is being served has been; none when left out
          "arrivals":  [ number ... ]   when each other truck comes, in minutes from now; one that waits already came below 0
        }
        """,
        """
        { "lanes": 2, "service": 14, "deviation": 3, "underWay": [ 4 ], "arrivals": [ -6, -2, 0, 5, 9 ] }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<YardSpec> Read(Stream stream) => JsonCase.Read<YardSpec>(stream, (root, _) => Of(root));

    private static YardSpec? Of(JsonNode root)
    {
        if (!root.IsObject("lanes", "service", "deviation", "underWay", "arrivals"))
        {
            return null;
        }

        double[] Minutes(string name, decimal least, bool required) => [.. (root.Member(name, required)?.Items(MostTrucks) ?? []).Select(n => (double)(n.Number(least, MostMinutes) ?? 0m))];
        return new YardSpec(
            root.Member("lanes", required: false)?.Whole(1, MostLanes) ?? 1,
            (double)(root.Member("service")?.Number(0.001m, MostMinutes) ?? 1m),
            (double)(root.Member("deviation", required: false)?.Number(0m, MostMinutes) ?? 0m),
            Minutes("underWay", 0m, required: false),
            Minutes("arrivals", -MostMinutes, required: true));
    }
}
