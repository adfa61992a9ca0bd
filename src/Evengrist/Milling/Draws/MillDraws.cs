namespace Evengrist.Milling.Draws;

/// <summary>What many mills drawn come to.</summary>
/// <param name="Spec">What was asked.</param>
/// <param name="Draws">Mills that were solved and count.</param>
/// <param name="Unsolved">Mills drawn that could not be solved and count in no figure.</param>
/// <param name="Now">As it is set.</param>
/// <param name="Change">What is tried would change, of the same mill before and after; null where nothing is tried.</param>
/// <param name="MoneyPerDay">Change of what the products bring in 24 h; null where nothing is tried or no price was given.</param>
public sealed record MillDraws(DrawsSpec Spec, int Draws, int Unsolved, DrawnSetting Now, DrawnSetting? Change, DrawnFigure? MoneyPerDay);

/// <summary>A setting, or a change of it, as drawn.</summary>
/// <param name="Products">By product in the order of the flow sheet, then the sets asked for, then all flour.</param>
/// <param name="Passages">By passage, in the order of the flow sheet.</param>
public sealed record DrawnSetting(IReadOnlyList<DrawnSet> Products, IReadOnlyList<DrawnPassage> Passages);

/// <summary>Products together as drawn; null where nothing flows in the mills drawn.</summary>
/// <param name="Name">What they are called.</param>
/// <param name="YieldPercent">Share of the wheat to first break, both as they flow, per cent.</param>
/// <param name="AshPercentDry">Ash, per cent of dry matter.</param>
/// <param name="ProteinPercentDry">Protein, per cent of dry matter.</param>
public sealed record DrawnSet(string Name, DrawnFigure? YieldPercent, DrawnFigure? AshPercentDry, DrawnFigure? ProteinPercentDry);

/// <summary>A passage as drawn.</summary>
/// <param name="Code">Its code.</param>
/// <param name="DryTonnesPerHour">What enters it, t/h of dry matter.</param>
/// <param name="ReleasePercent">Its release, per cent of its feed; null where it has none.</param>
public sealed record DrawnPassage(string Code, DrawnFigure? DryTonnesPerHour, DrawnFigure? ReleasePercent);

/// <summary>What comes of drawing mills.</summary>
public abstract record DrawsOutcome;

/// <summary>They were drawn.</summary>
/// <param name="Draws">What they come to.</param>
/// <param name="Took">Time it took.</param>
/// <param name="IsWhole">Whether all asked for were drawn; otherwise somebody stopped it, and the first ones count.</param>
public sealed record MillsDrawn(MillDraws Draws, TimeSpan Took, bool IsWhole) : DrawsOutcome;

/// <summary>They cannot be drawn.</summary>
/// <param name="Reasons">Why, each a sentence.</param>
public sealed record MillsNotDrawn(IReadOnlyList<string> Reasons) : DrawsOutcome;

/// <summary>It was stopped before there were enough to say anything.</summary>
/// <param name="Draws">How many there were.</param>
public sealed record DrawsStopped(int Draws) : DrawsOutcome;
