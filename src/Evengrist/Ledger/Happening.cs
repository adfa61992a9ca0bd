using NodaTime;

namespace Evengrist.Ledger;

/// <summary>A fact: something happened to a place without grain being moved: proven empty, held, released, a state, a note.</summary>
/// <param name="Id">The number of the fact.</param>
/// <param name="On">The place.</param>
/// <param name="At">When.</param>
/// <param name="Kind">What happened.</param>
/// <param name="Text">Words for people on the first line; after it, where the kind has them, particulars as JSON. Empty only for proven empty.</param>
public sealed record Happening(FactId Id, PlaceId On, Instant At, HappeningKind Kind, string Text = "")
{
    /// <summary>The reason or the state in words.</summary>
    public string Words => Text.IndexOf('\n', StringComparison.Ordinal) is >= 0 and var end ? Text[..end] : Text;

    /// <summary>What a program reads of it, as JSON; empty where there is none.</summary>
    public string Particulars => Text.IndexOf('\n', StringComparison.Ordinal) is >= 0 and var end ? Text[(end + 1)..] : "";

    /// <summary>The text of a happening with particulars.</summary>
    /// <param name="words">For people; becomes one line.</param>
    /// <param name="particulars">JSON.</param>
    public static string TextOf(string words, string particulars)
    {
        ArgumentNullException.ThrowIfNull(words);
        return words.ReplaceLineEndings(" ") + "\n" + particulars;
    }
}
