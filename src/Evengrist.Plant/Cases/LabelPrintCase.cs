using Evengrist.Packing.Codes;
using Evengrist.Plant.Prints.Labels;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Plant.Cases;

/// <summary>A label to be printed: of a bag, or of a pallet where a pallet's number is given.</summary>
public sealed class LabelPrintCase
{
    private readonly LabelCase label;
    private readonly Sscc? unit;
    private readonly int bags;
    private readonly string? serial;
    private readonly LabelSize size;

    private LabelPrintCase(LabelCase label, Sscc? unit, int bags, string? serial, LabelSize size) => (this.label, this.unit, this.bags, this.serial, this.size) = (label, unit, bags, serial, size);

    /// <summary>What the case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
          "mill", "flour": as people read them, 1 to 80 characters each
          "item":          number of the bag as a trade item (GTIN), with its check digit
          "netKilograms":  net weight of one bag, kg as it lies, below 1000, at most three decimals
          "lot":           its lot, at most 20 characters that a symbol can hold
          "bestBefore":    a date such as "2026-10-07"; may be left out where the next two are given
          "made":          the milling day; then a bag's label says it and its number in the year. May be left out
          "keepsMonths":   how long the flour keeps, 1 to 60
          "contains":      allergens besides wheat, which always stands there; may be left out
          "serial":        the bag's own number; may be left out. Only of a bag
          "pallet":        number of the pallet (SSCC), with its check digit; makes it the label of a pallet
          "bags":          how many bags are on the pallet
          "size":          "a6" (when left out) or "4x6"
        """,
        """
        { "mill": "Sennorby Mill (an invented mill)", "flour": "White bread flour", "item": "09521234002017", "netKilograms": 25, "lot": "WB-251007-3", "bestBefore": "2026-10-07", "serial": "1001" }
        """);

    /// <summary>The case, or every fault with its JSON path.</summary>
    public static Parsed<LabelPrintCase> Read(Stream stream) => JsonCase.Read(stream, (root, _) => Of(root));

    /// <summary>The label, or every reason why there is none.</summary>
    /// <param name="year">This year, for the century of dates.</param>
    public Parsed<Label> Draw(int year) => unit is null ? BagLabel.Draw(label, serial, size, year) : PalletLabel.Draw(label, unit, bags, size, year);

    private static LabelPrintCase? Of(JsonNode root)
    {
        if (!root.IsObject("mill", "flour", "item", "netKilograms", "lot", "bestBefore", "made", "keepsMonths", "contains", "serial", "pallet", "bags", "size"))
        {
            return null;
        }

        var (mill, flour) = (root.Text("mill"), root.Text("flour"));
        var item = Key<Gtin>(root, "item", text => Gtin.TryParse(text, out var key, out var refusal) ? (key, null) : (null, refusal));
        var lot = Key<LotCode>(root, "lot", text => LotCode.TryParse(text, out var key, out var refusal) ? (key, null) : (null, refusal));
        var kilograms = root.Member("netKilograms")?.Number(0.001m, 999.999m);
        var made = Date(root, "made", required: false);
        var months = root.Member("keepsMonths", required: false)?.Whole(1, PackDates.MostMonths);
        var bestBefore = Date(root, "bestBefore", required: made is null || months is null) ?? (made is { } day && months is { } keeps ? PackDates.BestBefore(day, keeps) : null);
        var contains = root.Member("contains", required: false)?.Items(12).Select(i => i.Text()).ToArray() ?? [];
        var isPallet = root.Has("pallet");
        var unit = isPallet ? Key<Sscc>(root, "pallet", text => Sscc.TryParse(text, out var key, out var refusal) ? (key, null) : (null, refusal)) : null;
        var bags = isPallet ? root.Member("bags")?.Whole(1, 99_999_999) : 0;
        var serial = root.Has("serial") ? root.Text("serial") : null;
        if (root.Member(isPallet ? "serial" : "bags", required: false) is { } misplaced)
        {
            misplaced.Fault(isPallet ? "no serial on the label of a pallet: its number is the pallet's own" : "no count of bags on the label of a bag; \"pallet\" makes it the label of a pallet");
        }

        var size = LabelSize.Find(root.Text("size", ""));
        if (size is null)
        {
            root.Member("size")!.Fault("a6 or 4x6");
        }

        return item is null || lot is null || kilograms is null || bestBefore is null || bags is null || size is null || (isPallet && unit is null)
            ? null : new LabelPrintCase(new LabelCase(mill, flour, item, kilograms.Value, lot, bestBefore.Value, contains) { Made = made }, unit, bags.Value, serial, size);
    }

    private static T? Key<T>(JsonNode root, string name, Func<string, (T?, string?)> read)
        where T : class
    {
        if (root.Member(name) is not { } member || member.Text() is not { Length: > 0 } text)
        {
            return null;
        }

        var (key, refusal) = read(text);
        if (refusal is not null)
        {
            member.Fault(refusal);
        }

        return key;
    }

    private static LocalDate? Date(JsonNode root, string name, bool required)
    {
        if (root.Member(name, required) is not { } member)
        {
            return null;
        }

        var parsed = LocalDatePattern.Iso.Parse(member.Text());
        if (!parsed.Success)
        {
            member.Fault("a date such as \"2026-10-07\"");
        }

        return parsed.Success ? parsed.Value : null;
    }
}
