using NodaTime;

namespace Evengrist.Demo;

/// <summary>How far the demonstration mill has been recorded.</summary>
/// <param name="Day">The milling day up to which everything is recorded.</param>
/// <param name="Share">Share of the year, 0 to 1.</param>
/// <param name="Facts">Facts recorded so far.</param>
public sealed record DemoProgress(LocalDate Day, double Share, int Facts);
