namespace Evengrist.Milling.Suggesting;

/// <summary>A figure and the bounds it has to lie in; the wished figure's among them where an amount is wished.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Now">As it is.</param>
/// <param name="Least">Least value; −∞ for none.</param>
/// <param name="Most">Most value; +∞ for none.</param>
/// <param name="IsOfChange">Whether the bounds come from the change against now, so that the ± of the change counts; else the ± of the figure does.</param>
public sealed record SuggestRow(WishFigure Figure, double Now, double Least, double Most, bool IsOfChange)
{
    /// <summary>Whether it is of the rule that no passage's load may rise much.</summary>
    public bool IsChoke { get; init; }
}
