using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Quantities;
using Evengrist.Season.Terms;

namespace Evengrist.Web.Sights.Mix;

/// <summary>A mix as a person asks for it: fields of the page, read.</summary>
/// <param name="Flour">The flour.</param>
/// <param name="Rate">Wheat through all gates, t/h.</param>
/// <param name="Hours">How long it is to run, h.</param>
/// <param name="Step">Step of the gates, per cent of the mix; null where they move freely.</param>
/// <param name="Sure">Chance with which each limit is to be kept, per cent; null where the means have to keep them.</param>
/// <param name="Limits">Limits of the wheat, and of the flour where one was typed.</param>
/// <param name="Relations">How the flour follows from the wheat; empty where the flour has no limit.</param>
/// <param name="Locks">Shares at which gates are locked, 0 to 1, by bin.</param>
/// <param name="Typed">What was typed, by field.</param>
/// <param name="Faults">What is wrong, each a sentence.</param>
public sealed record MixAsk(
    FlourTerms Flour, double Rate, double Hours, double? Step, double? Sure, IReadOnlyList<MixLimit> Limits, IReadOnlyList<FlourRelation> Relations, IReadOnlyDictionary<string, double> Locks,
    IReadOnlyDictionary<string, string> Typed, IReadOnlyList<string> Faults)
{
    /// <summary>Protein of the flour at 14mb for wheat at 12mb, where the mill has fitted none: from memory, and said so wherever it is used.</summary>
    public const double UsualIntercept = -1.3, UsualSlope = 1, UsualUncertainty = 0.3;

    private const double UsualHours = 24, UsualStep = 1;

    /// <summary>Reads the fields; one that is missing stays as the terms have it.</summary>
    public static MixAsk Of(SeasonTerms terms, FlourTerms flour, IReadOnlyList<string> bins, Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentNullException.ThrowIfNull(flour);
        ArgumentNullException.ThrowIfNull(bins);
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
        var flourLimit = new MixLimit(Property.Protein) { On = LimitOn.Flour, Basis = Basis.At14, Least = Read("flour-least", "protein of the flour, least", null), Most = Read("flour-most", "protein of the flour, most", null), Confidence = sure / 100 };
        var relation = new FlourRelation(
            Property.Protein, Basis.At12, Basis.At14, Read("flour-intercept", "flour where the wheat has 0", UsualIntercept) ?? UsualIntercept, Read("flour-slope", "flour for one of the wheat", UsualSlope) ?? UsualSlope,
            Read("flour-uncertainty", "± of the relation", UsualUncertainty) ?? UsualUncertainty, false, "");
        relation = relation with { Source = relation is { Intercept: UsualIntercept, Slope: UsualSlope, Uncertainty: UsualUncertainty } ? "from memory" : "as typed" };
        var hasFlour = flourLimit.Ends.Count > 0;
        return new MixAsk(
            flour, Read("rate", "t/h", rate) ?? 0, Read("hours", "hours", UsualHours) ?? 0, Read("step", "step of the gates", UsualStep), sure,
            [.. limits.Where(l => l.Ends.Count > 0).Select(l => l with { Confidence = sure / 100 }), .. hasFlour ? [flourLimit] : Array.Empty<MixLimit>()], hasFlour ? [relation] : [], locks, texts, faults);
    }

    /// <summary>What a field shows: what was typed, else the value as it is.</summary>
    public string Shown(string key, double? value) => Typed.GetValueOrDefault(key) ?? value?.ToString("0.####", CultureInfo.InvariantCulture) ?? "";
}
