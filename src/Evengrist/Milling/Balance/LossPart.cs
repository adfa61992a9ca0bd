namespace Evengrist.Milling.Balance;

/// <summary>Of what kind a part of the unexplained is.</summary>
public enum LossKind
{
    /// <summary>Not said; the default value.</summary>
    None = 0,

    /// <summary>Water gone into the air.</summary>
    Evaporation = 1,

    /// <summary>Screenings weighed too low (above 0) or too high.</summary>
    Cleaning = 2,

    /// <summary>A weigher or meter that showed more than went in, or less than came out (above 0).</summary>
    Weigher = 3,

    /// <summary>The temper bins rose by more (above 0) or less than was taken.</summary>
    TemperBins = 4,
}

/// <summary>A part of what is unexplained.</summary>
/// <param name="Name">Whose it is.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Tonnes">How much of it, t; below 0 where it hides loss elsewhere.</param>
/// <param name="StandardUncertainty">One standard uncertainty of it, t.</param>
public sealed record LossPart(string Name, LossKind Kind, double Tonnes, double StandardUncertainty);
