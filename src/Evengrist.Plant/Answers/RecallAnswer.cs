using Evengrist.Ledger;
using Evengrist.Plant.Cases;
using Evengrist.Tracing;
using Evengrist.Tracing.Bounds;
using Evengrist.Tracing.Recall;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Plant.Answers;

/// <summary>A recall answered: nets, packages, where it is and what is unknown. Reckoned; kilograms of the suspect as it lay when first suspect.</summary>
public sealed record RecallAnswer(
    IReadOnlyList<string> Suspect, string AsOf, IReadOnlyDictionary<string, double> Beliefs, SpreadAnswer TracedKilograms, OutflowBoundAnswer TracedBoundKilograms, decimal ThresholdKg, double Chance,
    IReadOnlyList<NetAnswer> Nets, IReadOnlyList<NetPointAnswer> Curve, int PackagesInAnyNet, IReadOnlyList<RecallPackageAnswer> Packages, IReadOnlyList<RecallWhereAnswer> Where,
    IReadOnlyList<UnknownAnswer> Unknown, IReadOnlyDictionary<string, double> AccountedFor, string? Nothing)
{
    /// <summary>What each thing asked was taken for, a sentence each; empty in a posed mill.</summary>
    public IReadOnlyList<string> TakenFor { get; init; } = [];

    /// <summary>The outcome in plain values.</summary>
    /// <param name="outcome">The outcome.</param>
    /// <param name="listed">Whose packages are listed; null for the widest.</param>
    public static RecallAnswer Of(RecallOutcome outcome, NetKind? listed = null)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        SpreadAnswer Kg(Spread spread) => SpreadAnswer.Of(spread, outcome.Beliefs, 0.001);
        static string? Say(Instant? at) => at is { } moment ? InstantPattern.ExtendedIso.Format(moment) : null;
        var packages = listed is { } kind && outcome.Nothing is null ? outcome.Net(kind).Packages : outcome.Packages;
        return new(
            [.. outcome.Question.Starts.Select(s => s.Place.Code)], InstantPattern.ExtendedIso.Format(outcome.AsOf), outcome.Beliefs.ToDictionary(b => b.Outflow.Word(), b => b.Weight),
            Kg(outcome.Traced), OutflowBoundAnswer.Of(outcome.Bound), outcome.Question.Threshold.Kilograms, outcome.Question.Chance,
            [.. outcome.Nets.Select(NetAnswer.Of)], [.. outcome.Curve.Select(p => new NetPointAnswer(p.Chance, p.Packages, p.Mass.Kilograms, p.ChanceOfMissing, p.ExpectedOutside / 1000))],
            outcome.Packages.Count,
            [.. packages.Select(p => new RecallPackageAnswer(p.Place.Code, p.Place.Kind.Words(), p.Place.Material, p.Mass.Kilograms, InstantPattern.ExtendedIso.Format(p.Made), Kg(p.Grams), OutflowBoundAnswer.Of(p.Bound), p.Chance, p.Where?.Code, p.Hold is not null))],
            [.. outcome.Where.Select(w => new RecallWhereAnswer(w.Words, w.Place?.Code, Kg(w.Grams), OutflowBoundAnswer.Of(w.Bound)))],
            [.. outcome.Unknown.Select(u => new UnknownAnswer(u.Kind.ToString(), u.Place?.Code, u.Grams / 1000, [.. u.Others.Select(o => o.Code)]) { From = Say(u.From), Until = Say(u.Until) })],
            outcome.Beliefs.Select((b, i) => (b.Outflow, outcome.AccountedFor[i])).ToDictionary(e => e.Outflow.Word(), e => e.Item2), outcome.Nothing);
    }

    /// <summary>The answer in a posed mill.</summary>
    public static Parsed<RecallAnswer> Of(RecallCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        var (book, refused) = TraceAnswer.Laid<RecallAnswer>(posed.Drafts, posed.Paths);
        if (refused is not null)
        {
            return refused;
        }

        var starts = new List<Suspicion>();
        foreach (var (i, (code, from, until)) in posed.Suspect.Index())
        {
            var path = $"$.suspect[{i}].code";
            if (book.Find(code) is not { } place)
            {
                return Parsing.Failed<RecallAnswer>(Fault.AtPath(path, code, "the code of a place of the case"));
            }

            if (place.Kind.Role() == PlaceRole.Sink || (place.Kind.IsFixed() && from is null && until is null) || until <= from)
            {
                return Parsing.Failed<RecallAnswer>(Fault.AtPath(path, code, place.Kind.Role() == PlaceRole.Sink ? "a place from which something goes on" : until <= from ? "hours that end after they begin" : "hours (from, until) for a place of the plant"));
            }

            starts.Add(new Suspicion(place, from, until));
        }

        var question = new RecallQuestion(starts) { AsOf = posed.AsOf, Threshold = posed.Threshold, Chance = posed.Chance, Bounds = new BoundsOptions { ThroughIsUnknown = posed.ThroughIsUnknown } };
        return Parsing.Got(Of(Tracer.Over(book).Recall(question, posed.Beliefs)));
    }
}

/// <summary>Least and most under any outflow.</summary>
public sealed record OutflowBoundAnswer(double Least, double Most)
{
    internal static OutflowBoundAnswer Of(Bound bound) => new(bound.Least / 1000, bound.Most / 1000);
}

/// <summary>One net, with what it takes and what it may miss; kilograms.</summary>
public sealed record NetAnswer(
    string Net, int Packages, decimal WholeKg, decimal StockKg, decimal HeldKg, decimal ShippedKg, decimal UsedKg, decimal ReturnedKg, decimal? AccountedForPercent, IReadOnlyList<string> Consignees,
    double ExpectedInsideKg, double ExpectedOutsideKg, double ChanceOfMissing, int CanBeMissedUnderSomeOutflow)
{
    internal static NetAnswer Of(Net net) => new(
        net.Kind.ToString().ToLowerInvariant(), net.Packages.Count, net.Balance.Made.Kilograms, net.Balance.Stock.Kilograms, net.Balance.Held.Kilograms, net.Balance.Shipped.Kilograms, net.Balance.Used.Kilograms, net.Balance.Returned.Kilograms,
        net.Balance.EffectivenessPercent, [.. net.Consignees.Select(c => c.Code)], net.ExpectedInside / 1000, net.ExpectedOutside / 1000, net.ChanceOfMissing, net.CanBeMissed);
}

/// <summary>The narrow net at one chance.</summary>
public sealed record NetPointAnswer(double Chance, int Packages, decimal WholeKg, double ChanceOfMissing, double ExpectedOutsideKg);

/// <summary>A package of the recall.</summary>
public sealed record RecallPackageAnswer(string Code, string Kind, string Product, decimal MassKg, string Made, SpreadAnswer Kilograms, OutflowBoundAnswer AnyOutflowKilograms, double ChanceOverThreshold, string? SentTo, bool OnHold);

/// <summary>How much of it is where.</summary>
public sealed record RecallWhereAnswer(string Where, string? Place, SpreadAnswer Kilograms, OutflowBoundAnswer AnyOutflowKilograms);

/// <summary>Something the recall does not know.</summary>
public sealed record UnknownAnswer(string Kind, string? Place, double? Kilograms, IReadOnlyList<string> Others)
{
    /// <summary>When it began; null where it is about no time.</summary>
    public string? From { get; init; }

    /// <summary>When it ended; null where it is about a moment or about no time.</summary>
    public string? Until { get; init; }
}
