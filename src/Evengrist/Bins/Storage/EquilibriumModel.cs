using System.Globalization;

namespace Evengrist.Bins.Storage;

/// <summary>Moisture of grain and humidity of the air round it, each from the other.</summary>
/// <remarks>Equations: ASAE D245.5, recalled. Nothing is rounded. Model: docs/model/equilibrium-moisture.md.</remarks>
public static class EquilibriumModel
{
    /// <summary>Answers a question, or says why there is no answer.</summary>
    public static EquilibriumOutcome Of(EquilibriumSpec spec, EmcTable table)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(table);
        if (spec.Fault() is { } fault)
        {
            return new NoEquilibrium(fault);
        }

        if (table.Find(spec.Wheat, spec.Form) is { } constants)
        {
            return Of(constants, spec.Celsius, spec.Humidity, spec.MoisturePercent);
        }

        var forms = table.Constants.Where(c => c.Wheat.Equals(spec.Wheat, StringComparison.OrdinalIgnoreCase)).Select(c => c.Form.Words()).ToArray();
        return new NoEquilibrium(forms.Length == 0
            ? $"There are no constants for \"{spec.Wheat}\". There are some for {string.Join(", ", table.Wheats)}."
            : $"There are no constants of the {spec.Form.Words()} equation for {spec.Wheat} wheat, and none are made up. Take {string.Join(" or ", forms)}, or keep constants of your own with their source.");
    }

    /// <summary>The air that leaves grain of a moisture as it is, by given constants.</summary>
    /// <param name="constants">The constants.</param>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="moisturePercent">Moisture, per cent, wet basis.</param>
    public static EquilibriumOutcome OfMoisture(EmcConstants constants, double celsius, double moisturePercent) => Of(constants, celsius, null, moisturePercent);

    /// <summary>The moisture that air would bring grain to in the end, by given constants.</summary>
    /// <param name="constants">The constants.</param>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="humidity">Relative humidity, as a fraction.</param>
    public static EquilibriumOutcome OfHumidity(EmcConstants constants, double celsius, double humidity) => Of(constants, celsius, humidity, null);

    /// <summary>Relative humidity, as a fraction, from moisture in per cent of dry matter; not a number where the equation has none.</summary>
    public static double Humidity(EmcConstants constants, double celsius, double percentDry)
    {
        ArgumentNullException.ThrowIfNull(constants);
        var (a, b, c, t, m) = (constants.A, constants.B, constants.C, celsius, percentDry);
        return constants.Form switch
        {
            EmcForm.Henderson => 1 - Math.Exp(-a * (t + c) * Math.Pow(m, b)),
            EmcForm.ChungPfost => Math.Exp(-(a / (t + c)) * Math.Exp(-b * m)),
            EmcForm.Oswin => 1 / (1 + Math.Pow((a + (b * t)) / m, c)),
            EmcForm.Halsey => Math.Exp(-Math.Exp(a + (b * t)) * Math.Pow(m, -c)),
            _ => double.NaN,
        };
    }

    /// <summary>Moisture in per cent of dry matter from relative humidity as a fraction; not a number where the equation has none.</summary>
    public static double PercentDry(EmcConstants constants, double celsius, double humidity)
    {
        ArgumentNullException.ThrowIfNull(constants);
        var (a, b, c, t, h) = (constants.A, constants.B, constants.C, celsius, humidity);
        return constants.Form switch
        {
            EmcForm.Henderson => Math.Pow(-Math.Log(1 - h) / (a * (t + c)), 1 / b),
            EmcForm.ChungPfost => Math.Log(a / ((t + c) * -Math.Log(h))) / b,
            EmcForm.Oswin => (a + (b * t)) * Math.Pow(h / (1 - h), 1 / c),
            EmcForm.Halsey => Math.Pow(Math.Exp(a + (b * t)) / -Math.Log(h), 1 / c),
            _ => double.NaN,
        };
    }

    private static EquilibriumOutcome Of(EmcConstants constants, double celsius, double? humidity, double? moisturePercent)
    {
        var rh = humidity ?? Humidity(constants, celsius, 100 * moisturePercent!.Value / (100 - moisturePercent.Value));
        var dry = humidity is null ? 0 : PercentDry(constants, celsius, humidity.Value);
        var wet = moisturePercent ?? 100 * dry / (100 + dry);
        if (!(rh is > 0 and < 1) || !(wet is > 0 and < 100))
        {
            return new NoEquilibrium($"The {constants.Form.Words()} equation gives no figure there: it is far outside what it was made for.");
        }

        return new Equilibrium(constants, celsius, rh, wet, [.. Notes(constants, celsius, rh)]);
    }

    private static IEnumerable<string> Notes(EmcConstants constants, double celsius, double humidity)
    {
        yield return $"Constants {constants.Mark.Words()}: {constants.Source}.";
        if (celsius < constants.LeastCelsius || celsius > constants.MostCelsius || humidity < constants.LeastHumidity || humidity > constants.MostHumidity)
        {
            yield return string.Create(CultureInfo.InvariantCulture,
                $"Outside the range of the equation, about {constants.LeastCelsius:0.#} to {constants.MostCelsius:0.#} °C and {100 * constants.LeastHumidity:0.#} to {100 * constants.MostHumidity:0.#} % humidity (from memory): carried on beyond it.");
        }
    }
}
