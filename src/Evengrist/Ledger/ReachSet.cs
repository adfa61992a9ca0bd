using System.Numerics;

namespace Evengrist.Ledger;

/// <summary>A set of small whole numbers that gives them back in order: one bit a number, one bit more per 64 of them.</summary>
/// <remarks>Empties itself as it is read, so a sweep pays for what it reached and not for the size of the graph.</remarks>
internal sealed class ReachSet
{
    private ulong[] words = new ulong[1];
    private ulong[] groups = new ulong[1];

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

    /// <summary>Puts a number in the set; while it is read upwards only numbers above the last read, downwards only below.</summary>
    public void Add(int number)
    {
        ref var word = ref words[number >> 6];
        if (word == 0)
        {
            groups[number >> 12] |= 1UL << (number >> 6);
        }

        word |= 1UL << number;
    }

    /// <summary>Puts numbers in the set, as <see cref="Add"/> does; the array is looked up once for all of them.</summary>
    public void AddAll(ReadOnlySpan<int> numbers)
    {
        var all = words.AsSpan();
        foreach (var number in numbers)
        {
            ref var word = ref all[number >> 6];
            if (word == 0)
            {
                groups[number >> 12] |= 1UL << (number >> 6);
            }

            word |= 1UL << number;
        }
    }

    /// <summary>The lowest number; −1 when the set is empty. Read on with <see cref="Above"/> to the end.</summary>
    public int Lowest() => LowestFrom(0);

    /// <summary>The highest number; −1 when the set is empty. Read on with <see cref="Below"/> to the end.</summary>
    public int Highest() => HighestFrom(groups.Length - 1);

    /// <summary>The next number above the last one read; −1 when there is none, and then the set is empty.</summary>
    public int Above(int number)
    {
        var word = number >> 6;
        var rest = words[word] & (ulong.MaxValue << number << 1);
        if (rest != 0)
        {
            return (word << 6) + BitOperations.TrailingZeroCount(rest);
        }

        Clear(word);
        return LowestFrom(word >> 6);
    }

    /// <summary>The next number below the last one read; −1 when there is none, and then the set is empty.</summary>
    public int Below(int number)
    {
        var word = number >> 6;
        var rest = words[word] & ~(ulong.MaxValue << number);
        if (rest != 0)
        {
            return (word << 6) + 63 - BitOperations.LeadingZeroCount(rest);
        }

        Clear(word);
        return HighestFrom(word >> 6);
    }

    private int LowestFrom(int group)
    {
        while (groups[group] == 0)
        {
            if (++group == groups.Length)
            {
                return -1;
            }
        }

        var word = (group << 6) + BitOperations.TrailingZeroCount(groups[group]);
        return (word << 6) + BitOperations.TrailingZeroCount(words[word]);
    }

    private int HighestFrom(int group)
    {
        while (groups[group] == 0)
        {
            if (--group < 0)
            {
                return -1;
            }
        }

        var word = (group << 6) + 63 - BitOperations.LeadingZeroCount(groups[group]);
        return (word << 6) + 63 - BitOperations.LeadingZeroCount(words[word]);
    }

    // A word is emptied when it has been read to its end: emptying it bit by bit would make each read wait for a write.
    private void Clear(int word)
    {
        words[word] = 0;
        groups[word >> 6] &= ~(1UL << word);
    }
}
