using System.Globalization;
using Evengrist.Mix;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>A mix in plain values; shares, chances and confidences in per cent.</summary>
public sealed record MixAnswer(
    IReadOnlyList<GateAnswer> Gates, double CostToday, double CostOfTheYear, string Currency, string CostKeptLeast, double GapPercent, double? PriceOfConfidence, double? PriceOfGates,
    IReadOnlyList<PredictedAnswer> Wheat, IReadOnlyList<PredictedAnswer> Flour, IReadOnlyList<HeadroomAnswer> Limits, IReadOnlyList<SavingAnswer> Savings, HabitAnswer? Habit,
    IReadOnlyList<LeftOut> LeftOut, IReadOnlyList<string> Remarks, string Note)
{
    private const string Said = "A decision aid: a person sets the gates.";

    /// <summary>An outcome in plain values.</summary>
    public static Reply<MixAnswer> Of(MixOutcome outcome, string currency) => outcome switch
    {
        MixSolved solved => new(Of(solved, currency), []),
        MixClash clash => new(null, Words(clash)),
        MixRefused refused => new(null, refused.Faults),
        MixNotSolved not => new(null, [not.Reason]),
        _ => throw new InvalidOperationException($"A mix ended as {outcome?.GetType().Name}."),
    };

    /// <summary>A clash, each a sentence.</summary>
    public static IReadOnlyList<string> Words(MixClash clash)
    {
        ArgumentNullException.ThrowIfNull(clash);
        return
        [
            $"No mix keeps all of it. These cannot be kept together: {string.Join("; ", clash.Clash)}.",
            .. clash.Alone.Select(r => double.IsNaN(r.Steps) ? $"It would do to leave out: {r.What}." : $"It would do to move one alone: {r.What}, {r.To}."),
            .. clash.Together.Count > 1 ? [$"Or the fewest steps in all: {string.Join("; ", clash.Together.Select(r => $"{r.What}, {r.To}"))}."] : Array.Empty<string>(),
            .. clash.LeftOut.Select(l => l.Reason),
        ];
    }

    private static MixAnswer Of(MixSolved solved, string currency) => new(
        [.. solved.Gates.Select(GateAnswer.Of)], solved.Cost.Today, solved.Cost.Year, currency, solved.ByYear ? "year" : "today", 100 * solved.Gap, solved.PriceOfConfidence, solved.PriceOfGates,
        [.. solved.Wheat.Select(PredictedAnswer.Of)], [.. solved.Flour.Select(PredictedAnswer.Of)], [.. solved.Limits.Select(HeadroomAnswer.Of)],
        [.. solved.Savings.Select(s => new SavingAnswer(s.What, s.To, s.PerTonne, s.IsProven ? "" : "at least"))],
        solved.Habit is { } habit ? new HabitAnswer([.. habit.Gates.Select(GateAnswer.Of)], habit.Cost.Today, habit.Cost.Year, [.. habit.Limits.Select(HeadroomAnswer.Of)]) : null, solved.LeftOut, solved.Remarks, Said);
}

/// <summary>One open gate.</summary>
public sealed record GateAnswer(string Bin, string Class, double SharePercent, double? TonnesPerHour, double CostPerTonne, double? YearValuePerTonne)
{
    internal static GateAnswer Of(GateShare gate) => new(gate.Bin.Code, gate.Bin.Class, 100 * gate.Share, gate.TonnesPerHour, gate.Bin.CostPerTonne, gate.Bin.YearValuePerTonne);
}

/// <summary>An expected value; ± is twice the standard uncertainty.</summary>
public sealed record PredictedAnswer(string What, double Value, string Unit, string? Basis, double StandardUncertainty, double OwnPart, double InstrumentPart, double RelationPart)
{
    internal static PredictedAnswer Of(Predicted value) => new(
        MixCase.NameOf(value.What), value.Value, BlendRules.Of(value.What)!.Unit, value.Basis.IsStated ? value.Basis.ToString() : null, value.StandardUncertainty, value.OwnPart, value.InstrumentPart, value.RelationPart);
}

/// <summary>Distance to one end of a limit.</summary>
public sealed record HeadroomAnswer(string Limit, double Distance, double Spare, double ChancePercent, bool IsKept, string? OfTheWheat)
{
    internal static HeadroomAnswer Of(Headroom headroom) => new(
        headroom.Limit.End.Words, headroom.Distance, headroom.Spare, 100 * headroom.Chance, headroom.IsKept,
        headroom.Limit.Relation is { } relation ? string.Create(CultureInfo.InvariantCulture, $"wheat at {(headroom.Limit.IsLeast ? "least" : "most")} {headroom.Limit.Value:0.###}: {relation.Words}") : null);
}

/// <summary>What relaxing saves.</summary>
public sealed record SavingAnswer(string What, string To, double PerTonne, string Bound);

/// <summary>The old habit.</summary>
public sealed record HabitAnswer(IReadOnlyList<GateAnswer> Gates, double CostToday, double CostOfTheYear, IReadOnlyList<HeadroomAnswer> Limits);
