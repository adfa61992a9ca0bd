using System.Globalization;

namespace Evengrist.Intake.Paying;

/// <summary>What moved the price of a group of loads, in plain words.</summary>
internal static class PayWords
{
    private const int MostCauses = 4;

    public static string Of(LoadGroup group)
    {
        if (group.AtBase is not { } atBase || group.EachTonne is not { } each)
        {
            return group.Standing.Count == 0 ? "No load stands." : "No load of it settles yet: no price can be said.";
        }

        var tonnes = group.SettledNet.Tonnes;
        var basePrice = atBase.Amount / tonnes;
        var causes = group.Causes.Select(c => (c.What, Each: Math.Round(c.Money.Amount / tonnes, 2, MidpointRounding.AwayFromZero))).Where(c => c.Each != 0m).ToList();
        var said = causes.Take(MostCauses).Select(c => $"{c.What} {Signed(c.Each)}").ToList();
        if (causes.Count > MostCauses)
        {
            said.Add($"the rest {Signed(causes.Skip(MostCauses).Sum(c => c.Each))}");
        }

        var sum = string.Create(CultureInfo.InvariantCulture, $"{each.Amount:#,##0.00} {each.Currency} for a tonne of net, {Over(each.Amount - basePrice)} the base price of {basePrice:#,##0.00}");
        return said.Count == 0 ? sum + ": nothing moved it." : $"{sum}: {string.Join(", ", said)}.";
    }

    private static string Over(decimal difference) => Math.Round(difference, 2, MidpointRounding.AwayFromZero) switch
    {
        0m => "the same as",
        > 0m and var more => string.Create(CultureInfo.InvariantCulture, $"{more:0.00} above"),
        var less => string.Create(CultureInfo.InvariantCulture, $"{-less:0.00} below"),
    };

    private static string Signed(decimal money) => money.ToString("+0.00;−0.00;0.00", CultureInfo.InvariantCulture);
}
