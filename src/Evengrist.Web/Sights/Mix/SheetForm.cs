using System.Globalization;
using Evengrist.Mix;
using Evengrist.Mix.Sheets;
using Evengrist.Records.Mix;
using Evengrist.Web.Sights.Bins;
using Evengrist.Web.Visiting;
using NodaTime;

namespace Evengrist.Web.Sights.Mix;

/// <summary>The fields of a mix sheet as a person fills them in; nothing typed is lost.</summary>
public sealed class SheetForm
{
    private readonly Func<string, string?> typed;
    private readonly Dictionary<string, string> first = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>A form with what it shows before anything is typed.</summary>
    /// <param name="typed">What was typed, by field; null where a field was not sent.</param>
    /// <param name="day">The mix of the day.</param>
    /// <param name="correcting">The sheet that is corrected; null for a new one.</param>
    /// <param name="line">The mix line offered.</param>
    /// <param name="from">The beginning offered.</param>
    /// <param name="visit">The visit.</param>
    public SheetForm(Func<string, string?> typed, MixOfDay day, KeptSheet? correcting, string line, Instant from, Visit visit)
    {
        ArgumentNullException.ThrowIfNull(day);
        ArgumentNullException.ThrowIfNull(visit);
        this.typed = typed;
        var sheet = correcting?.Sheet;
        var ask = day.Sight.Ask;
        (first["line"], first["from"], first["until"]) = (sheet?.Line ?? line, visit.Field(sheet?.From ?? from), visit.Field(sheet?.Until ?? from + Duration.FromHours(ask.Hours is > 0 and < 700 ? ask.Hours : 24)));
        (first["rate"], first["reason"], first["withdrawn"]) = (Number(sheet?.TonnesPerHour ?? ask.Rate), sheet?.Reason ?? "", sheet?.Withdrawn ?? "");
        foreach (var (bin, share) in sheet?.Gates.Select(g => (g.Bin, g.SharePercent)) ?? (day.Sight.Outcome as MixSolved)?.Gates.Select(g => (g.Bin.Code, 100 * g.Share)) ?? [])
        {
            first[Share(bin)] = Number(share);
        }
    }

    /// <summary>What a field shows.</summary>
    public string this[string field] => typed(field) ?? first.GetValueOrDefault(field, "");

    /// <summary>Whether the gates are to be set as the calibration advises.</summary>
    public bool ByCalibration => typed("calibrated") is { Length: > 0 };

    /// <summary>The field of a bin's share.</summary>
    public static string Share(string bin) => $"share:{bin}";

    /// <summary>A share as typed; null where there is none or it is no number.</summary>
    public double? ShareOf(string bin) => double.TryParse(this[Share(bin)], NumberStyles.Float, CultureInfo.InvariantCulture, out var share) && double.IsFinite(share) && share > 0 ? share : null;

    /// <summary>The rate as typed; 0 where it is no number.</summary>
    public double Rate => double.TryParse(this["rate"], NumberStyles.Float, CultureInfo.InvariantCulture, out var rate) && double.IsFinite(rate) ? rate : 0;

