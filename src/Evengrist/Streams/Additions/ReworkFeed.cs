namespace Evengrist.Streams.Additions;

/// <summary>Flour that is to be fed back into a run. Page: docs/model/additions.md.</summary>
/// <param name="Into">Code of the flour of the run.</param>
/// <param name="Of">Code of the flour that is fed back.</param>
/// <param name="Percent">How much of the run it is to be, per cent.</param>
public sealed record ReworkFeed(string Into, string Of, double Percent)
{
    /// <summary>The most of a run it may be, per cent, by the mill's own rule; 5 to begin with [memory: 2 to 5 % is usual, 10 % the most].</summary>
    public double MostPercent { get; init; } = 5;

    /// <summary>How old it is, days.</summary>
    public double AgeDays { get; init; }

    /// <summary>The oldest it may be, days, by the mill's own rule; 30 to begin with [design].</summary>
    public double MostDays { get; init; } = 30;

    /// <summary>Allergens it has that are no wheat: soy.</summary>
    public IReadOnlyList<string> Allergens { get; init; } = [];

    /// <summary>Allergens that the label of the run names beyond wheat.</summary>
    public IReadOnlyList<string> LabelAllergens { get; init; } = [];

    /// <summary>Whether the run and the rework were enriched: together they hold the nutrients twice where the premix is dosed on all of it.</summary>
    public bool IsEnriched { get; init; }

    /// <summary>What averages by mass of both, one basis each: protein, ash; value of the run, of the rework, and the ends the flour has to keep.</summary>
    public IReadOnlyList<ReworkedValue> Values { get; init; } = [];

    /// <summary>What is wrong with the question, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Into) || string.IsNullOrWhiteSpace(Of) ? ["Say which flour is fed back into which."] : Array.Empty<string>(),
        .. Percent is > 0 and < 100 ? Array.Empty<string>() : [FormattableString.Invariant($"Rework lies above 0 and below 100 % of a run; got {Percent}.")],
        .. MostPercent is > 0 and < 100 ? Array.Empty<string>() : [FormattableString.Invariant($"The most of a run lies above 0 and below 100 %; got {MostPercent}.")],
        .. AgeDays is >= 0 and <= 3650 && MostDays is > 0 and <= 3650 ? Array.Empty<string>() : ["Its age, and the oldest it may be, are days from 0 to 3650."],
        .. Values.Where(v => !double.IsFinite(v.OfRun) || !double.IsFinite(v.OfRework) || v.Least > v.Most).Select(v => $"{v.What}: give a value of the run and of the rework, and a least below the most."),
    ];

    /// <summary>Why it may not be fed, each a sentence; empty where nothing that is known here stands against it. A person decides.</summary>
    public IReadOnlyList<string> Against() =>
    [
        .. Into.Equals(Of, StringComparison.OrdinalIgnoreCase) ? Array.Empty<string>() : [$"Like goes into like: {Of} is not {Into}. A person with authority may say otherwise, by the site's plan."],
        .. Allergens.Except(LabelAllergens, StringComparer.OrdinalIgnoreCase).Select(a => $"It has {a}, which the label of {Into} does not name."),
        .. Percent > MostPercent ? [FormattableString.Invariant($"{Percent:0.##} % is more than the most of {MostPercent:0.##} % of a run.")] : Array.Empty<string>(),
        .. AgeDays > MostDays ? [FormattableString.Invariant($"It is {AgeDays:0} days old, more than {MostDays:0}.")] : Array.Empty<string>(),
        .. Values.Where(v => v.With(Percent) is var with && (with < v.Least - 1e-9 || with > v.Most + 1e-9)).Select(v => FormattableString.Invariant($"{v.What} would be {v.With(Percent):0.###}, outside {v.Least} to {v.Most}.")),
    ];

    /// <summary>The most of a run that keeps every end, per cent, at most the mill's own.</summary>
    public double MostThatKeeps() => Math.Max(0, Values.Select(v => v.MostPercent()).Append(MostPercent).Min());
}

/// <summary>A property of a run and of what is fed back.</summary>
/// <param name="What">What it is, with its basis, in words.</param>
/// <param name="OfRun">Of the run.</param>
/// <param name="OfRework">Of the rework.</param>
public sealed record ReworkedValue(string What, double OfRun, double OfRework)
{
    /// <summary>The least the flour may have; null for none.</summary>
    public double? Least { get; init; }

    /// <summary>The most; null for none.</summary>
    public double? Most { get; init; }

    /// <summary>With so much rework: (1 − x)·run + x·rework.</summary>
    public double With(double percent) => OfRun + (percent / 100 * (OfRework - OfRun));

    /// <summary>The most rework that keeps both ends, per cent; 0 where the run itself misses one, 100 where none stands in the way.</summary>
    public double MostPercent()
    {
        if (OfRun < Least || OfRun > Most)
        {
            return 0;
        }

        var end = OfRework > OfRun ? Most : Least;
        return end is { } at && OfRework != OfRun ? Math.Min(100, 100 * (at - OfRun) / (OfRework - OfRun)) : 100;
    }
}
