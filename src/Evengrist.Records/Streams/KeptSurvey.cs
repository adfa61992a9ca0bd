using Evengrist.Streams.Surveys;
using NodaTime;

namespace Evengrist.Records.Streams;

/// <summary>A stream survey that is kept, in one version.</summary>
/// <param name="Version">Its version, from 1.</param>
/// <param name="By">Who kept it.</param>
/// <param name="Recorded">When.</param>
/// <param name="Survey">The survey.</param>
public sealed record KeptSurvey(int Version, string By, Instant Recorded, StreamSurvey Survey);
