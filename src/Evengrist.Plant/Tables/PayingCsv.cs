using Evengrist.Intake.Paying;
using Evengrist.Ledger;
using static Evengrist.Plant.Tables.CsvText;

namespace Evengrist.Plant.Tables;

/// <summary>Statements, the season report and receipt records as comma-separated text.</summary>
public static class PayingCsv
{
    private static readonly Property[] Averaged = [.. QualityAverage.Properties];

    /// <summary>A statement, a line for each ticket.</summary>
    public static CsvText Of(IEnumerable<Statement> statements)
    {
        ArgumentNullException.ThrowIfNull(statements);
        var csv = new CsvText().Line([
            "grower", "ticket", "milling day", "field", "variety", "class", "net [kg]", "clean [kg]", "settled [kg]", "bushels [bu]", .. Averaged.Select(Reading), "price", "pay", "advances", "paid", "left", "currency", "how far", "why not settled", "not for settlement",
        ]);
        foreach (var (statement, account) in statements.SelectMany(s => s.All.Accounts.Select(a => (s, a))))
        {
            var (load, settled) = (account.Load, account.Settled);
            csv.Line([
                statement.Grower, load.Truck.Code, $"{load.Day:R}", load.Source?.Code ?? "", load.Variety, load.Truck.Material, Number(load.Net.Kilograms, 0), Number(settled?.Clean.Kilograms, 3), Number(settled?.Settled.Kilograms, 3), Number(settled?.Bushels, 4),
                .. Averaged.Select(p => load.Read(p) is { } r ? FormattableString.Invariant($"{r.Value} {r.Unit}{(r.Basis.IsStated ? " " + r.Basis : "")}") : ""),
                settled?.Price.ToString() ?? "", Number(settled?.Pay.Amount, 2), Number(account.Advances?.Amount, 2), Number(account.Paid?.Amount, 2), Number(account.Left?.Amount, 2), statement.Currency, account.Stage.ToString(),
                account.Outcome is Intake.NotSettled not ? string.Join(" ", not.Reasons) : "", string.Join(" ", load.NotForSettlement()),
            ]);
        }

        return csv;
    }

    /// <summary>The season report, a line for each field, district and variety.</summary>
    public static CsvText Of(IEnumerable<SeasonReport> reports)
    {
        ArgumentNullException.ThrowIfNull(reports);
        var csv = new CsvText().Line([
            "by", "name", "district", "loads", "net [kg]", .. Averaged.SelectMany(p => new[] { Average(p), $"{p.Words()} one standard uncertainty", $"{p.Words()} loads read" }), "pay", "for a bushel", "for a tonne of net", "at base price", "currency", "rank", "of",
            "protein over mean", "price over mean [for a tonne]", "what moved the price",
        ]);
        foreach (var report in reports)
        {
            foreach (var (by, row) in report.Fields.Select(r => ("field", r)).Concat(report.Districts.Select(r => ("district", r))).Concat(report.Varieties.Select(r => ("variety", r))))
            {
                var group = row.Group;
                csv.Line([
                    by, group.Name, row.District, Number(group.Standing.Count, 0), Number(group.Net.Kilograms, 0),
                    .. Averaged.SelectMany(p => group.Read(p) is { } q ? new[] { Number(q.Figure.Value, 3), Number(q.Figure.StandardUncertainty, 4), Number(q.Loads, 0) } : ["", "", ""]),
                    Number(group.Gross?.Amount, 2), Number(group.EachBushel?.Amount, 4), Number(group.EachTonne?.Amount, 2), Number(group.AtBase?.Amount, 2), report.Currency, Number(row.Rank, 0), row.Rank is null ? "" : Number(row.Of, 0),
                    Number(row.ProteinOverMean, 2), Number(row.EachTonneOverMean, 2), row.Words,
                ]);
            }
        }

        return csv;
    }

    /// <summary>Receipt records, a line for each load.</summary>
    public static CsvText Receipts(IEnumerable<LoadFacts> loads)
    {
        ArgumentNullException.ThrowIfNull(loads);
        var csv = new CsvText();
        var headed = false;
        foreach (var record in loads.Select(l => l.Receipt()))
        {
            if (!headed)
            {
                csv.Line([.. record.Items.Select(i => $"{i.What} [{i.Rule}]"), "complete", "missing"]);
                headed = true;
            }

            csv.Line([.. record.Items.Select(i => i.Text), record.IsComplete ? "yes" : "no", string.Join("; ", record.Missing)]);
        }

        return headed ? csv : csv.Line("no load was received in this span");
    }

    private static string Reading(Property what) => $"{what.Words()} as read";

    private static string Average(Property what) => $"{what.Words()} [{(what == Property.TestWeight ? "kg/hL" : Readings.UnitsOf(what)[0])}{(what.NeedsBasis() ? " 12mb" : "")}]";
}
