using Evengrist.Ledger;
using Evengrist.Milling.Balance;
using Evengrist.Records;
using Evengrist.Streams.Surveys;
using Evengrist.Web.Sights.Season;
using NodaTime;

namespace Evengrist.Web.Sights.Streams;

/// <summary>What a person typed of the weighers to hold a survey against; before anything is typed, what the ledger moved about that time.</summary>
/// <param name="Fields">The fields.</param>
/// <param name="Spec">The question; null where something cannot be read.</param>
/// <param name="Outcome">What comes of it; null without a question.</param>
public sealed record SurveyCheckAsk(TypedFields Fields, SurveyCheckSpec? Spec, SurveyCheckOutcome? Outcome)
{
    /// <summary>Chance of a false alarm of each test.</summary>
    public const double Level = 0.05;

    /// <summary>How long about the survey's time the ledger is looked at [ours].</summary>
    public static readonly Duration Span = Duration.FromHours(1);

    /// <summary>Reads the fields.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="survey">The survey.</param>
    /// <param name="typed">What was typed; nothing where the form was not sent.</param>
    public static SurveyCheckAsk Of(Mill mill, StreamSurvey survey, Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(survey);
        var (fields, ledger) = (new TypedFields(typed), Moved(mill, survey));
        var flours = survey.WentTo().Select(f => new WeighedFlour(
            f, fields.Number($"t-{f}", $"{f}, t/h", ledger.TryGetValue(f, out var tonnes) ? tonnes : null), (fields.Number($"u-{f}", $"{f}, ± of the weigher", 100 * WeighedFlour.UsualShare) ?? 0) / 100,
            fields.Number($"a-{f}", $"{f}, ash"), fields.Number($"p-{f}", $"{f}, protein"))).ToArray();
        var spec = new SurveyCheckSpec(survey, flours) { OnTheRolls = Pair(fields, "rolls", "On the rolls, t/h"), NotFlour = Pair(fields, "rest", "Not flour, t/h") };
        if (!flours.Any(f => f.IsTaken || fields.Has($"t-{f.Flour}")))
        {
            return new SurveyCheckAsk(fields, null, null);
        }

        foreach (var fault in fields.Faults.Count > 0 ? [] : spec.Faults())
        {
            fields.Fault(fault);
        }

        return fields.Faults.Count > 0 ? new SurveyCheckAsk(fields, null, null) : new SurveyCheckAsk(fields, spec, SurveyCheckModel.Of(spec, Level));
    }

    /// <summary>The survey as reconciled, to be kept as its unit's next; null where nothing was adjusted.</summary>
    public StreamSurvey? Reconciled => Outcome?.Adjusted is { } table ? Spec!.Survey with { Table = table, Remark = Noted(Spec.Survey.Remark) } : null;

    private static string Noted(string remark) => remark.StartsWith("Reconciled", StringComparison.Ordinal) ? remark : ("Reconciled with the weighers. " + remark)[..Math.Min(400, 30 + remark.Length)];

    private static (double, double)? Pair(TypedFields fields, string key, string words) =>
        fields.Number(key, words) is var tonnes && fields.Number("u-" + key, words + ", ±", 100 * WeighedFlour.UsualShare) is var share && tonnes is { } there ? (there, (share ?? 0) / 100) : null;

    // Mean flows into bins of each flour, by what the bins are for; t/h, to three decimals as a weigher shows them.
    private static Dictionary<string, double> Moved(Mill mill, StreamSurvey survey) => mill.Ask(view =>
    {
        var (from, until) = (survey.TakenAt - (Span / 2), survey.TakenAt + (Span / 2));
        return MillSection.Of(view.Book).FirstOrDefault(s => s.Units.Any(u => u.Code == survey.Unit)) is not { } section ? [] : SectionFlows.Of(view.Book, section, from, until).Products
            .Where(p => p.To.Kind == PlaceKind.FlourBin && p.To.Material.Length > 0).GroupBy(p => p.To.Material, StringComparer.Ordinal).ToDictionary(g => g.Key, g => Math.Round(g.Sum(p => p.Tonnes) / Span.TotalHours, 3), StringComparer.Ordinal);
    });
}
