using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>What was seen on a truck, as figures.</summary>
public static class TruckFigures
{
    /// <summary>A reading as reported, with its basis and ±.</summary>
    public static Figure? Seen(Reading? reading) => reading is null ? null
        : Figure.Seen(reading.What.Words(), reading.Value, reading.Unit, reading.Basis) with
        {
            StandardUncertainty = reading.StandardUncertainty,
            Because = new Because($"read by {How(reading)}", [], $"the ledger, {reading.Id}"),
        };

    /// <summary>A test weight in kg/hL, with the formula of its convention named where it was read in another unit.</summary>
    public static Figure? TestWeight(Reading? reading, bool durum)
    {
        if (reading is null || reading.Unit == "kg/hL")
        {
            return Seen(reading);
        }

        var read = Quantities.TestWeight.Read(reading.Value, reading.Unit, durum);
        return Figure.Reckoned("test weight", read.KilogramsPerHectolitre, durum ? "kg/hL durum" : "kg/hL", 1, new Because(read.Formula.Name, [Seen(reading)!], read.Formula.Source)) with
        {
            StandardUncertainty = reading.StandardUncertainty * read.Formula.Slope,
        };
    }

    /// <summary>The same share on another basis; null where it is on that basis already.</summary>
    public static Figure? OnBasis(Reading reading, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(reading);
        if (!reading.Basis.IsStated || reading.Basis == basis)
        {
            return null;
        }

        var value = reading.Basis.Restated(reading.Value, basis);
        return Figure.Reckoned($"{reading.What.Words()} on {basis}", value, reading.Unit, 2,
            new Because($"value × (100 − {basis.MoisturePercent:0.###})/(100 − {reading.Basis.MoisturePercent:0.###})", [Seen(reading)!], "dry matter kept")) with { Basis = basis };
    }

    /// <summary>The net as a figure: gross − tare where both are read.</summary>
    public static Figure Net(TruckSight truck)
    {
        ArgumentNullException.ThrowIfNull(truck);
        var weights = new[] { Seen(truck.Read(Property.GrossWeight)), Seen(truck.Read(Property.TareWeight)) }.OfType<Figure>().ToArray();
        return Figure.Reckoned("net", truck.Net.Kilograms, "kg", 0,
            new Because(weights.Length == 2 ? "gross − tare" : "the load as it was booked", weights, weights.Length == 2 ? "by definition" : "the ledger"));
    }

    private static string How(Reading reading) => reading.Instrument.Length > 0 ? $"{reading.Method}, {reading.Instrument}" : reading.Method;
}
