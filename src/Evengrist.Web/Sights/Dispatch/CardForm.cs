using System.Globalization;
using Evengrist.Packing.Dispatch;
using Evengrist.Web.Sights.Bins;
using NodaTime.Text;

namespace Evengrist.Web.Sights.Dispatch;

/// <summary>A consignee's card as it was typed.</summary>
public sealed class CardForm
{
    /// <summary>Code of the place.</summary>
    public string? Code { get; set; }

    /// <summary>Name of the firm.</summary>
    public string? Name { get; set; }

    /// <summary>Address in one line.</summary>
    public string? Address { get; set; }

    /// <summary>Person to ask for.</summary>
    public string? Contact { get; set; }

    /// <summary>Telephone of the office.</summary>
    public string? Phone { get; set; }

    /// <summary>Telephone for a recall.</summary>
    public string? RecallPhone { get; set; }

    /// <summary>Fax.</summary>
    public string? Fax { get; set; }

    /// <summary>E-mail address.</summary>
    public string? Email { get; set; }

    /// <summary>What it does with flour, by name.</summary>
    public string? Use { get; set; }

    /// <summary>Days a flour must still keep.</summary>
    public string? LeastDaysLeft { get; set; }

    /// <summary>Confirmed on, as 2026-01-14.</summary>
    public string? Confirmed { get; set; }

    /// <summary>A card to be changed; whoever keeps it anew has to have rung for a new day.</summary>
    internal static CardForm Of(ConsigneeCard card) => new()
    {
        Code = card.Code, Name = card.Name, Address = card.Address, Contact = card.Contact, Phone = card.Phone, RecallPhone = card.RecallPhone, Fax = card.Fax, Email = card.Email, Use = card.Use.ToString(),
        LeastDaysLeft = card.LeastDaysLeft > 0 ? card.LeastDaysLeft.ToString(CultureInfo.InvariantCulture) : "", Confirmed = card.Confirmed is { } day ? LocalDatePattern.Iso.Format(day) : "",
    };

    /// <summary>The card; null with every fault where it cannot be read.</summary>
    internal ConsigneeCard? Read(string? by, out IReadOnlyList<string> faults)
    {
        static string Line(string? text) => text?.Trim() ?? "";
        var confirmed = TypedDay.Read(Confirmed);
        var days = 0;
        faults =
        [
            .. Line(Confirmed).Length == 0 || confirmed is not null ? Array.Empty<string>() : [TypedDay.None(Confirmed)],
            .. Line(LeastDaysLeft).Length == 0 || int.TryParse(Line(LeastDaysLeft), NumberStyles.None, CultureInfo.InvariantCulture, out days) ? Array.Empty<string>() : [$"“{LeastDaysLeft}” is no number of days."],
            .. Line(Use).Length == 0 || (Enum.TryParse<ConsigneeUse>(Line(Use), out var read) && Enum.IsDefined(read)) ? Array.Empty<string>() : [$"“{Use}” is nothing a consignee does: {string.Join(", ", Enum.GetNames<ConsigneeUse>())}."],
        ];
        return faults.Count > 0 ? null : new ConsigneeCard(Line(Code), Line(Name))
        {
            Address = Line(Address), Contact = Line(Contact), Phone = Line(Phone), RecallPhone = Line(RecallPhone), Fax = Line(Fax) is { Length: > 0 } fax ? fax : null, Email = Line(Email) is { Length: > 0 } mail ? mail : null,
            Use = Line(Use).Length > 0 ? Enum.Parse<ConsigneeUse>(Line(Use)) : ConsigneeUse.Unknown, LeastDaysLeft = days, Confirmed = confirmed, ConfirmedBy = confirmed is not null ? by?.Trim() ?? "" : "",
        };
    }
}
