using Evengrist.Ledger;
using Evengrist.Plant.Cases;
using Evengrist.Quantities;
using Evengrist.Tracing;
using NodaTime;

namespace Evengrist.Plant.Answers;

/// <summary>What leaves a posed bin at each draw, by lot, under each hypothesis. Reckoned, in tonnes.</summary>
/// <param name="Draws">One for each draw, in turn.</param>
/// <param name="Left">What is left after the last step.</param>
public sealed record OutflowAnswer(IReadOnlyList<OutflowDraw> Draws, OutflowDraw Left)
{
    private const string Bin = "bin";
    private const string Out = "drawn";
    private static readonly Instant Beginning = Instant.FromUtc(2000, 1, 1, 0, 0);

    /// <summary>Reckons a case by posing its fills and draws as movements of a book of its own.</summary>
    public static Parsed<OutflowAnswer> To(OutflowCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        var lots = posed.Steps.Select(s => s.Lot).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase).ToArray();
        var drafts = new List<Draft> { new OpenPlace(Bin, Bin, PlaceKind.Bin) { CoreShare = posed.CoreShare }, new OpenPlace(Out, Out, PlaceKind.Shortage) };
        drafts.AddRange(lots.Select((lot, i) => new OpenPlace($"lot {i}", Source(i), PlaceKind.Opening, Name: lot)));
        var first = drafts.Count;
        drafts.AddRange(posed.Steps.Select((step, i) => new Move($"step {i}", step.Lot is { } lot ? Source(Find(lots, lot)) : Bin, step.Lot is null ? Out : Bin, step.Mass, At(i))));
        var book = new Book();
        try
        {
            book.Append(book.ToFacts(drafts, "posed", "posed", At(posed.Steps.Count)));
        }
        catch (LedgerRefusal refusal)
        {
            var index = refusal.Index >= first ? refusal.Index - first : (int)((refusal.At ?? Beginning) - Beginning).TotalSeconds;
            var step = posed.Steps[Math.Clamp(index, 0, posed.Steps.Count - 1)];
            return Parsing.Failed<OutflowAnswer>(Fault.AtPath(step.Path, step.Mass.ToString(), refusal.Rule == LedgerRule.WouldOverdraw
                ? $"at most what lies in the bin, {step.Mass - (refusal.By ?? Mass.Zero)}" : $"a step that can be. {refusal.Message}"));
        }

        var tracer = Tracer.Over(book);
        var beliefs = posed.Hypotheses.Select(h => new Belief(h, 1)).ToArray();
        var drawn = new List<OutflowDraw>();
        var sofar = 0m;
        for (var i = 0; i < posed.Steps.Count; i++)
        {
            if (posed.Steps[i] is { Lot: null, Mass: var mass })
            {
                var roots = tracer.Roots(new TraceQuestion(Out) { From = At(i), Until = At(i + 1) }, beliefs);
                drawn.Add(OutflowDraw.Of(sofar, sofar + mass.Tonnes, roots));
                sofar += mass.Tonnes;
            }
        }

        var left = tracer.Roots(new TraceQuestion(Bin) { AsOf = At(posed.Steps.Count) }, beliefs);
        return Parsing.Got(new OutflowAnswer(drawn, OutflowDraw.Of(sofar, sofar + book.StockOf(book.Named(Bin).Id).Tonnes, left)));
    }

    private static int Find(string[] lots, string lot) => Array.FindIndex(lots, l => l.Equals(lot, StringComparison.OrdinalIgnoreCase));

    private static string Source(int lot) => $"lot {lot}";

    private static Instant At(int step) => Beginning + Duration.FromSeconds(step);
}
