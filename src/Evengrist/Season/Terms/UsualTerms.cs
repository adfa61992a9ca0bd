namespace Evengrist.Season.Terms;

/// <summary>What a class is taken to be where nothing was read: supposed, and said so wherever it is used.</summary>
/// <param name="WheatClass">The class.</param>
/// <param name="Quality">What it usually is.</param>
public sealed record UsualTerms(string WheatClass, IReadOnlyList<QualityTerms> Quality)
{
    /// <summary>A wheat with what was not read put in from the usual of its class; the same wheat where nothing is missing.</summary>
    public static SeasonWheat Fill(SeasonWheat wheat, IReadOnlyList<UsualTerms> usual)
    {
        ArgumentNullException.ThrowIfNull(wheat);
        ArgumentNullException.ThrowIfNull(usual);
        var missing = Missing(wheat, usual);
        return missing.Count == 0 ? wheat : wheat with { Quality = missing.Aggregate(wheat.Quality, (quality, term) => quality.With(term.What, new SeasonValue(term.Value, term.Spread, term.Basis))) };
    }

    /// <summary>What would be put in.</summary>
    public static IReadOnlyList<QualityTerms> Missing(SeasonWheat wheat, IReadOnlyList<UsualTerms> usual)
    {
        ArgumentNullException.ThrowIfNull(wheat);
        ArgumentNullException.ThrowIfNull(usual);
        return [.. usual.Where(u => u.WheatClass == wheat.WheatClass).SelectMany(u => u.Quality).Where(q => !wheat.Quality.TryGet(q.What, out _))];
    }
}
