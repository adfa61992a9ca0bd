using Evengrist.Records;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>Pallets chosen to be labelled.</summary>
public sealed class LabelForm
{
    /// <summary>Their codes.</summary>
    public IReadOnlyList<string> Codes { get; set; } = [];

    /// <summary>Why those that are asked about are labelled all the same.</summary>
    public string? Reason { get; set; }

    /// <summary>Makes the labels: all or none.</summary>
    /// <returns>The pallets with their numbers, and every reason where none was made.</returns>
    public (IReadOnlyList<PalletOnLedger> Made, IReadOnlyList<string> Refused) Make(Mill mill, Instant asOf, string? by, Instant now)
    {
        var pallets = Codes.Take(LabelPick.Most).Select(c => PalletOnLedger.Of(mill, c, asOf)).ToArray();
        string[] against =
        [
            .. pallets.Length == 0 ? ["Choose at least one pallet."] : Array.Empty<string>(), .. string.IsNullOrWhiteSpace(by) ? [Visiting.Visit.Nameless] : Array.Empty<string>(), .. pallets.SelectMany(p => p.Against),
            .. string.IsNullOrWhiteSpace(Reason) ? pallets.SelectMany(p => p.Asked).Select(a => $"{a} Say why it is labelled all the same.") : [],
        ];
        return against.Length > 0 ? ([], against) : ([.. pallets.Select(p => p.Label(mill, by, Reason, now).Pallet)], []);
    }
}
