namespace Evengrist.Web.Sights.Season;

/// <summary>A line of a drawing.</summary>
/// <param name="Words">What it is, written at its end.</param>
/// <param name="Points">From left to right.</param>
public sealed record ChartLine(string Words, IReadOnlyList<(double X, double Y)> Points)
{
    /// <summary>How far it may be off at each point, one standard deviation up and down, drawn as a band; empty for none.</summary>
    public IReadOnlyList<double> Spread { get; init; } = [];

    /// <summary>Whether it is a level that others are held against: a limit, a price asked.</summary>
    public bool IsLevel { get; init; }

    /// <summary>Whether its points are marked, because nothing lies between them.</summary>
    public bool HasDots { get; init; }

    /// <summary>Whether it is points alone, with no line through them.</summary>
    public bool IsDots { get; init; }

    /// <summary>A level.</summary>
    public static ChartLine Level(string words, double y, double from, double to) => new(words, [(from, y), (to, y)]) { IsLevel = true };
}
