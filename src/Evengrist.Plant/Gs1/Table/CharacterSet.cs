using System.Buffers;
using Evengrist.Packing.Codes;

namespace Evengrist.Plant.Gs1.Table;

/// <summary>Which characters a part of a value may hold.</summary>
public enum CharacterSet
{
    /// <summary>0 to 9; N in GS1's notation.</summary>
    Digits,

    /// <summary>The 82 of <see cref="LabelCharacters"/>; X.</summary>
    Text,

    /// <summary>Digits, capitals, <c># - /</c>; Y.</summary>
    Component,

    /// <summary>Base64 as it may stand in a file name or link, with its padding; Z.</summary>
    Base64,
}

/// <summary>What belongs to each set.</summary>
internal static class CharacterSets
{
    private static readonly SearchValues<char> Digit = SearchValues.Create("0123456789"), ComponentSet = SearchValues.Create("#-/0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"),
        Base64Set = SearchValues.Create("-0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz");

    /// <summary>Where the first character stands that is not of the set; −1 where all are.</summary>
    public static int FirstOther(CharacterSet set, ReadOnlySpan<char> text) => set switch
    {
        CharacterSet.Digits => text.IndexOfAnyExcept(Digit),
        CharacterSet.Component => text.IndexOfAnyExcept(ComponentSet),
        CharacterSet.Base64 => OutsideBase64(text),
        _ => LabelCharacters.FirstOther(text),
    };

    public static string Words(CharacterSet set) => set switch
    {
        CharacterSet.Digits => "digits",
        CharacterSet.Component => "capitals, digits, # - /",
        CharacterSet.Base64 => "base64 with - and _, padded with = to a multiple of three or not at all",
        _ => "letters without accents, digits and ! \" % & ' ( ) * + , - . / : ; < = > ? _",
    };

    // Padding may be left out; where it stands, the whole is a multiple of three characters (GS1's reference test asks for three, RFC 4648 for four).
    private static int OutsideBase64(ReadOnlySpan<char> text)
    {
        var body = text.TrimEnd('=');
        var pads = text.Length - body.Length;
        var other = body.IndexOfAnyExcept(Base64Set);
        return other >= 0 ? other : pads > 2 || (pads > 0 && text.Length % 3 != 0) ? body.Length : -1;
    }
}
