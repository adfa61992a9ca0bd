using System.Globalization;

namespace Evengrist.Plant.Gs1.Table;

/// <summary>What partners agree on between themselves: 90 to 99.</summary>
internal static class OwnRows
{
    public static IEnumerable<Row> All =>
        Enumerable.Range(90, 10).Select(n => new Row(n.ToString(CultureInfo.InvariantCulture), n == 90 ? "agreed between partners" : "a company's own").Text(n == 90 ? 30 : 90).InLink());
}
