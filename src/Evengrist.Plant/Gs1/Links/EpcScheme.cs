using System.Globalization;
using Evengrist.Packing.Codes;

namespace Evengrist.Plant.Gs1.Links;

/// <summary>One kind of EPC URI: how it begins, how many digits it has, and which elements say the same.</summary>
/// <param name="Start">What it begins with.</param>
/// <param name="Digits">Digits of prefix and reference together, without the check digit; 0 where the reference is no number.</param>
/// <param name="PartCount">How many parts stand between the points.</param>
/// <param name="Elements">The elements of its parts.</param>
/// <param name="Parts">The parts of elements under a prefix of a length; null where the elements are no such thing.</param>
/// <param name="Ends">What the last part has to be; null where it is free.</param>
internal sealed record EpcScheme(
    string Start, int Digits, int PartCount, Func<string[], (string, string)[]> Elements, Func<ElementString, int, string[]?> Parts, string? Ends = null)
{
    /// <summary>All kinds, the finer ones of a key before the coarser.</summary>
    public static IReadOnlyList<EpcScheme> All { get; } =
    [
        new("urn:epc:id:sscc:", 17, 2, p => [("00", CheckDigit.Complete(p[1][..1] + p[0] + p[1][1..]))], (e, n) => e["00"] is { } v ? [v[1..(n + 1)], v[0] + v[(n + 1)..17]] : null),
        new("urn:epc:id:sgtin:", 13, 3, p => [("01", Gtin(p)), ("21", p[2])], (e, n) => Item(e, n, e["21"])),
        new("urn:epc:class:lgtin:", 13, 3, p => [("01", Gtin(p)), ("10", p[2])], (e, n) => Item(e, n, e["10"])),
        new("urn:epc:idpat:sgtin:", 13, 3, p => [("01", Gtin(p))], (e, n) => Item(e, n, "*"), "*"),
        new("urn:epc:id:sgln:", 12, 3, p => p[2] == "0" ? [("414", Thirteen(p))] : [("414", Thirteen(p)), ("254", p[2])], (e, n) => Thirteen(e["414"], n, e["254"] ?? "0")),
        new("urn:epc:id:pgln:", 12, 2, p => [("417", Thirteen(p))], (e, n) => Thirteen(e["417"], n)),
        new("urn:epc:id:gdti:", 12, 3, p => [("253", Thirteen(p) + p[2])], (e, n) => e["253"] is { Length: > 13 } v ? Thirteen(v, n, v[13..]) : null),
        new("urn:epc:id:grai:", 12, 3, p => [("8003", "0" + Thirteen(p) + p[2])], (e, n) => e["8003"] is { Length: > 14 } v ? Thirteen(v[1..], n, v[14..]) : null),
        new("urn:epc:id:giai:", 0, 2, p => [("8004", p[0] + p[1])], (e, n) => e["8004"] is { } v && v.Length > n && v[..n].All(char.IsAsciiDigit) ? [v[..n], v[n..]] : null),
    ];

    /// <summary>What the part behind the start has to look like.</summary>
    public string Layout => string.Create(CultureInfo.InvariantCulture, $"{PartCount} parts with points between: a company prefix of 6 to 12 digits, {(Digits > 0 ? $"then digits until there are {Digits} with it" : "then the asset")}{(PartCount == 3 ? ", then the serial or lot" : "")}");

    /// <summary>The URI of elements; null where they are no such thing.</summary>
    public string? Written(ElementString elements, int prefixLength) => Parts(elements, prefixLength) is { } parts ? Start + string.Join('.', parts.Select(PercentText.WriteInUrn)) : null;

    private static string Gtin(string[] parts) => CheckDigit.Complete(parts[1][..1] + parts[0] + parts[1][1..]);

    private static string[]? Item(ElementString elements, int prefix, string? last) => elements["01"] is { } v && last is not null ? [v[1..(prefix + 1)], v[0] + v[(prefix + 1)..13], last] : null;

    private static string Thirteen(string[] parts) => CheckDigit.Complete(parts[0] + parts[1]);

    private static string[]? Thirteen(string? value, int prefix, params string[] last) => value is null ? null : [value[..prefix], value[prefix..12], .. last];
}
