using Evengrist.Milling.Learning;
using NodaTime;

namespace Evengrist.Milling.Drift;

/// <summary>A test of a mill and when it was taken.</summary>
/// <param name="At">When.</param>
/// <param name="Test">What was measured, with the settings and the wheat of then.</param>
public sealed record DatedTest(Instant At, MillTest Test);
