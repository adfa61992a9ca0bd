using Evengrist.Streams;

namespace Evengrist.Web.Sights.Streams;

/// <summary>A flour of a survey: the streams that go to it.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Streams">Its streams, from the least ash on.</param>
/// <param name="Sum">What they come to.</param>
public sealed record SurveyFlour(string Name, IReadOnlyList<MillStream> Streams, StreamSum Sum)
{
    /// <summary>The flours in the order of their first stream, and last what goes to none of them; empty where no stream was given one.</summary>
    public static IReadOnlyList<SurveyFlour> Of(AshCurve curve, IReadOnlyDictionary<string, string> goesTo)
    {
        ArgumentNullException.ThrowIfNull(curve);
        ArgumentNullException.ThrowIfNull(goesTo);
        return goesTo.Count == 0 ? [] : [.. curve.Points.Select(p => p.Stream).GroupBy(s => goesTo.GetValueOrDefault(s.Code, "")).OrderBy(f => f.Key.Length == 0)
            .Select(f => new SurveyFlour(f.Key.Length > 0 ? f.Key : "not divided", [.. f], StreamSum.Of(f)))];
    }
}
