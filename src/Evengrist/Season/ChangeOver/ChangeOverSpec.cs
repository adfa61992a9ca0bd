using Evengrist.Ledger;

namespace Evengrist.Season.ChangeOver;

/// <summary>A change from old crop to new that is to be laid out.</summary>
/// <remarks>Model: docs/model/change-over.md.</remarks>
/// <param name="Flours">The flours with their old and new wheat mix.</param>
/// <param name="Steps">Shares of new crop in the mix, by mass as it lies, rising, above 0, the last one 1: 0.15, 0.30 … in steps of 10 to 20 % as is usual [memory].</param>
/// <param name="DaysPerStep">How long each step is milled, days, 1 or more.</param>
public sealed record ChangeOverSpec(IReadOnlyList<ChangingFlour> Flours, IReadOnlyList<double> Steps, int DaysPerStep)
{
    /// <summary>The largest move of a property from one step to the next that customers will not notice, in its usual unit; a property that is not named may move freely.</summary>
    public IReadOnlyList<LargestMove> LargestMoves { get; init; } = [];

    /// <summary>Even steps up to 1, the last one as small as what is left.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The step is not above 0, or above 1.</exception>
    public static IReadOnlyList<double> Even(double step)
    {
        if (!(step is > 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(step), step, "A step is a share above 0, at most 1.");
        }

        var count = (int)Math.Ceiling((1 / step) - 1e-9);
        return [.. Enumerable.Range(1, count).Select(i => Math.Min(1, i * step))];
    }
}

/// <summary>A flour whose wheat mix changes from old crop to new.</summary>
/// <param name="Code">Code of the flour.</param>
/// <param name="Old">Its mix of old crop.</param>
/// <param name="New">Its mix of new crop.</param>
/// <param name="Limits">What the mix has to keep.</param>
public sealed record ChangingFlour(string Code, CropMix Old, CropMix New, IReadOnlyList<SeasonLimit> Limits);

/// <summary>A wheat mix of one crop.</summary>
/// <param name="MoisturePercent">Moisture, per cent, wet basis.</param>
/// <param name="Quality">Its quality, with what it may be off by: small for old crop that was milled for months, larger for new.</param>
public sealed record CropMix(double MoisturePercent, SeasonQuality Quality);

/// <summary>The largest move of a property from one step to the next.</summary>
/// <param name="What">The property.</param>
/// <param name="By">In its usual unit, above 0.</param>
public sealed record LargestMove(Property What, double By);
