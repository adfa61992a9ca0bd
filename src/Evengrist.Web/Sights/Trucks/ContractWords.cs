using System.Globalization;
using Evengrist.Intake;
using Evengrist.Quantities;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>The terms of a contract and the rules of its scales in words.</summary>
public static class ContractWords
{
    private static readonly LocalDatePattern Day = LocalDatePattern.CreateWithInvariantCulture("d MMM uuuu");

    /// <summary><c>6.20 USD/bu</c>.</summary>
    public static string Price(Price price) => string.Create(CultureInfo.InvariantCulture, $"{price.Money.Amount} {price.Money.Currency}/{price.PerText}");

    /// <summary><c>1 Jul 2025 to 30 Jun 2026</c>.</summary>
    public static string Span(LocalDate? from, LocalDate? until) => (from, until) switch
    {
        (null, null) => "always",
        ({ } first, null) => $"from {Day.Format(first)}",
        (null, { } last) => $"until {Day.Format(last)}",
        ({ } first, { } last) => $"{Day.Format(first)} to {Day.Format(last)}",
    };

    /// <summary>Unit and basis of what a scale goes by.</summary>
    public static string Unit(ContractScale scale)
    {
        ArgumentNullException.ThrowIfNull(scale);
        return scale.Basis.IsStated ? $"{scale.Unit} {scale.Basis}" : scale.Unit;
    }

    /// <summary>Unit of what a step does.</summary>
    public static string EffectUnit(ContractScale scale)
    {
        ArgumentNullException.ThrowIfNull(scale);
        return scale.Effect == ScaleEffect.MultipliesMass ? "% of the mass" : $"{scale.Currency}/{(scale.Per == PriceUnit.Tonne ? "t" : "bu")}";
    }

    /// <summary>With its sign, for an effect adds or takes.</summary>
    public static string Signed(decimal effect) => (effect > 0m ? "+" : effect < 0m ? "−" : "") + Math.Abs(effect).ToString(CultureInfo.InvariantCulture);

    /// <summary>How a value is looked up, and what holds outside the table.</summary>
    public static string Rules(ContractScale scale)
    {
        ArgumentNullException.ThrowIfNull(scale);
        string[] rules =
        [
            string.Create(CultureInfo.InvariantCulture, $"Recorded half up at {scale.RecordedDecimals} decimals;"),
            scale.Rounding switch { StepRounding.Nearest => "the nearest step counts.", StepRounding.Begun => "a step begun counts as a whole one.", _ => "a part of a step is not credited." },
            $"Below the first step: {Outside(scale.Below, scale)}.",
            string.Create(CultureInfo.InvariantCulture, $"Above {scale.End ?? scale.Table[^1].From}: {Outside(scale.Above, scale)}."),
            scale.Cap is { } cap ? $"At most {Signed(cap)}." : "",
            scale.Floor is { } floor ? $"At least {Signed(floor)}." : "",
            scale.RejectAbove is { } above ? string.Create(CultureInfo.InvariantCulture, $"Above {above} it is not taken.") : "",
            scale.RejectBelow is { } below ? string.Create(CultureInfo.InvariantCulture, $"Below {below} it is not taken.") : "",
            scale.NotReadCountsAs is { } counts ? string.Create(CultureInfo.InvariantCulture, $"Not read counts as {counts}.") : "",
            scale.From is null && scale.Until is null ? "" : $"In force {Span(scale.From, scale.Until)}.",
            scale.Source.Length > 0 ? $"Source: {scale.Source}." : "",
        ];
        return string.Join(" ", rules.Where(r => r.Length > 0));
    }

    private static string Outside(Beyond beyond, ContractScale scale) => beyond.Rule switch
    {
        BeyondRule.Hold => "the end step holds",
        BeyondRule.PerStep => string.Create(CultureInfo.InvariantCulture, $"{Signed(beyond.PerStep)} for each further {beyond.StepSize} {scale.Unit} up"),
        _ => "nothing is agreed, and the load cannot be settled",
    };
}
