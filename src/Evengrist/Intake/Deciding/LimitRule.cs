using System.Globalization;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;

namespace Evengrist.Intake.Deciding;

/// <summary>Findings against the limits of a market: those of wheat as received at once, those of products by what cleaning and milling are known to leave.</summary>
internal static class LimitRule
{
    // Cereal Chem. 63:146 (1986), hard red winter wheat: cleaned wheat held 48 to 86 % of the deoxynivalenol of the uncleaned, straight flour 75 % of that of the cleaned.
    private const decimal CleanedLeast = 0.48m, CleanedMost = 0.86m, FlourOfCleaned = 0.75m;
    private const string Milling = "Cereal Chem. 63:146 (1986), one study of hard winter wheat: an estimate, test the flour";

    public static IEnumerable<Ruling> Of(LoadToDecide load, Market market)
    {
        foreach (var limit in market.Limits)
        {
            if (load.Find(limit.What) is { } found && (limit.Stage == LimitStage.AsReceived ? Raw(load, found, limit, market) : InProduct(load, found, limit, market)) is { } ruling)
            {
                yield return ruling;
            }
        }
    }

    private static Ruling? Raw(LoadToDecide load, Finding found, MarketLimit limit, Market market)
    {
        var (value, words) = AsItLies(load, found);
        if (value <= limit.Most)
        {
            return null;
        }

        var reason = $"{Capital(found.What.Words())} of {words} is above the {Number(limit.Most)} {limit.Unit} that {market.Name} allows in wheat as received.";
        return limit.BlendDown
            ? new(LoadDecisionKind.Divert, reason + " Blending down is switched on for this market: into a bin kept for it, never into a clean one.", limit.Source, limit.Mark)
            : new(LoadDecisionKind.TurnAway, reason + " It may not be blended down.", limit.Source, limit.Mark) { Caution = "Dust of mouldy grain harms lungs: keep people out of it, wear what the site prescribes." };
    }

    private static Ruling? InProduct(LoadToDecide load, Finding found, MarketLimit limit, Market market)
    {
        if (found.What != Property.Don)
        {
            return null;
        }

        var (value, words) = AsItLies(load, found);
        var (least, most) = (value * CleanedLeast * FlourOfCleaned, value * CleanedMost * FlourOfCleaned);
        var said = $"DON of {words} leaves about {Number(decimal.Round(least, 2))} to {Number(decimal.Round(most, 2))} {limit.Unit} in straight flour; {market.Name} allows {Number(limit.Most)}.";
        var source = $"{limit.Source}; {Milling}";
        return least > limit.Most ? new(limit.BlendDown ? LoadDecisionKind.Divert : LoadDecisionKind.SetAside, said + " Even the cleanest milling would not meet it.", source, SourceMark.Derived)
            : most > limit.Most ? new(LoadDecisionKind.Divert, said + " It may or may not meet it: keep it apart.", source, SourceMark.Derived)
            : null;
    }

    // A limit holds of goods as they lie; a reading on another basis is carried to the moisture found, and taken as it is where that is not known.
    private static (decimal Value, string Words) AsItLies(LoadToDecide load, Finding found)
    {
        var said = $"{Number(found.Value)} {found.Unit}{(found.Basis.IsStated ? " " + found.Basis : "")}";
        if (!found.Basis.IsStated || !load.AsReceived.IsStated || load.AsReceived == found.Basis)
        {
            return (found.Value, said);
        }

        var value = found.Basis.Restated(found.Value, load.AsReceived);
        return (value, $"{said}, {Number(decimal.Round(value, 3))} {found.Unit} as it lies at {Number(load.AsReceived.MoisturePercent)} % moisture,");
    }

    private static string Number(decimal value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
