using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Evengrist.Quantities;
using Evengrist.Streams.Dividing;

namespace Evengrist.Streams.Surveys;

/// <summary>The flours a unit's streams are divided into, with prices and limits, as a mill keeps them: a paper by version.</summary>
/// <param name="Unit">Code of the mill unit.</param>
/// <param name="Flours">The flours.</param>
/// <param name="Rest">Where goes what goes to no flour.</param>
public sealed record WantedFlours(string Unit, IReadOnlyList<FlourWish> Flours, FlourWish Rest)
{
    /// <summary>Kind of the paper.</summary>
    public const string Kind = "stream-flours";

    private static readonly JsonSerializerOptions Options = StrictJson.Options();

    /// <summary>Hours a day that the unit runs.</summary>
    public double HoursPerDay { get; init; } = 24;

    /// <summary>The question that a survey and these flours pose.</summary>
    public DivideSpec On(StreamSurvey survey, string currency)
    {
        ArgumentNullException.ThrowIfNull(survey);
        return new DivideSpec(survey.Table, Flours, survey.WheatTonnesPerHour) { Rest = Rest, HoursPerDay = HoursPerDay, Valves = survey.Valves, Currency = currency };
    }

    /// <summary>Every fault, each a sentence; empty where there is none.</summary>
    public IReadOnlyList<string> Faults() => [.. string.IsNullOrWhiteSpace(Unit) ? ["Say of which unit they are."] : Array.Empty<string>(), .. DivideFaults.OfPlaces(Flours, Rest, HoursPerDay)];

    /// <summary>As the paper says it.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Options);

    /// <summary>Reads a paper and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="flours">The flours; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out WantedFlours? flours, out IReadOnlyList<string> faults) =>
        StrictJson.TryRead(json, Options, f => f is null || f.Flours.Append(f.Rest).Any(w => w is null || w.Limits.Any(l => l is null)) ? ["Flours are a list of objects; read null."] : f.Faults(), out flours, out faults);
}
