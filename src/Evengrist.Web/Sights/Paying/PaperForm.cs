using System.Globalization;
using Evengrist.Intake.Trade;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Web.Sights.Paying;

/// <summary>A paper of the scale house as a person types it: a certificate, a party, a field or a vehicle.</summary>
public sealed class PaperForm
{
    /// <summary>Code of the instrument, party or field, or the plate.</summary>
    public string? Code { get; set; }

    /// <summary>Name, or kind of instrument.</summary>
    public string? Name { get; set; }

    /// <summary>Number of a certificate.</summary>
    public string? Number { get; set; }

    /// <summary>Issuing body.</summary>
    public string? Body { get; set; }

    /// <summary>First day.</summary>
    public string? From { get; set; }

    /// <summary>Last day.</summary>
    public string? Until { get; set; }

    /// <summary>Address.</summary>
    public string? Address { get; set; }

    /// <summary>Telephone.</summary>
    public string? Phone { get; set; }

    /// <summary>Fax.</summary>
    public string? Fax { get; set; }

    /// <summary>E-mail.</summary>
    public string? Email { get; set; }

    /// <summary>Code of the party: a field's grower, a vehicle's carrier.</summary>
    public string? Party { get; set; }

    /// <summary>District.</summary>
    public string? District { get; set; }

    /// <summary>Variety.</summary>
    public string? Variety { get; set; }

    /// <summary>Hectares.</summary>
    public string? Hectares { get; set; }

    /// <summary>The certificate; null with the fault where a date cannot be read.</summary>
    public Certificate? ToCertificate(out string? fault)
    {
        var (from, until) = (Date(From, "first day", out fault), Date(Until, "last day", out var later));
        fault ??= later;
        return from is null || until is null ? null : new Certificate { Code = Text(Code), Instrument = Text(Name), Number = Text(Number), Body = Text(Body), From = from.Value, Until = until.Value };
    }

    /// <summary>The party.</summary>
    public Party ToParty() => new() { Code = Text(Code), Name = Text(Name), Address = Text(Address), Phone = Text(Phone), Fax = OrNone(Fax), Email = OrNone(Email) };

    /// <summary>The field; null with the fault where a number or date cannot be read.</summary>
    public FieldSheet? ToField(out string? fault)
    {
        fault = null;
        LocalDate? from = Text(From).Length > 0 ? Date(From, "first day", out fault) : null;
        decimal? hectares = null;
        if (Text(Hectares).Length > 0)
        {
            hectares = decimal.TryParse(Text(Hectares), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var read) ? read : null;
            fault ??= hectares is null ? $"“{Text(Hectares)}” is no number of hectares. Write it like 61.5." : null;
        }

        return fault is not null ? null : new FieldSheet { Code = Text(Code), Grower = Text(Party), District = Text(District), Variety = Text(Variety), Hectares = hectares, From = from };
    }

    /// <summary>The vehicle.</summary>
    public Vehicle ToVehicle() => new() { Code = Text(Code), Carrier = Text(Party) };

    private static LocalDate? Date(string? text, string what, out string? fault)
    {
        var read = LocalDatePattern.Iso.Parse(Text(text));
        fault = read.Success ? null : $"The {what} is a date like 2025-07-09; read “{Text(text)}”.";
        return read.Success ? read.Value : null;
    }

    private static string Text(string? text) => (text ?? "").Trim();

    private static string? OrNone(string? text) => Text(text) is { Length: > 0 } some ? some : null;
}
