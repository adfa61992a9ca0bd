using NodaTime;

namespace Evengrist.Intake;

/// <summary>One load as it is to be settled.</summary>
/// <param name="Weighing">Weights full and empty.</param>
/// <param name="On">The milling day of the delivery; decides which scales are in force.</param>
/// <param name="Findings">What the probe sample showed, each property once; dockage and moisture are among them.</param>
public sealed record Delivery(Weighing Weighing, LocalDate On, IReadOnlyList<Finding> Findings)
{
    /// <summary>What was smelt or seen, each a word: musty, sour; a contract may charge for it.</summary>
    public IReadOnlyList<string> Observed { get; init; } = [];
}
