using Evengrist.Records;
using Evengrist.Season;
using Evengrist.Season.ChangeOver;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Web.Sights.Season;

/// <summary>The change from old crop to new for one flour, as a page and its print show it.</summary>
/// <param name="Terms">The terms.</param>
/// <param name="Flour">The flour.</param>
/// <param name="Ask">What is asked.</param>
/// <param name="Laid">The steps; null where something cannot be.</param>
/// <param name="OldFrom">Where the old mix comes from, in words.</param>
/// <param name="NewFrom">Where the new mix comes from, in words.</param>
public sealed record ChangeSight(SeasonTerms Terms, FlourTerms Flour, ChangeAsk Ask, FlourChangeOver? Laid, string OldFrom, string NewFrom)
{
    private const int LastDays = 28;

    /// <summary>Looks; null where no terms are kept.</summary>
    public static ChangeSight? Of(YearDesk desk, Mill mill, Instant at, string? flourCode, Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(desk);
        if (Records.Season.SeasonShelf.TermsOf(mill) is not { } kept)
        {
            return null;
        }

        var flour = kept.Terms.Flours.FirstOrDefault(f => f.Code.Equals(flourCode, StringComparison.OrdinalIgnoreCase)) ?? kept.Terms.Flours[0];
        var year = HarvestYear.Of(desk, mill, kept.Terms, at);
        var (old, oldFrom) = year is null ? (null, NothingKnown) : Old(year, flour);
        var (@new, newFrom) = year is null ? (null, NothingKnown) : New(desk, year, flour);
        var comes = year?.Arrivals.Where(a => flour.Classes.Count == 0 || flour.Classes.Contains(a.WheatClass)).Select(a => a.First).DefaultIfEmpty(year.Spec.Start).Min() ?? at.InZone(mill.Settings.Zone).Date;
        var ask = ChangeAsk.Of(flour, old, @new, year is null ? comes : LocalDate.Max(comes, year.Spec.Start), typed);
        return new ChangeSight(kept.Terms, flour, ask, ask.Spec is { } spec && ChangeOverModel.Lay(spec) is ChangeOverLaid laid ? laid.Flours[0] : null, oldFrom, newFrom);
    }

    private const string NothingKnown = "nothing is planned: type it in";

    private static bool Takes(FlourTerms flour, SeasonWheat wheat) => flour.Classes.Count == 0 || flour.Classes.Contains(wheat.WheatClass);

    private static (CropMix? Mix, string From) Old(HarvestYear year, FlourTerms flour)
    {
        string[] arrivals = [.. year.Arrivals.Select(a => a.Code)];
        var plan = year.Before;
        var last = plan.Spec.Periods.Count - plan.Spec.Periods.Reverse().TakeWhile((p, i) => Period.DaysBetween(p.Start, plan.Spec.End) <= LastDays).Count();
        var drawn = year.IsNext ? PlannedMix.Of(plan, flour.Code, _ => true, last) : PlannedMix.Of(plan, flour.Code, w => !arrivals.Contains(w.Code));
        return drawn is not null ? (drawn, year.IsNext ? $"the plan's last {LastDays} days" : "what the plan draws of what lies in store and can be bought")
            : PlannedMix.Of(year.Spec.Wheats.Where(w => !arrivals.Contains(w.Code) && Takes(flour, w))) is { } lies ? (lies, "the mean of what lies in store, for the plan draws none of it") : (null, NothingKnown);
    }

    private static (CropMix? Mix, string From) New(YearDesk desk, HarvestYear year, FlourTerms flour)
    {
        string[] arrivals = [.. year.Arrivals.Select(a => a.Code)];
        var plan = year.IsNext ? (desk.PlanOf(year.Question, year.Spec).Linear as SeasonPlanned)?.Plan : year.Before;
        var comes = year.Arrivals.Where(a => flour.Classes.Count == 0 || flour.Classes.Contains(a.WheatClass)).Select(a => a.Last).DefaultIfEmpty(year.Spec.Start).Max();
        return plan is not null && PlannedMix.Of(plan, flour.Code, _ => true, plan.Spec.Periods.TakeWhile(p => p.Start <= comes).Count()) is { } drawn ? (drawn, "what the plan draws once the harvest is in")
            : PlannedMix.Of(year.Spec.Wheats.Where(w => arrivals.Contains(w.Code) && Takes(flour, w))) is { } expected ? (expected, "the mean of what is expected, for the plan draws nothing") : (null, NothingKnown);
    }
}