    /// <summary>Reads the sheet; what cannot be read is said, and what is not there is left for the sheet's own check.</summary>
    /// <param name="day">The mix of the day.</param>
    /// <param name="correcting">The sheet that is corrected; null for a new one.</param>
    /// <param name="gates">How the gates give what they are set to.</param>
    /// <param name="visit">The visit.</param>
    public (MixSheet? Sheet, IReadOnlyList<string> Faults) Read(MixOfDay day, KeptSheet? correcting, SheetRecords gates, Visit visit)
    {
        ArgumentNullException.ThrowIfNull(day);
        ArgumentNullException.ThrowIfNull(gates);
        ArgumentNullException.ThrowIfNull(visit);
        var faults = new List<string>();
        var (from, until) = (Moment("From", this["from"], visit, faults), Moment("Until", this["until"], visit, faults));
        var rate = TypedNumber.Read("Wheat, t/h,", this["rate"], faults, demanded: true);
        var open = Offered(day, correcting).Select(b => (Bin: b, Share: TypedNumber.Read($"The share of {b}, %,", this[Share(b)], faults))).Where(b => b.Share is not (null or 0)).ToArray();
        faults.AddRange(day.Sight.Barred.Where(b => open.Any(o => o.Bin == b.Bin)).Select(b => $"{b.Reason} Close its gate, or have the limit's switch set under the limits of the market, with authority."));
        if (faults.Count > 0)
        {
            return (null, faults);
        }

        var (ask, solved, old) = (day.Sight.Ask, day.Sight.Outcome as MixSolved, correcting?.Sheet);
        var sheet = new MixSheet
        {
            Line = this["line"].Trim(), Flour = ask.Flour.Code, From = from!.Value, Until = until!.Value, TonnesPerHour = rate!.Value, SetBy = visit.Name ?? "", Reason = this["reason"].Trim(), Withdrawn = this["withdrawn"].Trim(),
            StepPercent = old is null ? ask.Step : old.StepPercent,
            Gates = [.. open.Select(b => Gate(b.Bin, b.Share!.Value, rate.Value, day.Sight.Spec, old, ByCalibration ? gates.FitOf(b.Bin) : null))],
            Best = old is not null ? old.Best : solved?.Gates.ToDictionary(g => g.Bin.Code, g => Math.Round(100 * g.Share, 4)) ?? [],
            Limits = old is not null ? old.Limits : [.. ask.Limits.Select(l => new SheetLimit(l.What, l.On, l.Basis, l.On == LimitOn.Flour ? $"limit of the flour, as typed for this mix; {ask.Relations.First(r => r.What == l.What).Words}" : $"terms of the crop year, version {day.Version}{(l.Ends.Any(ask.IsTyped) ? ", as changed for this mix" : "")}") { Least = l.Least, Most = l.Most })],
            LeftOut = old is not null ? old.LeftOut : solved?.LeftOut ?? [], Remarks = old is not null ? old.Remarks : [.. day.Sight.Remarks.Concat(solved?.Remarks ?? []).OrderBy(r => r.Contains(" is left out", StringComparison.Ordinal) ? 0 : 1)], // bins left out first: the print has room for a few
        };
        return (old is null ? Costed(sheet, day, solved) : sheet with { Expected = sheet.ExpectedOfGates() }, []);
    }

    /// <summary>The bins that have a field: those that the flour may take, and those of the sheet.</summary>
    public static IReadOnlyList<string> Offered(MixOfDay day, KeptSheet? correcting)
    {
        ArgumentNullException.ThrowIfNull(day);
        return [.. day.Sight.Spec.Bins.Select(b => b.Code).Union(correcting?.Sheet.Gates.Select(g => g.Bin) ?? [], StringComparer.OrdinalIgnoreCase).Order(StringComparer.Ordinal)];
    }

    private static MixSheet Costed(MixSheet sheet, MixOfDay day, MixSolved? solved)
    {
        (MixBin, double)[] parts = [.. sheet.Gates.Select(g => (day.Sight.Spec.Bins.First(b => b.Code == g.Bin), g.SharePercent / 100))];
        var cost = MixCost.Of(parts);
        return sheet with
        {
            Expected = [.. sheet.ExpectedOfGates(), .. day.Sight.Spec.Relations.Select(r => MixBlend.WheatOf(sheet.Parts, r.What, r.WheatBasis) is { } wheat ? SheetExpected.Of(MixBlend.FlourOf(wheat, r)) : null).OfType<SheetExpected>()], Currency = day.Terms.Currency, CostToday = Math.Round(cost.Today, 4), CostOfTheYear = day.Sight.Spec.ByYear ? Math.Round(cost.Year, 4) : null,
            BestCost = solved is null ? null : Math.Round(solved.ByYear ? solved.Cost.Year : solved.Cost.Today, 4),
        };
    }

    // What was known of a gate's wheat stays as it stood when the sheet was first written.
    private static SheetGate Gate(string bin, double share, double rate, MixSpec spec, MixSheet? old, GateFitted? fit)
    {
        // Beyond what was tried a line is no advice.
        double? dial = fit?.SettingFor(share / 100 * rate) is { } setting && !fit.IsBeyond(setting) ? Math.Round(setting, 2) : null;
        if (old?.Gates.FirstOrDefault(g => g.Bin.Equals(bin, StringComparison.OrdinalIgnoreCase)) is { } stood)
        {
            return stood with { SharePercent = share, DialTonnesPerHour = dial };
        }

        var known = spec.Bins.First(b => b.Code == bin);
        return new SheetGate(bin, known.Class, share) { DialTonnesPerHour = dial, MoisturePercent = known.MoisturePercent, Values = [.. known.Values.OrderBy(v => v.Key).Select(v => SheetValue.Of(v.Key, v.Value))] };
    }

    private static Instant? Moment(string what, string text, Visit visit, List<string> faults)
    {
        var moment = visit.Read(text);
        if (moment is null)
        {
            faults.Add($"{what}: a date and time such as 2026-01-14T06:00 is needed; read “{text}”.");
        }

        return moment;
    }

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
