using System.Globalization;
using Evengrist.Packing.NetContent;
using Evengrist.Packing.Products;
using Evengrist.Plant.Imports;
using Evengrist.Plant.Tables;
using NodaTime;

namespace Evengrist.Plant.Cases;

/// <summary>Takes a checkweigher's rows one by one.</summary>
internal sealed class WeighingRows(WeighingSpec spec, List<Fault> faults)
{
    private const decimal Lightest = 0.5m, Heaviest = 1.5m, MostTenths = 30_000_000;

    private readonly Dictionary<(string Line, string Product, Instant Hour), List<WeighedPackage>> hours = [];
    private readonly Dictionary<string, (int Line, int Count, decimal Net)> odd = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Product> products = spec.Products.ToDictionary(p => p.Code, StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, string> lines = spec.Lines.ToDictionary(l => l, StringComparer.OrdinalIgnoreCase);
    private WeighingHead head = null!;
    private DecimalMark mark;

    public int Count { get; private set; }

    public Action<Row> Begin(Row heading, IReadOnlyDictionary<string, (int Line, string Value)> declared)
    {
        head = WeighingHead.Of(heading, spec.Called, faults);
        mark = declared.TryGetValue("decimal", out var said) && said.Value.Equals("comma", StringComparison.OrdinalIgnoreCase) ? DecimalMark.Comma : DecimalMark.Point;
        return faults.Count > 0 ? _ => { } : Take;
    }

    public WeighingFile Close() => new(
        [.. hours.OrderBy(h => h.Key.Hour).ThenBy(h => h.Key.Line, StringComparer.Ordinal).ThenBy(h => h.Key.Product, StringComparer.Ordinal).Select(h => new WeighedHour(h.Key.Line, h.Key.Product, h.Key.Hour, [.. h.Value.Order()]))],
        Count, [.. odd.OrderBy(o => o.Value.Line).Select(o => (o.Value.Line, Question(o.Key, o.Value.Count, o.Value.Net)))]);

    private void Take(Row row)
    {
        var before = faults.Count;
        var (at, expected) = Moments.Of(Cell(row, "moment").Text, spec.Zone);
        if (at is null || at > spec.Now)
        {
            Bad(row, "moment", at is null ? expected : "a moment that has been: this one lies in the future");
        }

        if (!lines.TryGetValue(Cell(row, "line").Text, out var line))
        {
            Bad(row, "line", $"a packing line of the ledger: {string.Join(", ", spec.Lines.Take(12))}");
        }

        if (!products.TryGetValue(Cell(row, "product").Text, out var product) || product.PackGrams == 0)
        {
            var near = Nearest.To(Cell(row, "product").Text, products.Keys);
            Bad(row, "product", product is not null ? $"a product in packs; {product.Code} is loose" : $"a product that is kept{(near is null ? "" : $", such as {near}")}");
        }

        var isGross = head.At.ContainsKey("gross");
        var weight = Weight(row, isGross ? "gross" : "net", needed: true);
        var tare = Weight(row, "tare", needed: false) ?? product?.TareGrams * 10;
        if (tare == 0 && isGross && faults.Count == before)
        {
            Bad(row, head.At.ContainsKey("tare") ? "tare" : "gross", "a tare: the empty pack of this product was not weighed, so give a column tare [g]");
        }

        if (weight is { } w && tare is { } t && isGross && t >= w)
        {
            Bad(row, "gross", FormattableString.Invariant($"a gross weight above that of the empty package, {t / 10:0.#} g"));
        }

        var rejected = Rejected(row);
        if (faults.Count > before)
        {
            return;
        }

        var package = new WeighedPackage(Instant.FromUnixTimeMilliseconds(at!.Value.ToUnixTimeMilliseconds()), (int)(isGross ? weight!.Value : weight!.Value + tare!.Value), (int)tare!.Value, rejected);
        var key = (line!, product!.Code, WeighedHour.HourOf(package.At));
        (hours.TryGetValue(key, out var hour) ? hour : hours[key] = []).Add(package);
        Count++;
        var net = (weight.Value - (isGross ? tare.Value : 0)) / 10;
        if (!rejected && (net < Lightest * product.PackGrams || net > Heaviest * product.PackGrams))
        {
            odd[product.Code] = odd.TryGetValue(product.Code, out var first) ? first with { Count = first.Count + 1 } : (row.Line, 1, net);
        }
    }

    private string Question(string product, int count, decimal net)
    {
        decimal label = products[product].PackGrams;
        var words = string.Create(CultureInfo.InvariantCulture, $"{count} net weight{(count == 1 ? "" : "s")} of {product} below half or above one and a half times the label of {label:#,0} g; the first is {net:#,0.#} g.");
        return words + (net / label is > 500 and < 1500 ? " The weights look like grams under a heading that says kilograms." : label / net is > 500 and < 1500 ? " The weights look like kilograms under a heading that says grams." : " Is the product right, and the unit?");
    }

    // Tenths of a gram, rounded half up.
    private decimal? Weight(Row row, string name, bool needed)
    {
        if (!head.At.ContainsKey(name) || Cell(row, name).Text.Length == 0)
        {
            if (needed)
            {
                Bad(row, name, "a weight such as 25180.5; the cell is empty");
            }

            return null;
        }

        if (Numbers.Of(Cell(row, name), mark) is not { } number || number < 0 || number > MostTenths || Math.Round(number * head.GramsEach[name] * 10, MidpointRounding.AwayFromZero) is var tenths && tenths > MostTenths)
        {
            Bad(row, name, $"a weight of 0 to 3 t, such as 25180.5 under {name} [g]{(head.GramsEach[name] > 1 ? "; are these grams under a heading that says otherwise?" : "")}");
            return null;
        }

        return Math.Round(number * head.GramsEach[name] * 10, MidpointRounding.AwayFromZero);
    }

    private bool Rejected(Row row)
    {
        switch (head.At.ContainsKey("rejected") ? Cell(row, "rejected").Text.ToLowerInvariant() : "")
        {
            case "" or "0" or "no" or "false":
                return false;
            case "1" or "yes" or "true":
                return true;
            default:
                Bad(row, "rejected", "yes or 1 where it was thrown out; no, 0 or nothing else");
                return false;
        }
    }

    private Cell Cell(Row row, string name) => row[head.At[name]];

    private void Bad(Row row, string name, string expected) => faults.Add(new Fault(row.Line, head.At[name] + 1, name, Fault.Show(Cell(row, name).Text), expected));
}
