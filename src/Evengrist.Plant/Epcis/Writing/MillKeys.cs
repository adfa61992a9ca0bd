using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Evengrist.Packing.Codes;
using Evengrist.Quantities;

namespace Evengrist.Plant.Epcis.Writing;

/// <summary>By which names of GS1 the mill's places, products, customers and units go in documents. What is not named here goes by the mill's own URI: no key is invented.</summary>
public sealed record MillKeys
{
    /// <summary>Kind and code of the paper that keeps them, by version.</summary>
    public const string Kind = "gs1-keys", Code = "mill";

    private static readonly JsonSerializerOptions Options = StrictJson.Options();

    /// <summary>None: everything goes by the mill's own URIs.</summary>
    public static MillKeys None { get; } = new();

    /// <summary>The mill's web address, under which its own URIs stand; without it they begin with <c>urn:x-mill:</c> and the mill's name.</summary>
    public string? Address { get; init; }

    /// <summary>GLN of the site; its bins, pits and lines are named by it and their code.</summary>
    public string? Site { get; init; }

    /// <summary>GLN of the mill as a party.</summary>
    public string? Party { get; init; }

    /// <summary>GTIN by wheat class or flour.</summary>
    public IReadOnlyDictionary<string, string> Products { get; init; } = new Dictionary<string, string>();

    /// <summary>GLN by code of a customer, field or elevator.</summary>
    public IReadOnlyDictionary<string, string> Parties { get; init; } = new Dictionary<string, string>();

    /// <summary>SSCC by code of a pallet or load.</summary>
    public IReadOnlyDictionary<string, string> Units { get; init; } = new Dictionary<string, string>();

    /// <summary>What a file of them looks like.</summary>
    public static string Example => """{"address":"https://mill.example","site":"9521234000013","party":"9521234000013","products":{"WB":"09521234001010"},"parties":{"C5":"9521777000020"},"units":{"WB-250918-7":"095212340000000426"}}""";

    /// <summary>Reads and checks them.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out MillKeys? keys, out IReadOnlyList<string> faults) => StrictJson.TryRead(json, Options, Check, out keys, out faults);

    /// <summary>As they are kept.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Options);

    private static IReadOnlyList<string> Check(MillKeys? keys)
    {
        if (keys is null)
        {
            return [$"Keys look like {Example}"];
        }

        var all = new[] { ("site", keys.Site, 13), ("party", keys.Party, 13) }
            .Concat(keys.Products.Select(p => ($"products.{p.Key}", (string?)p.Value, 14))).Concat(keys.Parties.Select(p => ($"parties.{p.Key}", (string?)p.Value, 13))).Concat(keys.Units.Select(u => ($"units.{u.Key}", (string?)u.Value, 18)));
        return
        [
            .. all.Where(k => k.Item2 is { } key && !(key.Length == k.Item3 && (k.Item3 switch { 13 => Gln.TryParse(key, out _, out _), 14 => Gtin.TryParse(key, out _, out _), _ => Sscc.TryParse(key, out _, out _) })))
                .Select(k => $"{k.Item1}: \"{Fault.Show(k.Item2!)}\" is no key of {k.Item3} digits with a right check digit."),
            .. keys.Address is { } address && !(Uri.TryCreate(address, UriKind.Absolute, out var uri) && uri.Scheme is "https" or "http" && UriForm.IsUri(address))
                ? new[] { $"address: \"{Fault.Show(address)}\" is no web address such as https://mill.example." } : [],
        ];
    }
}
