using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Evengrist.Quantities;
using Evengrist.Streams.Dividing;
using NodaTime;

namespace Evengrist.Streams.Surveys;

/// <summary>A survey of a unit's flour streams as a mill keeps it: a paper by version, a newer survey is the next. Page: docs/model/streams.md.</summary>
/// <param name="Unit">Code of the mill unit.</param>
/// <param name="TakenAt">When it was taken.</param>
/// <param name="TakenBy">Who took it.</param>
/// <param name="WheatTonnesPerHour">The wheat on the rolls meanwhile, t/h, above 0, that yields are per cent of.</param>
/// <param name="Table">What was weighed and read.</param>
public sealed record StreamSurvey(string Unit, Instant TakenAt, string TakenBy, double WheatTonnesPerHour, StreamTable Table)
{
    /// <summary>Kind of the paper.</summary>
    public const string Kind = "stream-survey";

    private const int LongestText = 400;
    private static readonly JsonSerializerOptions Options = StrictJson.Options();

    /// <summary>For how long each spout was weighed, minutes; null where that is not known.</summary>
    public double? MinutesWeighed { get; init; }

    /// <summary>What is known of the spouts: where each stream went when the survey was taken, and where it can go.</summary>
    public IReadOnlyList<StreamValve> Valves { get; init; } = [];

    /// <summary>What else has to be known.</summary>
    public string Remark { get; init; } = "";

    /// <summary>The flours that its streams went to, in its order; those of which it is not said are left out.</summary>
    public IReadOnlyList<string> WentTo() => [.. Table.Streams.Select(s => Valves.FirstOrDefault(v => v.Stream == s.Code)?.Now).OfType<string>().Distinct(StringComparer.Ordinal)];

    /// <summary>The streams that went to a flour.</summary>
    public IReadOnlyList<MillStream> StreamsTo(string flour) => [.. Table.Streams.Where(s => Valves.Any(v => v.Stream == s.Code && v.Now == flour))];

    /// <summary>Per cent of the wheat from kilograms an hour: kg/h / (10 · t/h).</summary>
    public static double Yield(double kilogramsPerHour, double wheatTonnesPerHour) => kilogramsPerHour / (10 * wheatTonnesPerHour);

    /// <summary>Every fault, each a sentence that says what to do; empty where there is none.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Unit) ? ["Say of which unit it is."] : Array.Empty<string>(),
        .. string.IsNullOrWhiteSpace(TakenBy) || TakenBy.Length > LongestText ? ["Say who took it, by name."] : Array.Empty<string>(),
        .. WheatTonnesPerHour is > 0 and <= 1000 ? Array.Empty<string>() : [FormattableString.Invariant($"The wheat on the rolls lies above 0 and at most at 1000 t/h; got {WheatTonnesPerHour}.")],
        .. MinutesWeighed is null or (> 0 and <= 1440) ? Array.Empty<string>() : [FormattableString.Invariant($"A spout is weighed for more than 0 and at most 1440 minutes; got {MinutesWeighed}.")],
        .. Remark.Length > LongestText ? [FormattableString.Invariant($"The remark is said in {LongestText} letters or fewer.")] : Array.Empty<string>(),
        .. Table.Faults(),
        .. Valves.Where(v => Table.Streams.All(s => s.Code != v.Stream)).Select(v => $"There is a valve for {v.Stream}, and no such stream in the survey."),
        .. Valves.GroupBy(v => v.Stream, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => $"The valve of {g.Key} stands there {g.Count()} times: give it once."),
    ];

    /// <summary>As the paper says it.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Options);

    /// <summary>Reads a paper and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="survey">The survey; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out StreamSurvey? survey, out IReadOnlyList<string> faults) =>
        StrictJson.TryRead(json, Options, s => s is null || s.Table.Streams.Any(t => t is null) || s.Valves.Any(v => v is null) ? ["A survey is an object with a table of streams; read null."] : s.Faults(), out survey, out faults);
}
