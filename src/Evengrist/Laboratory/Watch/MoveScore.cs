namespace Evengrist.Laboratory.Watch;

/// <summary>How pairs score a move along one direction.</summary>
/// <param name="Score">By the inverse covariance.</param>
/// <param name="Known">How precisely the size is known by them: one over its variance.</param>
/// <param name="Unit">In which sizes are thought of beforehand.</param>
internal readonly record struct MoveScore(double Score, double Known, double Unit)
{
    /// <summary>Most that any size could fit: half the square of the score in its own standard deviation.</summary>
    public double MostLogFit => 0.5 * Score * Score / Known;

    /// <summary>Most that any two sizes along two directions could fit.</summary>
    /// <param name="other">Along the other.</param>
    /// <param name="cross">What both share.</param>
    public double MostLogFitWith(MoveScore other, double cross) =>
        0.5 * ((Score * Score * other.Known) - (2 * Score * other.Score * cross) + (other.Score * other.Score * Known)) / ((Known * other.Known) - (cross * cross));
}
