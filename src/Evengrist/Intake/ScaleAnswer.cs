namespace Evengrist.Intake;

/// <summary>What a scale says of one load.</summary>
/// <param name="Recorded">The factor as recorded, in the scale's unit and basis.</param>
public abstract record ScaleAnswer(decimal Recorded);

/// <summary>The step that counts and its effect.</summary>
/// <param name="Recorded">The factor as recorded.</param>
/// <param name="Step">The value at which the step begins.</param>
/// <param name="Effect">Money for each unit of the price, or per cent of the mass, after cap and floor.</param>
public sealed record ScaleEffectOf(decimal Recorded, decimal Step, decimal Effect) : ScaleAnswer(Recorded);

/// <summary>The load is not taken under this scale.</summary>
/// <param name="Recorded">The factor as recorded.</param>
/// <param name="Limit">The limit it breaks.</param>
public sealed record ScaleRejects(decimal Recorded, decimal Limit) : ScaleAnswer(Recorded);

/// <summary>The table ends before this value and nothing is agreed beyond.</summary>
/// <param name="Recorded">The factor as recorded.</param>
/// <param name="End">The end of the table.</param>
public sealed record ScaleSilent(decimal Recorded, decimal End) : ScaleAnswer(Recorded);
