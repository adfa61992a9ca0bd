using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Season;
using Evengrist.Season.ChangeOver;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Web.Sights.Season;

/// <summary>A change from old crop to new as a person asks for it, for one flour.</summary>
/// <param name="Fields">The fields.</param>
/// <param name="Spec">What is to be laid out; null where something cannot be.</param>
/// <param name="First">The day on which the first step begins.</param>
/// <param name="LastOld">The last day on which there is old crop; null for no such day.</param>
public sealed record ChangeAsk(TypedFields Fields, ChangeOverSpec? Spec, LocalDate First, LocalDate? LastOld)
{
    private const double UsualStep = 15, UsualDays = 4;

    /// <summary>What is asked of each crop: property, unit with basis, basis.</summary>
    public static IReadOnlyList<(Property What, string Unit, Basis Basis)> Asked { get; } =
    [
        (Property.Protein, "% 12mb", Basis.At12), (Property.FallingNumber, "s", default), (Property.TestWeight, "kg/hL", default), (Property.Ash, "% dry", Basis.Dry), (Property.WetGluten, "% 14mb", Basis.At14),
    ];

    /// <summary>Whether the last step begins while there is old crop still, or the day after.</summary>
    public bool OldLasts => LastOld is not { } last || Spec is null || WholeFrom <= last.PlusDays(1);

    /// <summary>The day from which all is new crop.</summary>
    public LocalDate WholeFrom => First.PlusDays((Spec!.Steps.Count - 1) * Spec.DaysPerStep);

    /// <summary>Reads the fields.</summary>
    /// <param name="flour">The flour.</param>
    /// <param name="old">Its old mix as the plan has it; null where it has none.</param>
    /// <param name="new">Its new mix.</param>
    /// <param name="first">The day on which new crop is there.</param>
    /// <param name="typed">What was typed, by field.</param>
    public static ChangeAsk Of(FlourTerms flour, CropMix? old, CropMix? @new, LocalDate first, Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(flour);
        var fields = new TypedFields(typed);
        var begins = fields.Day("first", "First day of new crop", first);
        LocalDate? until = fields.Text("until", "").Length > 0 ? fields.Day("until", "Old crop lasts until", first) : null;
        var (step, days) = (fields.Needed("step", "New crop a step", UsualStep), fields.Needed("days", "Days a step", UsualDays));
        if (step is <= 0 or > 100 || (step > 0 && step < 1))
        {
            fields.Fault("New crop a step: give 1 to 100 % of the mix.");
        }

        if (days < 1 || days > 60 || days != Math.Floor(days))
        {
            fields.Fault("Days a step: give a whole number from 1 to 60.");
        }

        if (until < begins)
        {
            fields.Fault($"Old crop lasts until {until:uuuu-MM-dd}: that is before the first day of new crop, {begins:uuuu-MM-dd}; give a later day, or leave it empty.");
        }

        var (oldMix, newMix) = (Crop(fields, "old", "Old crop", old), Crop(fields, "new", "New crop", @new));
        LargestMove[] moves = [.. Asked.Select(a => (a.What, By: fields.Number($"move:{a.What}", $"Largest move of {a.What.Words()}"))).Where(m => m.By is not null).Select(m => new LargestMove(m.What, m.By!.Value))];
        if (fields.Faults.Count > 0)
        {
            return new ChangeAsk(fields, null, begins, until);
        }

        var spec = new ChangeOverSpec([new ChangingFlour(flour.Code, oldMix, newMix, [.. flour.Limits.Select(l => l.ToLimit())])], ChangeOverSpec.Even(step / 100), (int)days) { LargestMoves = moves };
        foreach (var fault in ChangeOverFaults.Of(spec))
        {
            fields.Fault($"{char.ToUpperInvariant(fault.Where[0])}{fault.Where[1..]}: {fault.What}");
        }

        return new ChangeAsk(fields, fields.Faults.Count == 0 ? spec : null, begins, until);
    }

    private static CropMix Crop(TypedFields fields, string key, string words, CropMix? known)
    {
        var values = new Dictionary<Property, SeasonValue>();
        foreach (var (what, _, basis) in Asked)
        {
            var own = known is not null && known.Quality.TryGet(what, out var value) ? value : null;
            double? On(double? number) => number is { } x && own is not null && what.NeedsBasis() ? SeasonScale.FromScale(what, SeasonScale.OnScale(what, x, own.Basis), basis) : number;
            var (mean, spread) = (fields.Number($"{key}:{what}", $"{words}, {what.Words()}", Round(On(own?.Value), 2)), fields.Number($"{key}-spread:{what}", $"{words}, what {what.Words()} may be off by", Round(On(own?.Spread), 2)));
            if (mean is { } number)
            {
                values[what] = new SeasonValue(number, spread ?? 0, basis);
            }
        }

        return new CropMix(fields.Needed($"{key}:Moisture", $"{words}, moisture", Round(known?.MoisturePercent ?? 12, 1)), new SeasonQuality(values));
    }

    private static double? Round(double? value, int decimals) => value is { } x ? Math.Round(x, decimals) : null;
}
