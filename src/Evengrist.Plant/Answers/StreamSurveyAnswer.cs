using Evengrist.Streams;
using Evengrist.Streams.Surveys;
using NodaTime;

namespace Evengrist.Plant.Answers;

/// <summary>Kept stream surveys.</summary>
public sealed record StreamSurveysAnswer(IReadOnlyList<StreamSurveyAnswer> Surveys);

/// <summary>A kept survey in plain values: yields in % of the wheat, ash and protein on its basis.</summary>
public sealed record StreamSurveyAnswer(
    string Unit, int Version, string By, string Recorded, string TakenAt, string TakenBy, double WheatTonnesPerHour, double? MinutesWeighed, string Basis, IReadOnlyList<SurveyedStreamAnswer> Streams, StreamMethods Methods, string Remark)
{
    /// <summary>A survey in plain values.</summary>
    public static StreamSurveyAnswer Of(int version, string by, Instant recorded, StreamSurvey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        return new StreamSurveyAnswer(
            survey.Unit, version, by, recorded.ToString(), survey.TakenAt.ToString(), survey.TakenBy, survey.WheatTonnesPerHour, survey.MinutesWeighed, survey.Table.Basis.ToString(),
            [.. survey.Table.Streams.Select(s => new SurveyedStreamAnswer(s.Code, s.Yield, s.AshPercent, s.ProteinPercent, s.FallingNumberSeconds, s.StarchDamagePercent, survey.Valves.FirstOrDefault(v => v.Stream == s.Code)?.Now))],
            survey.Table.Methods, survey.Remark);
    }
}

/// <summary>A stream of a survey, and where it went.</summary>
public sealed record SurveyedStreamAnswer(string Stream, double Yield, double AshPercent, double? ProteinPercent, double? FallingNumberSeconds, double? StarchDamagePercent, string? WentTo);
