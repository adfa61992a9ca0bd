using System.Globalization;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;

namespace Evengrist.Intake.Deciding;

/// <summary>One rule of the mill: what becomes of a load whose reading lies below or above a bound.</summary>
/// <param name="What">The property.</param>
/// <param name="Unit">Unit of the bounds.</param>
/// <param name="Kind">The least that is decided then.</param>
/// <param name="Why">What it is for, in words.</param>
public sealed record HouseRule(Property What, string Unit, LoadDecisionKind Kind, string Why)
{
    /// <summary>Below this the rule speaks; null for no such bound.</summary>
    public decimal? Below { get; init; }

    /// <summary>Above this the rule speaks; null for no such bound.</summary>
    public decimal? Above { get; init; }

    /// <summary>Basis of the bounds of a share of solids, as people write it: <c>12mb</c>, <c>dry</c>; empty otherwise.</summary>
    public string Basis { get; init; } = "";

    /// <summary>What is wrong and what to do, in a sentence; null where nothing is.</summary>
    public string? Fault
    {
        get
        {
            if (Below is null && Above is null)
            {
                return $"A house rule on {What.Words()} has no bound: give below or above.";
            }

            return Quantities.Basis.TryParse(Basis, out var basis) || Basis.Length == 0
                ? Readings.Fault(What, Below ?? Above!.Value, Unit, basis)
                : $"\"{Basis}\" is no basis: write dry, 12mb, 14mb or another.";
        }
    }

    internal Ruling? Of(LoadToDecide load)
    {
        if (load.Find(What) is not { } found || Carried(found) is not { } value)
        {
            return null;
        }

        var bound = Below is { } below && value < below ? $"below the {Number(below)}" : Above is { } above && value > above ? $"above the {Number(above)}" : null;
        return bound is null ? null : new(Kind,
            $"{char.ToUpperInvariant(What.Words()[0])}{What.Words()[1..]} of {Number(decimal.Round(value, 3))} {Unit}{(Basis.Length > 0 ? " " + Basis : "")} is {bound} {Unit} of the house: {Why}.",
            "the mill's own rule", SourceMark.House);
    }

    private decimal? Carried(Finding found)
    {
        if (What.NeedsBasis())
        {
            return Quantities.Basis.TryParse(Basis, out var wanted) && found.Basis.IsStated ? found.Basis.Restated(found.Value, wanted) : null;
        }

        // A test weight in another convention is not carried here: which formula holds depends on the class.
        return found.Unit == Unit ? found.Value : null;
    }

    private static string Number(decimal value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
