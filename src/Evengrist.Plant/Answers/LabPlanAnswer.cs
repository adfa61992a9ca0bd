using Evengrist.Laboratory.Sampling;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>Answers of acceptance sampling; what was not asked is null.</summary>
/// <param name="Curve">Of the posed plan by attributes.</param>
/// <param name="Designs">Plans for two points.</param>
/// <param name="Table">A plan of MIL-STD-105E.</param>
/// <param name="Variables">A plan of MIL-STD-414.</param>
/// <param name="ThreeClassChance">Chance to accept with three classes.</param>
/// <param name="Found">What a test finds.</param>
/// <param name="Remarks">What else has to be known.</param>
public sealed record LabPlanAnswer(
    IReadOnlyList<CurvePointAnswer>? Curve, DesignsAnswer? Designs, TablePlanAnswer? Table, VariablesPlan? Variables, double? ThreeClassChance, FoundAnswer? Found, IReadOnlyList<string> Remarks)
{
    /// <summary>Answers a case, or says why there is no answer.</summary>
    public static Reply<LabPlanAnswer> To(LabPlanCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        var table = posed.Table is { } t ? TablePlanAnswer.Of(t) : null;
        var variables = posed.Variables is { } v ? VariablesTable.Of(v.Found, v.LimitPercent, v.Tightened) : null;
        string[] none =
        [
            .. posed.Variables is not null && variables is null ? [$"The plan by variables is not here: letters B to Q at {string.Join(", ", VariablesTable.Limits.Select(l => FormattableString.Invariant($"{l}")))} %, tightened from 1.0 % on. Reduced plans and lower limits were not read: look them up in MIL-STD-414."] : Array.Empty<string>(),
        ];
        return none.Length > 0 ? new(null, none) : new(
            new(CurvePointAnswer.Of(posed.Attributes), posed.Design is { } d ? DesignsAnswer.Of(d) : null, table, variables,
                posed.ThreeClass is { } c ? new ThreeClassPlan(c.Size, c.Marginal).Chance(c.MarginalShare, c.BadShare) : null, posed.Find is { } f ? FoundAnswer.Of(f) : null, [.. Told(posed, table)]), []);
    }

    private static IEnumerable<string> Told(LabPlanCase posed, TablePlanAnswer? table)
    {
        yield return "A plan says how often lots of a quality pass. It makes no lot good, and a named person decides.";
        if (posed.Find is not null)
        {
            yield return Finding.Caution;
        }

        if (table is not null)
        {
            yield return $"Plans and letters of MIL-STD-105E: {(table.Size is null ? "none for this lot" : table.IsRead ? "this plan was read" : "this plan follows from the table's diagonals, from memory")}; rules for switching from memory: check before use. Other standards that descend from it differ on reduced plans.";
            if (table.Size >= posed.Table!.Lot)
            {
                yield return "The plan asks for as many as the lot has, or more: look at every unit.";
            }
        }

        if (posed.Design is not null || posed.Variables is not null)
        {
            yield return "Plans by variables hold for nearly normal values alone: not for counts, toxins or falling numbers as they are read.";
        }

        if (table?.Severity == nameof(Severity.Stopped))
        {
            yield return "Five lots were rejected on tightened looking: no further lot is accepted by sampling until the cause is mended and a named person begins anew.";
        }
    }
}

/// <summary>One point of an operating curve.</summary>
/// <param name="Share">Of bad ones.</param>
/// <param name="Accepted">Chance to accept: of a large lot, or of the lot as it is where the sample is a tenth of it or more.</param>
/// <param name="Outgoing">Share that goes out where rejected lots are sorted; null without a lot.</param>
/// <param name="Inspected">Looked at on average then.</param>
public sealed record CurvePointAnswer(double Share, double Accepted, double? Outgoing, double? Inspected)
{
    internal static IReadOnlyList<CurvePointAnswer>? Of(PosedAttributes? posed)
    {
        if (posed is null)
        {
            return null;
        }

        var plan = new AttributesPlan(posed.Size, posed.Accept);
        return [.. posed.Shares.Select(p =>
        {
            // Above a tenth of the lot, drawing without putting back matters (e-Handbook 6.2.3).
            var chance = posed.Lot is { } lot && posed.Size > lot / 10 ? plan.ChanceOf(lot, (int)Math.Round(p * lot)) : plan.Chance(p);
            return new CurvePointAnswer(p, chance, posed.Lot is { } n ? p * chance * (n - posed.Size) / n : null, posed.Lot is { } m ? posed.Size + ((1 - chance) * (m - posed.Size)) : null);
        })];
    }
}

/// <summary>Plans for two points.</summary>
/// <param name="Attributes">The smallest by attributes; null where it would take more than is looked for.</param>
/// <param name="SigmaKnown">By variables, standard deviation known.</param>
/// <param name="SigmaUnknown">By variables, standard deviation of the sample.</param>
/// <param name="Sequential">Looked at one by one.</param>
public sealed record DesignsAnswer(AttributesPlan? Attributes, VariablesPlan SigmaKnown, VariablesPlan SigmaUnknown, SequentialPlan Sequential)
{
    internal static DesignsAnswer Of(TwoPoints points) => new(AttributesPlan.For(points), VariablesPlan.For(points, true), VariablesPlan.For(points, false), SequentialPlan.For(points));
}

/// <summary>A plan of a table for the next lot.</summary>
/// <param name="Letter">Of the lot.</param>
/// <param name="Severity">By how the lots before fared.</param>
/// <param name="Size">n; null where looking is stopped.</param>
/// <param name="Accept">c.</param>
/// <param name="Reject">Rejected from so many.</param>
/// <param name="IsRead">Whether the plan was read; else it follows from the table's diagonals, from memory.</param>
public sealed record TablePlanAnswer(string Letter, string Severity, int? Size, int? Accept, int? Reject, bool IsRead)
{
    internal static TablePlanAnswer Of(PosedTablePlan posed)
    {
        var (letter, severity) = (TableLetters.Of(posed.Lot, posed.Level), Switching.Next(posed.Lots, posed.MayReduce));
        return severity == Laboratory.Sampling.Severity.Stopped || TablePlans.Of(severity, letter, posed.LimitPercent) is not { } plan
            ? new($"{letter}", $"{severity}", null, null, null, false)
            : new($"{letter}", $"{severity}", plan.Plan.Size, plan.Plan.Accept, plan.Reject, TablePlans.IsRead(severity, letter, posed.LimitPercent));
    }
}

/// <summary>What a test finds.</summary>
/// <param name="Units">Units to look at so that a bad one is found with the chance.</param>
/// <param name="Found">Chance that the grams hold a cell.</param>
/// <param name="PerGramFound">Cells to a gram found with the chance.</param>
/// <param name="LeastMean">Least mean count that fits the colonies, 95 %.</param>
/// <param name="MostMean">Greatest.</param>
public sealed record FoundAnswer(int? Units, double? Found, double? PerGramFound, double? LeastMean, double? MostMean)
{
    internal static FoundAnswer Of(PosedFinding posed)
    {
        (double Least, double Most)? bounds = posed.Colonies is { } counted ? Finding.CountBounds(counted) : null;
        return new(posed.Share is { } share ? Finding.UnitsFor(share, posed.Chance) : null, posed is { Grams: { } grams, PerGram: { } each } ? Finding.Chance(each, grams) : null,
            posed.Grams is { } m ? Finding.PerGramFound(posed.Chance, m) : null, bounds?.Least, bounds?.Most);
    }
}
