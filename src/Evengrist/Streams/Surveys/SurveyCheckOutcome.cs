using Evengrist.Numerics.Reconciling;

namespace Evengrist.Streams.Surveys;

/// <summary>What the weighers say of a survey.</summary>
/// <param name="Found">Whether all of it goes together, which measurement does not, and every value adjusted.</param>
/// <param name="Adjusted">The survey's streams as reconciled, without what was named; null where nothing was adjusted or it is not known which measurement is wrong.</param>
public sealed record SurveyCheckOutcome(GrossErrorOutcome Found, StreamTable? Adjusted);
