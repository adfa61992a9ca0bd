using Evengrist.Ledger;

namespace Evengrist.Season.Bands;

/// <summary>What is wrong with what was asked of bands.</summary>
public static class BandFaults
{
    /// <summary>Every fault; none where bands can be designed.</summary>
    public static IReadOnlyList<SeasonFault> Of(BandSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var faults = new List<SeasonFault>();
        void Check(bool holds, string where, string what)
        {
            if (!holds)
            {
                faults.Add(new SeasonFault(where, what));
            }
        }

        static bool Spread(double value) => double.IsFinite(value) && value >= 0;
        Check(spec.Bins is >= 1 and <= 20, "bins", $"{spec.Bins} bins; give 1 to 20.");
        Check(spec.Step is >= 0.02 and <= 5, "step", $"Edges every {spec.Step} points cannot be looked for; give 0.02 to 5.");
        Check(Spread(spec.ReadingSpread), "reading spread", $"{spec.ReadingSpread} cannot be; give points of 0 or more.");
        Check(Spread(spec.FallingNumberReadingSpread), "falling number reading spread", $"{spec.FallingNumberReadingSpread} cannot be; give s of 0 or more.");
        Check(spec.Basis.IsStated, "basis", "It is missing; say at which moisture protein is read.");
        Check(spec.Parts.Count > 0 && spec.Parts.Sum(p => p.Tonnes) > 0, "parts", "Nothing is expected; give tonnes of at least one district.");
        Check(spec.FallingNumberEdges.All(e => e > 60) && spec.FallingNumberEdges.SequenceEqual(spec.FallingNumberEdges.Distinct().Order()), "falling number edges", "Give them rising, each above 60 s.");
        Check(spec.FallingNumberEdges.Count < Math.Max(1, spec.Bins), "falling number edges", $"{spec.FallingNumberEdges.Count} edges part the harvest into more than {spec.Bins} bins; give fewer edges or more bins.");
        Check(spec.Arriving.Count == 0 || (spec.Arriving.All(Spread) && Math.Abs(spec.Arriving.Sum() - 1) < 1e-6), "arriving", "Shares of the harvest by period are 0 or more and add up to 1; leave them out where it lies there when the year begins.");
        foreach (var part in spec.Parts)
        {
            var where = $"district {part.District}";
            Check(Spread(part.Tonnes), where, $"{part.Tonnes} t cannot be; give 0 or more.");
            Check(part.MoisturePercent is >= 0 and < 60, where, $"A moisture of {part.MoisturePercent} % cannot be.");
            Check(part.Quality.TryGet(Property.Protein, out var protein) && protein.Basis.IsStated, where, "Its protein is missing, or its basis is; give both.");
            Check(spec.FallingNumberEdges.Count == 0 || part.Quality.TryGet(Property.FallingNumber, out _), where, "Its falling number is missing, and the harvest is to be parted by it.");
            foreach (var (what, value) in part.Quality.Values)
            {
                Check(SeasonScale.Averages(what), $"{where}, {what}", "It does not average in a bin; leave it out.");
                Check(double.IsFinite(value.Value) && value.Value >= 0 && Spread(value.Spread), $"{where}, {what}", $"{value.Value} ± {value.Spread} cannot be; give a value and a spread of 0 or more.");
                Check(what != Property.FallingNumber || value.Value > 60, $"{where}, {what}", $"{value.Value} s cannot be blended; falling numbers lie above 60 s.");
            }
        }

        return faults;
    }

    /// <summary>The same, and what does not fit the year it is to be laid into.</summary>
    public static IReadOnlyList<SeasonFault> Of(BandSpec spec, SeasonSpec season)
    {
        ArgumentNullException.ThrowIfNull(season);
        var faults = new List<SeasonFault>(Of(spec));
        if (spec.Arriving.Count > season.Periods.Count)
        {
            faults.Add(new SeasonFault("arriving", $"{spec.Arriving.Count} shares for {season.Periods.Count} periods; give no more than there are periods."));
        }

        var asked = new SeasonWheat("band", spec.WheatClass, 0, 0, SeasonQuality.Unknown);
        var takers = season.Flours.Where(f => SeasonYield.Allows(f, asked) || (f.Wheats.Count > 0 && (f.Classes.Count == 0 || f.Classes.Contains(spec.WheatClass)))).ToArray();
        if (takers.Length == 0)
        {
            faults.Add(new SeasonFault("class", $"No flour takes {(spec.WheatClass.Length > 0 ? spec.WheatClass : "a class without a name")}; name one of {string.Join(", ", season.Flours.SelectMany(f => f.Classes).Distinct().Order(StringComparer.Ordinal))}."));
        }

        foreach (var what in takers.SelectMany(f => f.Limits).Select(l => l.What).Distinct().Order())
        {
            foreach (var part in spec.Parts.Where(p => p.Tonnes > 0 && !p.Quality.TryGet(what, out _)))
            {
                faults.Add(new SeasonFault($"district {part.District}", $"Its {what.Words()} is missing, and a flour it may go into limits it."));
            }
        }

        return faults;
    }
}
