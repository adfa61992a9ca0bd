using System.Globalization;
using System.Text.Json;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Tempering;

/// <summary>What a person did at a temper bin, as recorded: the particulars of a happening of the kind <see cref="HappeningKind.Tempered"/>. It moves no grain: what ran is a movement of the ledger's.</summary>
/// <param name="Act">What was done.</param>
/// <param name="TonnesPerHour">Clean wheat as set when filling or drawing began, t/h; above 0, to 1000; null where not said.</param>
/// <param name="LitresPerHour">Water as set, L/h, 0 to 100,000; demanded where water is set, may be said where filling begins, null otherwise.</param>
public sealed record TemperEntry(TemperAct Act, double? TonnesPerHour = null, double? LitresPerHour = null)
{
    /// <summary>Most wheat, t/h [ours].</summary>
    public const double MostTonnesPerHour = 1000;

    /// <summary>Most water, L/h [ours].</summary>
    public const double MostLitresPerHour = 100_000;

    private static readonly JsonSerializerOptions Options = StrictJson.Options();

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Enum.IsDefined(Act) && Act != TemperAct.None ? Array.Empty<string>() : ["Say what was done: filling or drawing begun or ended, or water set."],
        .. TonnesPerHour is null or (> 0 and <= MostTonnesPerHour) ? Array.Empty<string>() : [string.Create(CultureInfo.InvariantCulture, $"Wheat lies above 0 and up to {MostTonnesPerHour} t/h; read {TonnesPerHour}.")],
        .. LitresPerHour is null or (>= 0 and <= MostLitresPerHour) ? Array.Empty<string>() : [string.Create(CultureInfo.InvariantCulture, $"Water lies from 0 to {MostLitresPerHour:#,##0} L/h; read {LitresPerHour}.")],
        .. TonnesPerHour is not null && Act is not (TemperAct.FillingBegun or TemperAct.DrawingBegun) ? ["Tonnes an hour are said where filling or drawing begins; leave them out."] : Array.Empty<string>(),
        .. LitresPerHour is not null && Act is not (TemperAct.FillingBegun or TemperAct.WaterSet) ? ["Water is said where it is set or filling begins; leave it out."] : Array.Empty<string>(),
        .. LitresPerHour is null && Act == TemperAct.WaterSet ? ["Say to how many litres an hour the water was set."] : Array.Empty<string>(),
    ];

    /// <summary>In words: <c>filling begun at 17.5 t/h, water 1,010 L/h</c>.</summary>
    public string Words => Act.Words() + (TonnesPerHour is { } wheat ? string.Create(CultureInfo.InvariantCulture, $" at {wheat:0.##} t/h") : "")
        + (LitresPerHour is { } water ? string.Create(CultureInfo.InvariantCulture, $"{(Act == TemperAct.WaterSet ? " to" : ", water")} {water:#,##0.#} L/h") : "");

    /// <summary>The happening's text: words for people, then the particulars.</summary>
    /// <param name="why">The person's own words; may be empty.</param>
    public string Text(string why = "") => Happening.TextOf(Words + (string.IsNullOrWhiteSpace(why) ? "" : ": " + why.Trim()), JsonSerializer.Serialize(this, Options));

    /// <summary>Reads the particulars of a happening; null where it has none of this form.</summary>
    public static TemperEntry? Of(Happening happening)
    {
        ArgumentNullException.ThrowIfNull(happening);
        return happening.Kind == HappeningKind.Tempered && StrictJson.TryRead<TemperEntry>(happening.Particulars, Options, e => e is null ? ["It is null."] : e.Faults(), out var entry, out _) ? entry : null;
    }
}
