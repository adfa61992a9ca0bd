using Evengrist.Records;
using Evengrist.Records.Streams;
using Evengrist.Streams.Dividing;
using Evengrist.Streams.Surveys;

namespace Evengrist.Web.Sights.Streams;

/// <summary>What a mill has kept about the streams of one of its units.</summary>
/// <param name="Units">The units that have a survey.</param>
/// <param name="Unit">The one looked at; empty where the mill has none.</param>
/// <param name="Kept">Its newest survey; null where none is kept.</param>
/// <param name="Wanted">The flours kept for it; null where none are.</param>
/// <param name="Currency">The mill's currency.</param>
public sealed record UnitSurvey(IReadOnlyList<string> Units, string Unit, KeptSurvey? Kept, (WantedFlours Flours, int Version, string By)? Wanted, string Currency)
{
    /// <summary>What a page of streams begins with.</summary>
    public DivideSpec? Start => Kept is not { Survey: var survey } ? null
        : Wanted is { } wanted ? wanted.Flours.On(survey, Currency) : new DivideSpec(survey.Table, [], survey.WheatTonnesPerHour) { Valves = survey.Valves, Currency = Currency };

    /// <summary>Looks at a unit.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="asked">The unit asked for; the first with a survey otherwise.</param>
    public static UnitSurvey Of(Mill mill, string? asked)
    {
        ArgumentNullException.ThrowIfNull(mill);
        string[] surveyed = [.. StreamSurveys.All(mill).Select(k => k.Survey.Unit).Distinct()];
        var unit = surveyed.FirstOrDefault(u => u.Equals(asked?.Trim(), StringComparison.OrdinalIgnoreCase)) ?? surveyed.FirstOrDefault() ?? "";
        return new UnitSurvey(surveyed, unit, unit.Length > 0 ? StreamSurveys.Newest(mill, unit) : null, unit.Length > 0 ? StreamSurveys.FloursOf(mill, unit) : null, mill.Settings.Currency);
    }
}
