using System.Globalization;
using System.Runtime.CompilerServices;

namespace Evengrist.Ledger;

/// <summary>What to say where a rule does not hold. Put into words only then: a batch asks thousands of times and hardly ever needs the answer.</summary>
[InterpolatedStringHandler]
internal ref struct Otherwise
{
    private readonly string? words;
    private DefaultInterpolatedStringHandler handler;

    /// <summary>Called by the compiler before anything is put into words; <paramref name="needed"/> false keeps it from doing so.</summary>
    public Otherwise(int literalLength, int formattedCount, bool holds, out bool needed)
    {
        needed = !holds;
        handler = needed ? new DefaultInterpolatedStringHandler(literalLength, formattedCount, CultureInfo.InvariantCulture) : default;
    }

    private Otherwise(string words) => this.words = words;

    /// <summary>Words that need no putting together.</summary>
    public static implicit operator Otherwise(string words) => new(words);

    /// <summary>Called by the compiler.</summary>
    public void AppendLiteral(string value) => handler.AppendLiteral(value);

    /// <summary>Called by the compiler.</summary>
    public void AppendFormatted<T>(T value) => handler.AppendFormatted(value);

    /// <summary>The words.</summary>
    public override string ToString() => words ?? handler.ToStringAndClear();
}
