using Evengrist.Ledger;

namespace Evengrist.Season.ChangeOver;

/// <summary>What is wrong with a change of crop that is to be laid out.</summary>
public static class ChangeOverFaults
{
    /// <summary>Every fault; none where it can be laid out.</summary>
    public static IReadOnlyList<SeasonFault> Of(ChangeOverSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var faults = new FaultList();
        Check(faults, spec.Flours.Count > 0, "flours", "There is none; name at least one.");
        Check(faults, spec.DaysPerStep >= 1, "days per step", $"{spec.DaysPerStep} is no length of a step; give 1 or more.");
        Check(faults, spec.Steps.Count > 0 && Math.Abs(spec.Steps[^1] - 1) < 1e-9, "steps", "The last step has to be all new crop: 1.");
        for (var i = 0; i < spec.Steps.Count; i++)
        {
            Check(faults, spec.Steps[i] > (i > 0 ? spec.Steps[i - 1] : 0) && spec.Steps[i] <= 1, $"step {i}", $"A share of {FaultList.Shown(spec.Steps[i])} does not follow; give shares above 0, each larger than the one before, at most 1.");
        }

        foreach (var move in spec.LargestMoves)
        {
            Check(faults, move.By > 0 && double.IsFinite(move.By), $"largest move of {FaultList.NameOf(move.What)}", $"{FaultList.Shown(move.By)} is no move; give a number above 0.");
        }

        foreach (var flour in spec.Flours)
        {
            Flour(flour, faults);
        }

        return faults.Found;
    }

    private static void Flour(ChangingFlour flour, FaultList faults)
    {
        Check(faults, flour.Old.Quality.Values.Keys.Any(p => SeasonScale.Averages(p) && flour.New.Quality.TryGet(p, out _)), $"flour {flour.Code}", "No property that averages is known of both the old and the new mix; give one.");
        foreach (var (crop, mix) in new[] { ("old", flour.Old), ("new", flour.New) })
        {
            Check(faults, mix.MoisturePercent is >= 0 and < 60, $"flour {flour.Code}, {crop} mix, moisture", $"{FaultList.Shown(mix.MoisturePercent)} % cannot be; give per cent, wet basis.");
            foreach (var (what, value) in mix.Quality.Values)
            {
                var where = $"flour {flour.Code}, {crop} mix, {FaultList.NameOf(what)}";
                Check(faults, double.IsFinite(value.Value) && value.Value >= 0 && double.IsFinite(value.Spread) && value.Spread >= 0, where, $"{FaultList.Shown(value.Value)} ± {FaultList.Shown(value.Spread)} cannot be; give a value and a spread of 0 or more.");
                Check(faults, !what.NeedsBasis() || value.Basis.IsStated, where, "The basis is missing; say 12mb, 14mb or dry.");
                Check(faults, what != Property.FallingNumber || value.Value > 60, where, $"{FaultList.Shown(value.Value)} s cannot be blended; falling numbers lie above 60 s.");
            }
        }

        foreach (var limit in flour.Limits)
        {
            var where = $"flour {flour.Code}, limit of {FaultList.NameOf(limit.What)}";
            Check(faults, limit.Least is not null || limit.Most is not null, where, "It says neither least nor most; give one.");
            Check(faults, !(limit.Least > limit.Most), where, $"Its least, {FaultList.Shown(limit.Least ?? 0)}, lies above its most, {FaultList.Shown(limit.Most ?? 0)}.");
            Check(faults, !limit.What.NeedsBasis() || limit.Basis.IsStated, where, "The basis is missing; say 12mb, 14mb or dry.");
        }
    }

    private static void Check(FaultList faults, bool holds, string where, string what)
    {
        if (!holds)
        {
            faults.Add(where, what);
        }
    }
}
