using Evengrist.Milling.Balance;
using Evengrist.Quantities;
using Evengrist.Records.Milling;
using static System.FormattableString;

namespace Evengrist.Web.Sights.Balance;

/// <summary>Figures of a mill's balance, each with what it rests on.</summary>
public static class BalanceFigures
{
    private static readonly Because Summed = new("Sum of the recorded movements in the span; a flow counts by its part.", [], "the ledger");

    /// <summary>A mass the ledger has, with its weigher's error.</summary>
    /// <param name="what">What it is.</param>
    /// <param name="mass">The mass.</param>
    /// <param name="parts">What it is the sum of.</param>
    public static Figure Mass(string what, Weighed mass, IEnumerable<(string Name, double Tonnes)>? parts = null)
    {
        ArgumentNullException.ThrowIfNull(mass);
        return Tonnes(what, mass.Tonnes, mass.StandardUncertainty, Summed with { Inputs = [.. (parts ?? []).Select(p => Figure.Reckoned(p.Name, (decimal)p.Tonnes, "t", 1, Summed))] });
    }

    /// <summary>A moisture a person read or typed, or the mean of readings.</summary>
    public static Figure? Moisture(string what, MeanMoisture? read, string from) => read is null ? null
        : Figure.Reckoned(what, (decimal)read.Percent, "% wet basis", 1, new Because($"{char.ToUpperInvariant(from[0])}{from[1..]}; ± taken as shared by all of them.", [], from)) with { StandardUncertainty = (decimal)read.StandardUncertainty };

    /// <summary>Where the moisture of the wheat came from.</summary>
    public static string WheatMoistureFrom(MilledSpan read, bool isTyped)
    {
        ArgumentNullException.ThrowIfNull(read);
        return isTyped ? "typed" : Invariant($"mean of the readings on the loads drawn, by mass, over the three ways the bins may have emptied; {100 * (read.Wheat?.ShareRead ?? 0):0} % of the wheat was read");
    }

    /// <summary>An extraction, with its basis in its name.</summary>
    /// <param name="extraction">The extraction.</param>
    /// <param name="isReconciled">Whether it is that of the reconciled values.</param>
    public static Figure Extraction(Extraction extraction, bool isReconciled)
    {
        ArgumentNullException.ThrowIfNull(extraction);
        var basis = Milling.Balance.Extraction.Words(extraction.Basis);
        return Figure.Reckoned($"Extraction on {basis}", (decimal)extraction.Percent, "%", 2, new Because(
            $"100 · flour / {basis}, both as they lay{(isReconciled ? ", reconciled" : ", as weighed")}; additives and rework are taken off the flour.", [], Milling.Balance.Extraction.Source)) with
        { StandardUncertainty = (decimal)extraction.StandardUncertainty };
    }

    /// <summary>Bushels of wheat for a hundredweight of flour.</summary>
    public static Figure Bushels(Extraction onDirty)
    {
        ArgumentNullException.ThrowIfNull(onDirty);
        var bushels = FlourYield.BushelsPerHundredweight((decimal)onDirty.Percent);
        return Figure.Reckoned("Wheat for flour, on wheat before cleaning", bushels, "bu/cwt", 3, new Because("100/60 over the extraction: bushels of 60 lb, hundredweights of 100 lb.", [Extraction(onDirty, false)], "by definition")) with
        { StandardUncertainty = bushels * (decimal)(onDirty.StandardUncertainty / onDirty.Percent) };
    }

    /// <summary>What is unexplained.</summary>
    public static Figure Unexplained(MillBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        var spec = balance.Spec;
        return Tonnes("Evaporation + unweighed", balance.Unexplained.Tonnes, balance.Unexplained.StandardUncertainty, new Because("Wheat − screenings + water − rise of the temper bins − products.",
            [Mass("Wheat", spec.Dirty), Mass("Screenings", spec.Screenings), Mass("Water", spec.Water), Mass("Rise of the temper bins", spec.TemperRise), Mass("Products", new Weighed(spec.Products.Sum(p => p.Mass.Tonnes), Math.Sqrt(spec.Products.Sum(p => p.Mass.StandardUncertainty * p.Mass.StandardUncertainty))))],
            "mass balance, by definition"));
    }

    /// <summary>A reckoned mass with its error.</summary>
    public static Figure Tonnes(string what, double tonnes, double? error, Because because) => Figure.Reckoned(what, (decimal)tonnes, "t", 1, because) with { StandardUncertainty = (decimal?)error };
}
