using System.Globalization;
using System.Text.RegularExpressions;
using Evengrist.Plant.Tables;

namespace Evengrist.Plant.Imports;

/// <summary>Plain numbers with a decimal mark and, where a person wrote them, thousands grouped by the other mark, a space or an apostrophe.</summary>
internal static partial class Numbers
{
    /// <summary>The number in a cell; null where it is none. No exponent, no more digits than are counted exactly.</summary>
    public static decimal? Of(Cell cell, DecimalMark mark)
    {
        if (cell.IsNumber)
        {
            return decimal.Parse(cell.Text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        }

        var text = cell.Text.Replace('−', '-').Replace('\u00A0', ' ').Replace('\u202F', ' ').Replace('\u2009', ' ').Replace('’', '\'');
        if (mark == DecimalMark.Comma)
        {
            text = text.Replace('.', '\u0001').Replace(',', '.').Replace('\u0001', ',');
        }

        return Shape().IsMatch(text)
            && decimal.TryParse(Grouping().Replace(text, ""), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)
            ? value : null;
    }

    /// <summary>What the way a number is written tells about the decimal mark; null for nothing, and whether it could be read both ways.</summary>
    public static (DecimalMark? Shows, bool Doubtful) MarkOf(string text)
    {
        var (comma, point) = (text.LastIndexOf(','), text.LastIndexOf('.'));
        if (comma < 0 && point < 0)
        {
            return (null, false);
        }

        if (comma >= 0 && point >= 0)
        {
            return (comma > point ? DecimalMark.Comma : DecimalMark.Point, false);
        }

        var (at, here, other) = comma >= 0 ? (comma, DecimalMark.Comma, DecimalMark.Point) : (point, DecimalMark.Point, DecimalMark.Comma);
        var digits = text.TrimStart('-', '+', '−');
        if (text.Count(c => c is ',' or '.') > 1)
        {
            return (other, false);
        }

        var groups = text.Length - at - 1 == 3 && digits.IndexOfAny([',', '.']) is 1 or 2 or 3 && digits[0] != '0';
        return groups ? (null, true) : (here, false);
    }

    [GeneratedRegex(@"^[+-]?([0-9]{1,3}(,[0-9]{3})+|[0-9]{1,3}( [0-9]{3})+|[0-9]{1,3}('[0-9]{3})+|[0-9]+)(\.[0-9]+)?$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Shape();

    [GeneratedRegex("[, ']", RegexOptions.NonBacktracking)]
    private static partial Regex Grouping();
}
