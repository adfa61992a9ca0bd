using Evengrist.Quantities;
using Evengrist.Streams;
using Evengrist.Streams.Dividing;
using Evengrist.Web.Sights.Season;

namespace Evengrist.Web.Sights.Streams;

/// <summary>A survey and the flours wanted of it, as a person typed them.</summary>
/// <param name="Fields">The fields.</param>
/// <param name="Spec">The question; null where nothing was asked yet or something cannot be read.</param>
public sealed record DivideAsk(TypedFields Fields, DivideSpec? Spec)
{
    /// <summary>Flours to try the page with; prices invented.</summary>
    public static IReadOnlyList<FlourWish> Invented { get; } =
    [
        new("patent", 430m) { Limits = [new FlourLimit(StreamProperty.Ash) { Most = 0.43 }], CalledFlour = true },
        new("first clear", 330m) { Limits = [new FlourLimit(StreamProperty.Ash) { Most = 0.85 }, new FlourLimit(StreamProperty.Protein) { Least = 12 }], CalledFlour = true },
        new("second clear", 260m) { Limits = [new FlourLimit(StreamProperty.Ash) { Most = 1.6 }] },
    ];

    /// <summary>Reads the fields.</summary>
    /// <param name="typed">What was typed; nothing where the form was not sent.</param>
    /// <param name="start">What stands in the form before anything was typed; null for an empty one.</param>
    public static DivideAsk Of(Func<string, string?> typed, DivideSpec? start = null)
    {
        var fields = new TypedFields(typed);
        var text = fields.Text("survey", start is null ? "" : SurveyText.Of(start.Table, start.Valves));
        var named = fields.Text("basis", (start?.Table.Basis ?? Basis.At14).ToString());
        if (!Basis.TryParse(named, out var basis))
        {
            fields.Fault($"Basis: {string.Join(", ", CurveAsk.Bases)} are possible; read “{named}”.");
        }

        // A tick that was taken away is not sent at all: once the form was sent, only what came with it counts.
        var before = fields.Has("survey") ? null : start?.Flours;
        FlourWish[] flours = [.. Enumerable.Range(0, DivideFlourRow.Rows).Select(row => DivideFlourRow.Read(fields, row, before?.ElementAtOrDefault(row))).OfType<FlourWish>()];
        var rest = new FlourWish(fields.Text("rest", start?.Rest.Code ?? "feed"), DivideFlourRow.Money(fields.Number("rest-price", "Price of the rest", (double)(start?.Rest.PricePerTonne ?? 0))));
        var (rate, hours) = (fields.Needed("rate", "Wheat", start?.RateTonnesPerHour ?? 10), fields.Needed("hours", "Hours a day", start?.HoursPerDay ?? 24));
        var sure = fields.Number("sure", "Each limit kept");
        var methods = MethodFields.Read(fields, start?.Table.Methods ?? new StreamMethods());
        if (text.Length == 0 || (flours.Length == 0 && fields.Faults.Count == 0))
        {
            return new DivideAsk(fields, null);
        }

        var lines = SurveyLines.Of(text);
        var spec = new DivideSpec(new StreamTable(lines.Streams, basis) { Methods = methods }, flours, rate) { Rest = rest, HoursPerDay = hours, Sure = sure / 100, Valves = lines.Valves, Currency = start?.Currency ?? "USD" };
        foreach (var fault in lines.Faults.Count > 0 ? lines.Faults : fields.Faults.Count > 0 ? [] : DivideFaults.Of(spec))
        {
            fields.Fault(fault);
        }

        return new DivideAsk(fields, fields.Faults.Count == 0 ? spec : null);
    }
}
