namespace Evengrist.Plant.Gs1.Table;

/// <summary>Measures of trade items and of logistic units, six digits, the last digit of the identifier says how many of them are decimals: 3100 to 3695.</summary>
internal static class MeasureRows
{
    private static readonly (string Stem, string Words)[] OfItems =
    [
        ("310", "net weight, kg"), ("311", "length, m"), ("312", "width, m"), ("313", "height, m"), ("314", "area, m²"), ("315", "net volume, l"), ("316", "net volume, m³"),
        ("320", "net weight, lb"), ("321", "length, in"), ("322", "length, ft"), ("323", "length, yd"), ("324", "width, in"), ("325", "width, ft"), ("326", "width, yd"),
        ("327", "height, in"), ("328", "height, ft"), ("329", "height, yd"),
        ("350", "area, in²"), ("351", "area, ft²"), ("352", "area, yd²"), ("356", "net weight, troy oz"), ("357", "net volume, oz"),
        ("360", "net volume, US quarts"), ("361", "net volume, US gallons"), ("364", "net volume, in³"), ("365", "net volume, ft³"), ("366", "net volume, yd³"),
    ];

    private static readonly (string Stem, string Words)[] OfUnits =
    [
        ("330", "gross weight, kg"), ("331", "length of the unit, m"), ("332", "width of the unit, m"), ("333", "height of the unit, m"), ("334", "area of the unit, m²"),
        ("335", "volume of the unit, l"), ("336", "volume of the unit, m³"),
        ("340", "gross weight, lb"), ("341", "length of the unit, in"), ("342", "length of the unit, ft"), ("343", "length of the unit, yd"), ("344", "width of the unit, in"),
        ("345", "width of the unit, ft"), ("346", "width of the unit, yd"), ("347", "height of the unit, in"), ("348", "height of the unit, ft"), ("349", "height of the unit, yd"),
        ("353", "area of the unit, in²"), ("354", "area of the unit, ft²"), ("355", "area of the unit, yd²"), ("362", "volume of the unit, US quarts"), ("363", "volume of the unit, US gallons"),
        ("367", "volume of the unit, in³"), ("368", "volume of the unit, ft³"), ("369", "volume of the unit, yd³"),
    ];

    public static IEnumerable<Row> All => OfItems.SelectMany(m => Measure(m.Stem, m.Words, "01", "02")).Concat(OfUnits.SelectMany(m => Measure(m.Stem, m.Words, "00", "01"))).Concat(Measure("337", "kg per m²", "01"));

    private static IEnumerable<Row> Measure(string stem, string words, params string[] with) =>
        Row.Family(stem, 0, 5, words, r => r.Digits(6).Predefined().InLink().With(with).Without(stem + "n"));
}
