using Evengrist.Milling.Reconciling;
using Evengrist.Numerics.Reconciling;

namespace Evengrist.Streams.Surveys;

/// <summary>Holds a survey against the weighers of its flours: by flour mass, ash and protein, and in all by mass, reconciled together. Page: docs/model/reconciliation.md.</summary>
/// <remarks>Amounts are t/h as weighed, shares on the survey's one basis: that flour and its streams hold the same water to half a point is taken for granted [ours], which is below what a spout is weighed by.</remarks>
public static class SurveyCheckModel
{
    private const string Ash = "ash", Protein = "protein", Rolls = "on the rolls", NotFlour = "not flour";

    /// <summary>Name of a flour's weigher among the quantities.</summary>
    public static string Weigher(string flour) => $"{flour} over its weigher";

    /// <summary>Reconciles it.</summary>
    /// <param name="spec">The survey and the weighers; without faults.</param>
    /// <param name="level">Chance of a false alarm of each test, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">The spec has faults.</exception>
    public static SurveyCheckOutcome Of(SurveyCheckSpec spec, double level = 0.05)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(spec));
        }

        var outcome = Net(spec).Reconcile(level);
        return new SurveyCheckOutcome(outcome, outcome switch { GrossErrorsNamed named => Adjusted(spec.Survey, named.Rest), NoGrossError fits => Adjusted(spec.Survey, fits.Adjusted), _ => null });
    }

    private static FlowNet Net(SurveyCheckSpec spec)
    {
        var survey = spec.Survey;
        WeighedFlour[] flours = [.. spec.Flours.Where(f => f.IsTaken)];
        var whole = spec is { OnTheRolls: not null, NotFlour: not null };
        NetFlow[] flows =
        [
            .. survey.Table.Streams.Select(s => Flow(s.Code, TonnesPerHour(survey, s.Yield), survey.Table.Methods.YieldShare, s.AshPercent, s.ProteinPercent, survey.Table.Methods)),
            .. flours.Select(f => Flow(Weigher(f.Flour), f.TonnesPerHour, f.UncertaintyShare, f.AshPercent, f.ProteinPercent, survey.Table.Methods)),
            .. whole ? [Flow(Rolls, spec.OnTheRolls), Flow(NotFlour, spec.NotFlour)] : Array.Empty<NetFlow>(),
        ];
        return new FlowNet(flows,
        [
            .. flours.Select(f => new NetNode(f.Flour, [.. survey.StreamsTo(f.Flour).Select(s => s.Code)], [Weigher(f.Flour)])),
            .. whole ? [new NetNode("the unit", [Rolls], [.. survey.Table.Streams.Select(s => s.Code), NotFlour])] : Array.Empty<NetNode>(),
        ]);
    }

    private static NetFlow Flow(string name, (double TonnesPerHour, double UncertaintyShare)? weighed) =>
        new(name) { Amount = weighed!.Value.TonnesPerHour, Uncertainty = weighed.Value.TonnesPerHour * weighed.Value.UncertaintyShare };

    // A flour's share that was not read has a line all the same where its streams were read: it is sought.
    private static NetFlow Flow(string name, double? tonnes, double share, double? ash, double? protein, StreamMethods methods) => new(name)
    {
        Amount = tonnes, Uncertainty = tonnes * share,
        Shares = new Dictionary<string, NetShare> { [Ash] = Share(ash, methods.Ash), [Protein] = Share(protein, methods.Protein) },
    };

    private static NetShare Share(double? percent, double uncertainty) => new() { Percent = percent, Uncertainty = percent is null ? null : uncertainty };

    private static double TonnesPerHour(StreamSurvey survey, double yieldPercent) => yieldPercent * survey.WheatTonnesPerHour / 100;

    // What cannot be observed stays as it was measured.
    private static StreamTable Adjusted(StreamSurvey survey, Balanced with)
    {
        double? Of(string name, double factor) => with[name] is { StandardUncertainty: not null } found ? found.Value * factor : null;
        return survey.Table with
        {
            Streams = [.. survey.Table.Streams.Select(s => s with
            {
                Yield = Of(s.Code, 100 / survey.WheatTonnesPerHour) ?? s.Yield, AshPercent = Of($"{Ash} of {s.Code}", 100) ?? s.AshPercent,
                ProteinPercent = s.ProteinPercent is null ? null : Of($"{Protein} of {s.Code}", 100) ?? s.ProteinPercent,
            })],
        };
    }
}
