using System.Globalization;
using Evengrist.Intake.Trade;
using Evengrist.Records;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>The papers of the scale house: growers, merchants and carriers with their addresses, fields with their varieties, whose trailers they are, certificates. All invented.</summary>
internal static class TradeBooks
{
    private const string Office = "Ines Calloway";
    private const int FirstTrailer = 10;
    private const int LastTrailer = 58;
    private static readonly string[] Carriers = ["H1", "H2", "H3"];
    private static readonly LocalDate CropYear = new(2025, 7, 1);

    /// <summary>Names of varieties by class; ours.</summary>
    private static readonly Dictionary<string, string[]> Varieties = new()
    {
        ["HW"] = ["Sennor", "Tarvel", "Ostrin"], ["HWW"] = ["Blanquil"], ["SW"] = ["Pellmarsh", "Quillow"], ["HS"] = ["Brackmore", "Tindral"],
    };

    /// <summary>Keeps them all; what is kept already stays.</summary>
    public static void Keep(Mill mill)
    {
        Shelve(mill, Party.Kind, [.. Growers(), .. Others()]);
        Shelve(mill, FieldSheet.Kind, [.. Fields()]);
        Shelve(mill, Vehicle.Kind, [.. Enumerable.Range(FirstTrailer, LastTrailer - FirstTrailer + 1).Select(n => new Vehicle { Code = $"trailer {n}", Carrier = Carriers[n % Carriers.Length] })]);
        Shelve(mill, Certificate.Kind, [.. Certificates()]);
    }

    // One grower's telephone was never asked for: the receipt records say so.
    private static IEnumerable<Party> Growers() => Grower.All.Select((g, i) => new Party
    {
        Code = g.Code,
        Name = g.Farm,
        Address = string.Create(CultureInfo.InvariantCulture, $"{3 + (4 * i)} {g.District} Road, {g.District}"),
        Phone = g.Code == "F06" ? "" : string.Create(CultureInfo.InvariantCulture, $"555-01{20 + i}"),
        Email = i % 2 == 0 ? $"{g.Code.ToLowerInvariant()}@growers.example" : null,
    });

    private static IEnumerable<Party> Others() =>
    [
        new() { Code = "E1", Name = "Country elevator E1", Address = "Rail siding, Ulverhan Plain", Phone = "555-0151", Fax = "555-0152" },
        new() { Code = "E2", Name = "Country elevator E2", Address = "12 Depot Street, Ulverhan Plain", Phone = "555-0153" },
        new() { Code = "H1", Name = "Ulverhan Carriers", Address = "2 Yard Lane, Ulverhan Plain", Phone = "555-0161", Email = "desk@carriers.example" },
        new() { Code = "H2", Name = "Plain Road Haulage", Address = "18 Plain Road, Ulverhan Plain", Phone = "555-0162" },
        new() { Code = "H3", Name = "Bank Top Bulk", Address = "Bank Top, Talvin Bank", Phone = "555-0163" },
    ];

    private static IEnumerable<FieldSheet> Fields() => Grower.All.SelectMany(g => g.Fields.Select((field, i) => new FieldSheet
    {
        Code = field,
        Grower = g.Code,
        District = g.District,
        Variety = g.District switch
        {
            "Northledge" => $"HW {Of("HW", i)}; HWW {Of("HWW", i)}", "Talvin Bank" => Of("SW", i), "High Brack" => Of("HS", i), _ => Of("HW", i),
        },
        Hectares = 120m + (13.5m * i),
        From = CropYear,
    }));

    private static string Of(string wheat, int i) => Varieties[wheat][i % Varieties[wheat].Length];

    // The dockage tester's certificate ran out on the evening of 18 August and was renewed on the 20th: the tickets of the 19th are not for settlement.
    private static IEnumerable<Certificate> Certificates() =>
    [
        Of("scale 1", "truck scale", "W-25-118", new(2025, 2, 1), new(2026, 1, 31)), Of("scale 1", "truck scale", "W-26-042", new(2026, 2, 1), new(2027, 1, 31)),
        Of("NIR-1", "moisture and protein meter", "M-25-077", new(2025, 5, 12), new(2026, 2, 10)),
        Of("DK-1", "dockage tester", "D-24-310", new(2024, 8, 19), new(2025, 8, 18)), Of("DK-1", "dockage tester", "D-25-294", new(2025, 8, 20), new(2026, 8, 19)),
        Of("N-2", "combustion analyser", "N-25-006", new(2025, 9, 1), new(2026, 8, 31)), Of("TW-1", "test weight apparatus", "T-25-031", new(2025, 5, 12), new(2026, 5, 11)),
    ];

    private static Certificate Of(string code, string instrument, string number, LocalDate from, LocalDate until) =>
        new() { Code = code, Instrument = instrument, Number = number, Body = "Weights and Measures, Ulverhan (invented)", From = from, Until = until };

    private static void Shelve<T>(Mill mill, string kind, IReadOnlyList<T> papers)
        where T : class, ITradePaper
    {
        var shelf = mill.Papers(kind);
        foreach (var group in papers.GroupBy(p => p.Code))
        {
            foreach (var (i, paper) in group.Index())
            {
                shelf.Keep(paper.Code, i + 1, PaperText.Write(paper), Office);
            }
        }
    }
}
