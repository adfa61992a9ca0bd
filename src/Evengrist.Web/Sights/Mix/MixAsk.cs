using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Records.Mix;
using Evengrist.Season.Terms;

namespace Evengrist.Web.Sights.Mix;

/// <summary>A mix as a person asks for it: fields of the page, read.</summary>
/// <param name="Flour">The flour.</param>
/// <param name="Rate">Wheat through all gates, t/h.</param>
/// <param name="Hours">How long it is to run, h.</param>
/// <param name="Step">Step of the gates, per cent of the mix; null where they move freely.</param>
/// <param name="Sure">Chance with which each limit is to be kept, per cent; null where the means have to keep them.</param>
/// <param name="OfWheat">Limits of the wheat.</param>
/// <param name="OfFlour">The flour's properties that have a relation, with their limits.</param>
/// <param name="MixDown">Whether it is asked as if the market's switch for mixing down were on.</param>
/// <param name="Locks">Shares at which gates are locked, 0 to 1, by bin.</param>
/// <param name="Typed">What was typed, by field.</param>
/// <param name="Faults">What is wrong, each a sentence.</param>
public sealed record MixAsk(
    FlourTerms Flour, double Rate, double Hours, double? Step, double? Sure, IReadOnlyList<MixLimit> OfWheat, IReadOnlyList<AskedFlour> OfFlour, bool MixDown, IReadOnlyDictionary<string, double> Locks,
    IReadOnlyDictionary<string, string> Typed, IReadOnlyList<string> Faults)
{
    private const double UsualHours = 24, UsualStep = 1;

    /// <summary>Reads the fields; one that is missing stays as the terms have it, and the relations as the mill keeps them.</summary>
    public static MixAsk Of(SeasonTerms terms, FlourTerms flour, IReadOnlyList<string> bins, IReadOnlyList<KeptRelation> kept, Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentNullException.ThrowIfNull(flour);
        ArgumentNullException.ThrowIfNull(bins);
        ArgumentNullException.ThrowIfNull(kept);
        ArgumentNullException.ThrowIfNull(typed);
        var (texts, faults) = (new Dictionary<string, string>(), new List<string>());
        double? Read(string key, string words, double? otherwise)
        {
            if (typed(key)?.Trim() is not { } text)
            {
                return otherwise;
            }

            texts[key] = text;
            if (text.Length == 0)
            {
                return null;
            }

            if (double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value))
            {
                return value;
            }

            faults.Add($"{words}: a number such as 12.5 is needed; read “{text}”.");
            return otherwise;
        }

        var rate = terms.Units.FirstOrDefault(u => u.Code == flour.Unit)?.TonnesPerHour;
        var limits = flour.Limits.Select(l => new MixLimit(l.What)
        {
            Basis = l.Basis,
            Least = Read($"least:{l.What}", $"{l.What.Words()}, least", l.Least),
            Most = Read($"most:{l.What}", $"{l.What.Words()}, most", l.Most),
        }).ToArray();
        var locks = bins.Select(b => (Bin: b, Share: Read($"lock:{b}", $"gate of {b}", null))).Where(b => b.Share is not null).ToDictionary(b => b.Bin, b => b.Share!.Value / 100);
        var sure = Read("sure", "how sure", null);
        var ofFlour = AskedFlour.Of(kept, Read, sure / 100);
        return new MixAsk(
            flour, Read("rate", "t/h", rate) ?? 0, Read("hours", "hours", UsualHours) ?? 0, Read("step", "step of the gates", UsualStep), sure,
            [.. limits.Where(l => l.Ends.Count > 0).Select(l => l with { Confidence = sure / 100 })], ofFlour, typed("mix-down") is { Length: > 0 }, locks, texts, faults);
    }

    /// <summary>Limits of the wheat and of the flour.</summary>
    public IReadOnlyList<MixLimit> Limits => [.. OfWheat, .. OfFlour.Where(f => f.IsLimited).Select(f => f.Limit)];

    /// <summary>How the flour follows from the wheat: every relation that is kept, and any that a limit needs.</summary>
    public IReadOnlyList<FlourRelation> Relations => [.. OfFlour.Where(f => f.IsLimited || f.Kept is not null).Select(f => f.Relation)];

    /// <summary>Whether an end of a limit is another one than the terms have.</summary>
    public bool IsTyped(LimitEnd end)
    {
        ArgumentNullException.ThrowIfNull(end);
        var terms = end.Limit.On == LimitOn.Wheat ? Flour.Limits.FirstOrDefault(l => l.What == end.Limit.What) : null;
        return end.Value != (end.IsLeast ? terms?.Least : terms?.Most);
    }

    /// <summary>What a field shows: what was typed, else the value as it is.</summary>
    public string Shown(string key, double? value) => Typed.GetValueOrDefault(key) ?? value?.ToString("0.####", CultureInfo.InvariantCulture) ?? "";
}
