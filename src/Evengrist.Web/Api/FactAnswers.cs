using Evengrist.Records.Browsing;
using Evengrist.Web.Sights;

namespace Evengrist.Web.Api;

/// <summary>A fact with who recorded it and what became of it.</summary>
public sealed record FactAnswer(
    long Number, string Sort, DateTimeOffset Happened, DateTimeOffset Recorded, string By, string Source, string SourceKey,
    IReadOnlyList<string> Places, string Says, long? Corrects, string? Note, long? CorrectedBy)
{
    internal static FactAnswer Of(FactSight fact)
    {
        var who = fact.Line.Fact.Attribution;
        return new FactAnswer(
            fact.Id.Value, FactWords.Sort(fact.Line.Fact), fact.When.ToDateTimeOffset(), who.Recorded.ToDateTimeOffset(), who.By, who.Source, who.SourceKey,
            [.. fact.Places.Select(p => p.Code)], fact.Says, who.Corrects?.Value, who.Note, fact.Line.CorrectedBy?.Value);
    }
}

/// <summary>A page of facts, newest first.</summary>
/// <param name="Facts">The facts.</param>
/// <param name="Next">What to ask for as <c>before</c> to get the page after; null on the last.</param>
public sealed record FactsAnswer(IReadOnlyList<FactAnswer> Facts, long? Next)
{
    internal static FactsAnswer Of(IReadOnlyList<FactSight> facts, FactPage page) => new([.. facts.Select(FactAnswer.Of)], page.Next?.Value);
}
