using System.Globalization;
using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>A question about an instrument that read wrong, as it was typed, and its answer.</summary>
/// <param name="Typed">What was typed into a field; null where it did not come.</param>
/// <param name="Wrong">The instrument and its span; null where nothing was asked, or not rightly.</param>
/// <param name="Lots">The lots.</param>
/// <param name="Faults">Each a sentence; empty where there is none.</param>
internal sealed record RejudgeAsk(Func<string, string?> Typed, WrongSpan? Wrong, IReadOnlyList<RejudgedLot> Lots, IReadOnlyList<string> Faults)
{
    /// <summary>Properties of flour that lots are judged by.</summary>
    public static IReadOnlyList<Property> Properties { get; } = [Property.Protein, Property.Ash, Property.Moisture, Property.FallingNumber, Property.WetGluten, Property.Don];

    /// <summary>Asks.</summary>
    public static RejudgeAsk Of(Mill mill, Func<string, string?> typed, Func<string?, Instant?> read, Instant asOf)
    {
        if (new[] { "instrument", "from", "until", "bias" }.All(f => string.IsNullOrWhiteSpace(typed(f))))
        {
            return new RejudgeAsk(typed, null, [], []);
        }

        var (from, until) = (read(typed("from")), read(typed("until")));
        var (bias, twice) = (Number(typed("bias")), string.IsNullOrWhiteSpace(typed("pm")) ? 0 : Number(typed("pm")));
        var isProperty = Enum.TryParse<Property>(typed("property"), out var what) && Properties.Contains(what);
        string[] faults =
        [
            .. isProperty ? Array.Empty<string>() : [$"“{typed("property")}” is no property that lots are judged by: {string.Join(", ", Properties)}."],
            .. from is null ? [$"“{typed("from")}” is no date and time. Write it like 2025-10-07T10:20."] : Array.Empty<string>(),
            .. until is null ? [$"“{typed("until")}” is no date and time. Write it like 2025-10-08T13:00."] : Array.Empty<string>(),
            .. bias is null ? [$"How much too high is a number; read “{typed("bias")}”."] : Array.Empty<string>(),
            .. twice is null or < 0 ? [$"± is a number of at least 0; read “{typed("pm")}”."] : Array.Empty<string>(),
        ];
        if (faults.Length > 0)
        {
            return new RejudgeAsk(typed, null, [], faults);
        }

        var wrong = new WrongSpan(typed("instrument") ?? "", what, from!.Value, until!.Value, bias!.Value, twice!.Value / 2);
        var lots = RejudgeLots.Of(mill, wrong, asOf, out var refused);
        return new RejudgeAsk(typed, refused.Count > 0 ? null : wrong, lots, refused);
    }

    private static double? Number(string? text) => double.TryParse(text?.Trim(), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && Math.Abs(number) < 1e6 ? number : null;
}
