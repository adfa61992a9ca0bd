using Evengrist.Plant.Gs1;
using Evengrist.Plant.Gs1.Checks;
using Evengrist.Plant.Gs1.Table;
using Evengrist.Tests;
using Entry = Evengrist.Edge.Tests.Plant.Gs1.SyntaxDictionary.Entry;

namespace Evengrist.Edge.Tests.Plant.Gs1;

/// <summary>Our table against GS1's own, row by row and in both directions.</summary>
public sealed class TableTests
{
    private const int Year = 2026;

    private static readonly Lazy<IReadOnlyList<Entry>> Theirs = new(() => SyntaxDictionary.Read(OpenData.At("gs1", "gs1-syntax-dictionary.txt")));

    [OpenDataFact]
    public void Table_EveryRow_IsAsGs1WritesIt()
    {
        Assert.True(Theirs.Value.Count > 400, "The table was not read.");
        Assert.Equal(Theirs.Value.Select(e => e.Code).Order(StringComparer.Ordinal), Identifiers.All.Select(i => i.Code).Order(StringComparer.Ordinal));
        Assert.All(Theirs.Value, e =>
        {
            Assert.True(Identifiers.TryFind(e.Code, out var ours));
            Assert.Equal(e.Parts, ours.Parts.Select(Written));
            Assert.Equal((e.Predefined, e.InLink), (ours.IsPredefined, ours.InLink));
            Assert.Equal(e.Needs, ours.Needs.Select(g => string.Join('+', g)));
            Assert.Equal(e.Excludes, ours.Excludes);
            Assert.Equal(e.LinkKey, ours.Qualifiers is null ? null : string.Join('|', ours.Qualifiers.Select(q => string.Join(',', q))));
        });
    }

    [OpenDataFact]
    public void Checks_AllOfTheTable_AreNamedAsThere() =>
        Assert.Equal(Theirs.Value.SelectMany(e => e.Parts).SelectMany(p => GoodValues.Read(p).Checks).Distinct().Order(StringComparer.Ordinal), NamedChecks.All.Select(c => c.Name).Order(StringComparer.Ordinal));

    [OpenDataFact]
    public void Read_AGoodValueOfEveryRow_IsTaken() => Assert.All(Theirs.Value, e =>
    {
        var value = Good(e);
        var read = ElementStrings.Read(e.Code + value, Year, whole: false);
        Assert.True(read.Ok, read.Ok ? "" : read.Faults[0].ToString());
        Assert.Equal(value, read.Value[e.Code]);
        Assert.Equal(value, ElementStrings.Read($"({e.Code}){value}", Year, whole: false).Value[e.Code]);
    });

    [OpenDataFact]
    public void Read_TooShortTooLongAndForeignCharacters_AreRefusedInEveryRow() => Assert.All(Theirs.Value, e =>
    {
        var least = e.Parts.Where(p => p[0] != '[').Sum(p => GoodValues.Read(p) is { IsFixed: true } f ? f.Most : 1);
        Refused(e, Good(e)[..(least - 1)]);
        Refused(e, string.Concat(e.Parts.Select(p => GoodValues.Good(p).PadRight(GoodValues.Read(p).Most, '1'))) + "1");
        Refused(e, GoodValues.Foreign(e.Parts[0]) + Good(e)[1..]);
    });

    [OpenDataFact]
    public void Read_WhatACheckForbids_IsRefusedInEveryRow()
    {
        var tried = new HashSet<string>();
        Assert.All(Theirs.Value, e =>
        {
            for (var n = 0; n < e.Parts.Length; n++)
            {
                foreach (var bad in GoodValues.Bad(e.Parts[n]))
                {
                    Refused(e, string.Concat(e.Parts.Take(n).Select(GoodValues.Good)) + bad + string.Concat(e.Parts.Skip(n + 1).Select(GoodValues.Good)));
                    tried.UnionWith(GoodValues.Read(e.Parts[n]).Checks);
                }
            }
        });
        string[] impossible = []; // every check has a value that only it refuses
        Assert.Equal(impossible, NamedChecks.All.Select(c => c.Name).Except(tried));
    }

