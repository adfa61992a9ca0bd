using System.Globalization;

namespace Evengrist.Cli.Said;

/// <summary>Tells a person how many of something are done, ten times in all.</summary>
/// <param name="voice">Where it is said.</param>
/// <param name="all">How many there are.</param>
/// <param name="things">What they are, in the plural.</param>
internal sealed class Counting(Voice voice, int all, string things) : IProgress<int>
{
    private readonly Lock gate = new(); // they are done on several cores at once: one line at a time
    private int last;

    public void Report(int value)
    {
        lock (gate)
        {
            if (10L * value / all > last)
            {
                last = (int)(10L * value / all);
                voice.Tell(string.Create(CultureInfo.InvariantCulture, $"{value} of {all} {things}"));
            }
        }
    }
}
