using Evengrist.Streams;
using Evengrist.Streams.Dividing;
using Evengrist.Web.Sights.Season;

namespace Evengrist.Web.Sights.Streams;

/// <summary>A row of the form: a flour that streams may be divided into.</summary>
public static class DivideFlourRow
{
    /// <summary>Rows the form has.</summary>
    public const int Rows = 6;

    /// <summary>The numbers of a row: key, heading, unit; the first is the price.</summary>
    public static IReadOnlyList<(string Key, string Words, string Unit)> Numbers { get; } =
    [
        ("price", "price", "per t"), ("yield-least", "least of it", "% of the wheat"), ("yield-most", "most of it", "% of the wheat"), ("ash-least", "ash, least", "%"), ("ash-most", "ash, most", "%"),
        ("protein-least", "protein, least", "%"), ("protein-most", "protein, most", "%"), ("fn-least", "FN, least", "s"), ("fn-most", "FN, most", "s"), ("damage-least", "damage, least", "%"), ("damage-most", "damage, most", "%"),
    ];

    private static readonly (string Key, StreamProperty What)[] Limited = [("ash", StreamProperty.Ash), ("protein", StreamProperty.Protein), ("fn", StreamProperty.FallingNumber), ("damage", StreamProperty.StarchDamage)];

    /// <summary>The name of a field.</summary>
    public static string Key(int row, string field) => FormattableString.Invariant($"f{row}-{field}");

    /// <summary>Reads a row; null where no flour stands in it.</summary>
    /// <param name="fields">The form.</param>
    /// <param name="row">Which row, from 0.</param>
    /// <param name="otherwise">What stands there where the form was not sent.</param>
    public static FlourWish? Read(TypedFields fields, int row, FlourWish? otherwise)
    {
        ArgumentNullException.ThrowIfNull(fields);
        var code = fields.Text(Key(row, "code"), otherwise?.Code ?? "");
        var name = code.Length > 0 ? code : $"Flour {row + 1}";
        var numbers = Numbers.ToDictionary(n => n.Key, n => fields.Number(Key(row, n.Key), $"{name}, {n.Words}", Of(otherwise, n.Key)));
        var called = fields.Text(Key(row, "called"), otherwise?.CalledFlour == true ? "yes" : "") == "yes";
        if (code.Length == 0)
        {
            if (numbers.Values.Any(n => n is not null))
            {
                fields.Fault($"Flour {row + 1} has figures and no name: give it one, or clear its row.");
            }

            return null;
        }

        if (numbers["price"] is null && fields[Key(row, "price")].Length == 0)
        {
            fields.Fault($"{code}: what a tonne brings is missing; give a price.");
        }

        return new FlourWish(code, Money(numbers["price"]))
        {
            LeastYield = numbers["yield-least"], MostYield = numbers["yield-most"], CalledFlour = called,
            Limits = [.. Limited.Select(l => new FlourLimit(l.What) { Least = numbers[$"{l.Key}-least"], Most = numbers[$"{l.Key}-most"] }).Where(l => l.Least is not null || l.Most is not null)],
        };
    }

    /// <summary>A typed amount as money; what no price can be is far outside and refused later.</summary>
    public static decimal Money(double? typed) => (decimal)Math.Clamp(typed ?? 0, -1e9, 1e9);

    private static double? Of(FlourWish? flour, string key) => flour is null ? null : key switch
    {
        "price" => (double)flour.PricePerTonne,
        "yield-least" => flour.LeastYield,
        "yield-most" => flour.MostYield,
        _ => Limited.First(l => key.StartsWith(l.Key, StringComparison.Ordinal)) is var (_, what) && flour.Limits.FirstOrDefault(l => l.What == what) is { } limit ? key.EndsWith("least", StringComparison.Ordinal) ? limit.Least : limit.Most : null,
    };
}