    [OpenDataFact]
    public void Read_MissingCompanions_AreAskedForAndTheirPresenceSuffices() => Assert.All(Theirs.Value.Where(e => e.Needs.Length > 0), e =>
    {
        var alone = ElementStrings.Read(e.Code + Good(e), Year);
        Assert.False(alone.Ok);
        Assert.Contains($"({e.Needs[0].Split('+')[0]})", alone.Faults[0].Expected, StringComparison.Ordinal);
        Assert.NotNull(Company(e));
    });

    [OpenDataFact]
    public void Read_WhatARowExcludes_IsRefusedBesideIt() => Assert.All(Theirs.Value.Where(e => e.Excludes.Length > 0), e =>
    {
        foreach (var pattern in e.Excludes)
        {
            var other = Theirs.Value.First(o => o.Code != e.Code && ApplicationIdentifier.Fits(pattern, o.Code));
            var read = ElementString.Make([(e.Code, Good(e)), (other.Code, Good(other))], Year);
            Assert.Contains(read.Faults, f => f.Expected.StartsWith($"no ({other.Code}) beside ({e.Code})", StringComparison.Ordinal));
        }
    });

    [OpenDataFact]
    public void Make_EveryRowWithItsCompany_IsReadBackAsMade() => Assert.All(Theirs.Value, e =>
    {
        var made = ElementString.Make(Company(e)!, Year).Value;
        Assert.Equal(made.Elements.Select(x => (x.Code, x.Value)), ElementStrings.Read("]C1" + made.Transmitted(), Year).Value.Elements.Select(x => (x.Code, x.Value)));
        Assert.Equal(made.ToString(), ElementStrings.Read(made.ToString(), Year).Value.ToString());
    });

    private static string Good(Entry entry) => string.Concat(entry.Parts.Select(GoodValues.Good));

    private static void Refused(Entry entry, string value)
    {
        Assert.False(ElementStrings.Read($"{entry.Code}{value}", Year, whole: false).Ok, $"({entry.Code}){value} was taken.");
        Assert.False(ElementString.Make([(entry.Code, value)], Year, whole: false).Ok);
        Assert.False(ElementStrings.Read($"({entry.Code}){value}", Year, whole: false).Ok);
    }

    // A row with what it needs, and what that needs, such that nothing excludes anything; tried through all groups.
    private static (string, string)[]? Company(Entry entry)
    {
        return Grown([entry.Code]) is { } codes ? [.. codes.Select(c => (c, Good(Theirs.Value.First(o => o.Code == c))))] : null;

        static string[]? Grown(string[] codes)
        {
            if (codes.Length > 8 || codes.Any(c => Row(c).Excludes.Any(p => codes.Any(o => o != c && ApplicationIdentifier.Fits(p, o)))))
            {
                return null;
            }

            var lacking = codes.Select(Row).FirstOrDefault(r => r.Needs.Length > 0 && !r.Needs.Any(g => g.Split('+').All(p => codes.Any(c => ApplicationIdentifier.Fits(p, c)))));
            return lacking is null ? codes : lacking.Needs.Select(g => Grown([.. codes, .. g.Split('+').Select(p => Theirs.Value.First(o => ApplicationIdentifier.Fits(p, o.Code)).Code).Except(codes)])).FirstOrDefault(c => c is not null);
        }

        static Entry Row(string code) => Theirs.Value.First(o => o.Code == code);
    }

    private static string Written(Part part)
    {
        var letter = part.Set switch { CharacterSet.Digits => "N", CharacterSet.Text => "X", CharacterSet.Component => "Y", _ => "Z" };
        var core = $"{letter}{(part.Least == part.Most ? "" : "..")}{part.Most}";
        return (part.MayLack ? $"[{core}]" : core) + string.Concat(part.Checks.Select(c => "," + c.Name));
    }
}
