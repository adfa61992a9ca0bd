using Evengrist.Laboratory.Methods;
using Evengrist.Records.Browsing;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>Repeatability of a laboratory's methods by its own duplicates: what was recorded together at the bench of one test of one sample.</summary>
public static class OwnDuplicates
{
    /// <summary>How far back is looked, days.</summary>
    public const int Days = 365;

    private const int Size = 1000, MostPages = 20;

    /// <summary>Each method of the table that has duplicates of samples of the last year before a moment; the newest 20 000 readings are looked at.</summary>
    public static IReadOnlyList<(LabMethod Method, OwnRepeatability Own)> Of(Mill mill, LabMethods methods, Instant until)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(methods);
        var rounds = LabRounds.TogetherIn(Lines(mill, until)).Where(r => r.Length > 1).ToLookup(r => methods.Of(r[0].Reading.Method, r[0].Reading.What));
        return [.. from method in methods.Methods
                   let own = OwnRepeatability.Of(rounds[method].Select(r => (IReadOnlyList<decimal>)[.. r.Where(m => m.Reading.Unit == method.Unit).Select(m => method.Basis.IsStated ? m.Reading.Basis.Restated(m.Reading.Value, method.Basis) : m.Reading.Value)]))
                   where own is not null
                   select (method, own)];
    }

    private static IEnumerable<FactLine> Lines(Mill mill, Instant until)
    {
        var filter = new FactFilter { Source = TakeLabSample.Source, Sort = FactSort.Reading, From = until - Duration.FromDays(Days), Until = until, Size = Size };
        for (var page = 0; page < MostPages; page++)
        {
            var found = mill.Facts(filter);
            foreach (var line in found.Lines)
            {
                yield return line;
            }

            if (found.Next is null)
            {
                break;
            }

            filter = filter with { Before = found.Next };
        }
    }
}
