using Evengrist.Intake;
using Evengrist.Quantities;

namespace Evengrist.Plant.Answers;

/// <summary>A load settled, in plain values.</summary>
public sealed record SettlementAnswer(
    string Under, decimal NetKg, decimal CleanKg, decimal SettledKg, decimal Bushels, decimal Price, string PricePer, decimal Pay, string Currency, IReadOnlyList<LineAnswer> Lines)
{
    /// <summary>The settlement in plain values.</summary>
    public static SettlementAnswer Of(Settlement settled)
    {
        ArgumentNullException.ThrowIfNull(settled);
        return new(settled.Under, settled.Net.Kilograms, settled.Clean.Kilograms, settled.Settled.Kilograms, settled.Bushels,
            settled.Price.Money.Amount, settled.Price.Per.ToString(), settled.Pay.Amount, settled.Pay.Currency, settled.Lines.Select(LineAnswer.Of).ToArray());
    }
}

/// <summary>One line of a settlement.</summary>
public sealed record LineAnswer(string What, decimal Value, string Unit, string Basis, string Shown, string Origin, string Formula, string Source)
{
    internal static LineAnswer Of(Figure figure) => new(figure.What, figure.Value, figure.Unit, figure.Basis.IsStated ? figure.Basis.ToString() : "",
        figure.ToString(), figure.Origin.ToString().ToLowerInvariant(), figure.Because?.Formula ?? "", figure.Because?.Source ?? "");
}
