using System.Numerics;

namespace Evengrist.Tracing;

/// <summary>A set of small whole numbers that gives them back in order: one bit a number, one bit more per 64 of them.</summary>
/// <remarks>Empties itself as it is read, so a sweep pays for what it reached and not for the size of the graph.</remarks>
internal sealed class ReachSet
{
    private ulong[] words = [];
    private ulong[] groups = [];

    /// <summary>Memory held, in bytes.</summary>
    public long Bytes => sizeof(ulong) * ((long)words.Length + groups.Length);

    /// <summary>Makes room for the numbers below <paramref name="count"/>; those in the set stay.</summary>
    public void Grow(int count)
    {
        if (words.Length * 64L < count)
        {
            Array.Resize(ref words, count / 64 + count / 512 + 1);
            Array.Resize(ref groups, words.Length / 64 + 1);
        }
    }

    /// <summary>Puts a number in the set.</summary>
    public void Add(int number)
    {
        var word = number >> 6;
        words[word] |= 1UL << number;
        groups[word >> 6] |= 1UL << word;
    }

    /// <summary>Takes the highest number out; −1 when there is none.</summary>
    /// <param name="from">A number not below any in the set; afterwards the number taken.</param>
    public int TakeHighest(ref int from)
    {
        var group = from >> 12;
        while (groups[group] == 0)
        {
            if (--group < 0)
            {
                return -1;
            }
        }

        var word = (group << 6) + 63 - BitOperations.LeadingZeroCount(groups[group]);
        return from = Take(word, 63 - BitOperations.LeadingZeroCount(words[word]));
    }

    /// <summary>Takes the lowest number out; −1 when there is none.</summary>
    /// <param name="from">A number not above any in the set; afterwards the number taken.</param>
    public int TakeLowest(ref int from)
    {
        var group = from >> 12;
        while (groups[group] == 0)
        {
            if (++group == groups.Length)
            {
                return -1;
            }
        }

        var word = (group << 6) + BitOperations.TrailingZeroCount(groups[group]);
        return from = Take(word, BitOperations.TrailingZeroCount(words[word]));
    }

    private int Take(int word, int bit)
    {
        words[word] &= ~(1UL << bit);
        if (words[word] == 0)
        {
            groups[word >> 6] &= ~(1UL << word);
        }

        return (word << 6) + bit;
    }
}
