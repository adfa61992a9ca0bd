using System.Globalization;
using Evengrist.Quantities;

namespace Evengrist.Streams;

/// <summary>All flour streams of a mill at one time: every ash and protein on one moisture basis, every yield of one wheat.</summary>
/// <param name="Streams">The streams, in any order.</param>
/// <param name="Basis">Moisture basis of ash and protein.</param>
public sealed record StreamTable(IReadOnlyList<MillStream> Streams, Basis Basis)
{
    /// <summary>Most streams of one table [design].</summary>
    public const int Most = 200;

    /// <summary>How unsure each reading is.</summary>
    public StreamMethods Methods { get; init; } = new();

    /// <summary>Whether a number can be the ash of a stream, per cent. Ash of whole bran is about 7 % [memory]; a stream beyond 10 % is no flour but a slip of the pen.</summary>
    public static bool CanBeAsh(double percent) => percent is > 0 and <= 10;

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        if (Streams.Count is 0 or > Most)
        {
            return [$"There are {Streams.Count} streams: give 1 to {Most}."];
        }

        var together = Streams.Sum(s => s.Yield);
        return
        [
            .. Basis.IsStated ? Array.Empty<string>() : ["Ash and protein of the streams need one moisture basis: dry, 14mb or another."],
            .. Streams.Where(s => string.IsNullOrWhiteSpace(s.Code)).Select(_ => "A stream has no name: give it the mill's own."),
            .. Streams.GroupBy(s => s.Code, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => $"{g.Key} stands there {g.Count()} times: give each stream once."),
            .. Streams.SelectMany(OfStream),
            .. Methods.Faults(),
            .. together > 100 ? [string.Create(CultureInfo.InvariantCulture, $"The streams add up to {together:0.##} % of the wheat: more flour than wheat. Look for a weight taken twice or over another time.")] : Array.Empty<string>(),
        ];
    }

    private static IEnumerable<string> OfStream(MillStream stream)
    {
        if (!(stream.Yield > 0 && double.IsFinite(stream.Yield)))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{stream.Code}: a yield above 0 is needed; got {stream.Yield} %.");
        }

        if (!CanBeAsh(stream.AshPercent))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{stream.Code}: ash lies above 0 and at most at 10 %; got {stream.AshPercent} %.");
        }

        if (stream.ProteinPercent is { } protein && !(protein is > 0 and <= 40))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{stream.Code}: protein lies above 0 and at most at 40 %; got {protein} %.");
        }

        if (stream.FallingNumberSeconds is { } seconds && !(seconds is >= 60 and <= 1000))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{stream.Code}: a falling number lies from 60 to 1000 s; got {seconds} s.");
        }

        if (stream.StarchDamagePercent is { } damage && !(damage is >= 0 and <= 100))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{stream.Code}: starch damage lies from 0 to 100 %; got {damage} %.");
        }
    }
}
