using System.Buffers;

namespace Evengrist.Packing.Codes;

/// <summary>The 82 characters that a lot code, a serial or another free text in a GS1 symbol may hold.</summary>
/// <remarks>Digits, letters, and <c>! " % &amp; ' ( ) * + , - . / : ; &lt; = &gt; ? _</c>: the invariant characters of ISO/IEC 646. Source: reference test of GS1's syntax dictionary for this set (Apache-2.0), read for its rule.</remarks>
public static class LabelCharacters
{
    /// <summary>All 82, in the order that gives each its value in the check of alphanumeric keys.</summary>
    public const string All = "!\"%&'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz";

    private static readonly SearchValues<char> Set = SearchValues.Create(All);

    /// <summary>Where the first character stands that is not of the set; −1 where all are.</summary>
    public static int FirstOther(ReadOnlySpan<char> text) => text.IndexOfAnyExcept(Set);
}
