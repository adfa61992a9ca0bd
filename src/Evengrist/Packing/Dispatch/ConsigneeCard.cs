using System.Diagnostics.CodeAnalysis;
using NodaTime;

namespace Evengrist.Packing.Dispatch;

/// <summary>What the mill knows of a consignee, so that it can be told of a recall within the hour. Kept as a paper by the code of its place; a change is the next version.</summary>
/// <param name="Code">Code of the customer's place in the ledger.</param>
/// <param name="Name">Name of the firm.</param>
public sealed record ConsigneeCard(string Code, string Name)
{
    /// <summary>Kind of its paper.</summary>
    public const string Kind = "consignee";

    /// <summary>Days after which a card is asked about again: a year [ours].</summary>
    public const int KeepsDays = 365;

    private const int Longest = 200;

    /// <summary>Postal address in one line; may be empty.</summary>
    public string Address { get; init; } = "";

    /// <summary>The person to ask for; may be empty.</summary>
    public string Contact { get; init; } = "";

    /// <summary>Telephone of the office; may be empty.</summary>
    public string Phone { get; init; } = "";

    /// <summary>Telephone that is answered at any hour, for a recall; may be empty.</summary>
    public string RecallPhone { get; init; } = "";

    /// <summary>Fax, where there is one.</summary>
    public string? Fax { get; init; }

    /// <summary>E-mail address, where there is one.</summary>
    public string? Email { get; init; }

    /// <summary>What it does with the flour, which says how far a recall may have to go.</summary>
    public ConsigneeUse Use { get; init; }

    /// <summary>Days a flour must still keep when it leaves; 0 where nothing is agreed.</summary>
    public int LeastDaysLeft { get; init; }

    /// <summary>The day on which somebody last rang and all of it was right; null where nobody did.</summary>
    public LocalDate? Confirmed { get; init; }

    /// <summary>Who rang.</summary>
    public string ConfirmedBy { get; init; } = "";

    /// <summary>What stands against telling it of a recall today, each in a few words; empty where nothing does.</summary>
    public IReadOnlyList<string> NotReady(LocalDate today) =>
    [
        .. Address.Length == 0 ? ["no address"] : Array.Empty<string>(), .. Contact.Length == 0 ? ["nobody to ask for"] : Array.Empty<string>(), .. Phone.Length == 0 ? ["no telephone"] : Array.Empty<string>(),
        .. RecallPhone.Length == 0 ? ["no telephone for a recall"] : Array.Empty<string>(),
        .. Confirmed is not { } day ? ["never confirmed"] : Period.DaysBetween(day, today) > KeepsDays ? [FormattableString.Invariant($"confirmed {Period.DaysBetween(day, today)} days ago, more than a year")] : Array.Empty<string>(),
    ];

    /// <summary>What is wrong with it, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Code) ? ["A consignee has the code of its place in the ledger."] : Array.Empty<string>(), .. string.IsNullOrWhiteSpace(Name) ? ["A consignee has a name."] : Array.Empty<string>(),
        .. new[] { Code, Name, Address, Contact, Phone, RecallPhone, Fax, Email, ConfirmedBy }.Any(t => t is { Length: > Longest } || t?.Any(char.IsControl) == true) ? [$"Each line of a card is one line of at most {Longest} characters."] : Array.Empty<string>(),
        .. LeastDaysLeft is >= 0 and <= 3650 ? Array.Empty<string>() : ["Days a flour must still keep lie from 0 to 3650."],
        .. Confirmed is not null && ConfirmedBy.Length == 0 ? ["Say who confirmed it."] : Array.Empty<string>(),
    ];

    /// <summary>It as JSON.</summary>
    public string ToJson() => PackingJson.Write(this);

    /// <summary>Reads one; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out ConsigneeCard? card, out IReadOnlyList<string> faults) => PackingJson.TryRead(json, c => c.Faults(), out card, out faults);
}

/// <summary>What a consignee does with what it gets.</summary>
public enum ConsigneeUse
{
    /// <summary>Nobody has asked.</summary>
    Unknown,

    /// <summary>Bakes it.</summary>
    Bakery,

    /// <summary>Mixes it into something that is sold on.</summary>
    Mixer,

    /// <summary>Sells it in packs to households.</summary>
    Retailer,

    /// <summary>Sells it on as it is.</summary>
    Merchant,

    /// <summary>Feeds animals with it.</summary>
    Feed,

    /// <summary>Something else, such as starch.</summary>
    Other,
}
