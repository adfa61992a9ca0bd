using NodaTime;

namespace Evengrist.Intake.Deciding;

/// <summary>Something a trailer carried before.</summary>
/// <param name="What">The sort of load.</param>
/// <param name="On">When; null where the driver does not know.</param>
public sealed record PreviousLoad(CargoKind What, LocalDate? On = null);
