using NodaTime;

namespace Evengrist.Intake.Trade;

/// <summary>The papers of the scale house: parties, fields, vehicles, certificates. Newest versions unless a day is asked for.</summary>
public sealed class TradePapers
{
    private readonly Dictionary<string, Party> parties = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, Vehicle> vehicles = new(StringComparer.OrdinalIgnoreCase);
    private readonly ILookup<string, FieldSheet> fields;
    private readonly ILookup<string, Certificate> certificates;

    /// <summary>Papers by kind, each in the order of its versions.</summary>
    public TradePapers(IEnumerable<Party> parties, IEnumerable<FieldSheet> fields, IEnumerable<Vehicle> vehicles, IEnumerable<Certificate> certificates)
    {
        ArgumentNullException.ThrowIfNull(parties);
        ArgumentNullException.ThrowIfNull(vehicles);
        foreach (var party in parties)
        {
            this.parties[party.Code] = party;
        }

        foreach (var vehicle in vehicles)
        {
            this.vehicles[vehicle.Code] = vehicle;
        }

        this.fields = fields.ToLookup(f => f.Code, StringComparer.OrdinalIgnoreCase);
        this.certificates = certificates.GroupBy(c => (c.Code.ToUpperInvariant(), c.Number)).Select(g => g.Last()).OrderBy(c => c.From).ToLookup(c => c.Code, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>No papers at all.</summary>
    public static TradePapers None { get; } = new([], [], [], []);

    /// <summary>Every party, by code.</summary>
    public IReadOnlyList<Party> Parties => [.. parties.Values.OrderBy(p => p.Code, StringComparer.OrdinalIgnoreCase)];

    /// <summary>Every field's newest sheet, by code.</summary>
    public IReadOnlyList<FieldSheet> Fields => [.. fields.Select(f => f.Last()).OrderBy(f => f.Code, StringComparer.OrdinalIgnoreCase)];

    /// <summary>Every vehicle, by plate.</summary>
    public IReadOnlyList<Vehicle> Vehicles => [.. vehicles.Values.OrderBy(v => v.Code, StringComparer.OrdinalIgnoreCase)];

    /// <summary>Every certificate that counts, by instrument and beginning.</summary>
    public IReadOnlyList<Certificate> Certificates => [.. certificates.OrderBy(c => c.Key, StringComparer.OrdinalIgnoreCase).SelectMany(c => c)];

    /// <summary>The party with the code; null where there is none.</summary>
    public Party? Party(string? code) => code is not null ? parties.GetValueOrDefault(code.Trim()) : null;

    /// <summary>The party with the code, or else the only one with the name; null where there is none.</summary>
    public Party? PartyNamed(string? codeOrName) => Party(codeOrName)
        ?? (parties.Values.Where(p => p.Name.Equals((codeOrName ?? "").Trim(), StringComparison.OrdinalIgnoreCase)).ToArray() is [var only] ? only : null);

    /// <summary>The sheet of a field that holds on a day: the newest that began by then; null where there is none.</summary>
    public FieldSheet? FieldOn(string code, LocalDate day) => fields[code].LastOrDefault(f => f.From is not { } from || from <= day);

    /// <summary>The party that hauls with a plate; null where no paper says so.</summary>
    public Party? CarrierOf(string plate) => vehicles.TryGetValue(plate.Trim(), out var vehicle) ? Party(vehicle.Carrier) : null;

    /// <summary>Certificates of an instrument, by beginning.</summary>
    public IEnumerable<Certificate> CertificatesOf(string instrument) => certificates[instrument.Trim()];

    /// <summary>The certificate of an instrument in force on a day; null where there is none.</summary>
    public Certificate? InForce(string instrument, LocalDate day) => CertificatesOf(instrument).LastOrDefault(c => c.InForceOn(day));
}
