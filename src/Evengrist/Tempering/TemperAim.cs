namespace Evengrist.Tempering;

/// <summary>What wheat of a hardness is usually tempered to, and how long it rests.</summary>
/// <param name="Hardness">The wheat.</param>
/// <param name="LeastPercent">Least moisture at first break, per cent wet basis; 10 to 20.</param>
/// <param name="MostPercent">Most moisture at first break, per cent wet basis; not below the least, at most 20.</param>
/// <param name="MoistureMark">Where the moistures come from.</param>
/// <param name="LeastHours">Shortest rest, h; 0 to 72.</param>
/// <param name="MostHours">Longest rest, h; not below the shortest, at most 72.</param>
/// <param name="RestMark">Where the hours come from.</param>
/// <param name="Source">The source in words.</param>
public sealed record TemperAim(
    Hardness Hardness, double LeastPercent, double MostPercent, TemperMark MoistureMark, double LeastHours, double MostHours, TemperMark RestMark, string Source)
{
    /// <summary>The rest between shortest and longest, h.</summary>
    public double Hours => (LeastHours + MostHours) / 2;

    /// <summary>The aim in a season, per cent wet basis: the top of the range in dry air, its bottom in damp air, its middle otherwise [ours].</summary>
    /// <exception cref="ArgumentOutOfRangeException">No season is said.</exception>
    public double Percent(TemperSeason season) => season switch
    {
        TemperSeason.Dry => MostPercent,
        TemperSeason.Mild => (LeastPercent + MostPercent) / 2,
        TemperSeason.Damp => LeastPercent,
        _ => throw new ArgumentOutOfRangeException(nameof(season), season, "Say a season."),
    };

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        var faults = new List<string>();
        if (!Enum.IsDefined(Hardness) || Hardness == Hardness.None)
        {
            faults.Add("Each line says a hardness: Soft, SemiHard, Hard or VeryHard.");
        }

        if (!(LeastPercent >= 10 && LeastPercent <= MostPercent && MostPercent <= 20))
        {
            faults.Add($"{Hardness.Words()}: moistures at first break lie from 10 to 20 %, wet basis, the least first.");
        }

        if (!(LeastHours >= 0 && LeastHours <= MostHours && MostHours <= 72))
        {
            faults.Add($"{Hardness.Words()}: rests lie from 0 to 72 hours, the shortest first.");
        }

        if (string.IsNullOrWhiteSpace(Source) || MoistureMark == TemperMark.None || RestMark == TemperMark.None)
        {
            faults.Add($"{Hardness.Words()}: say where the figures come from, with a mark for moisture and for rest.");
        }

        return faults;
    }
}
