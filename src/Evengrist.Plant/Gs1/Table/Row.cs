using System.Globalization;
using Evengrist.Plant.Gs1.Checks;

namespace Evengrist.Plant.Gs1.Table;

/// <summary>A row of the table as it is written down, part by part.</summary>
internal sealed class Row(string code, string words)
{
    private readonly List<Part> parts = [];
    private bool predefined, inLink;
    private string[] needs = [], excludes = [];
    private string[]? qualifiers;

    /// <summary>Rows of a family: the last digit counts from one number to another, and says how many decimals a measure has.</summary>
    public static IEnumerable<Row> Family(string stem, int from, int until, string words, Func<Row, Row> written) =>
        Enumerable.Range(from, until - from + 1).Select(last => written(new Row(stem + last.ToString(CultureInfo.InvariantCulture), words)));

    public Row Digits(int length, params PartCheck[] checks) => Add(CharacterSet.Digits, length, length, checks);

    public Row DigitsUpTo(int most, params PartCheck[] checks) => Add(CharacterSet.Digits, 1, most, checks);

    public Row Letters(int length, params PartCheck[] checks) => Add(CharacterSet.Text, length, length, checks);

    public Row Text(int most, params PartCheck[] checks) => Add(CharacterSet.Text, 1, most, checks);

    public Row Component(int most, params PartCheck[] checks) => Add(CharacterSet.Component, 1, most, checks);

    public Row Base64(int most) => Add(CharacterSet.Base64, 1, most, []);

    /// <summary>The part written last may be missing.</summary>
    public Row OrNone()
    {
        parts[^1] = parts[^1] with { MayLack = true };
        return this;
    }

    public Row Predefined()
    {
        predefined = true;
        return this;
    }

    public Row InLink()
    {
        inLink = true;
        return this;
    }

    /// <summary>One of these has to be there; <c>01+21</c> means both.</summary>
    public Row With(params string[] groups)
    {
        needs = groups;
        return this;
    }

    public Row Without(params string[] patterns)
    {
        excludes = patterns;
        return this;
    }

    /// <summary>A primary key of links, with the orders of qualifiers it may have: <c>22,10,21</c>.</summary>
    public Row Key(params string[] orders)
    {
        qualifiers = orders.Length == 0 ? [""] : orders;
        return this;
    }

    public ApplicationIdentifier Written() => new(
        code, words, [.. parts], predefined, inLink, [.. needs.Select(g => g.Split('+'))], excludes, qualifiers is null ? null : [.. qualifiers.Select(q => q.Split(',', StringSplitOptions.RemoveEmptyEntries))]);

    private Row Add(CharacterSet set, int least, int most, PartCheck[] checks)
    {
        parts.Add(new Part(set, least, most, false, checks));
        return this;
    }
}
