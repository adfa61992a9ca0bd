using System.Globalization;
using Evengrist.Intake.Sampling;
using Evengrist.Quantities;
using Evengrist.Web.Sights.Trucks;

namespace Evengrist.Web.Sights.Sampling;

/// <summary>A vehicle as a person types it.</summary>
public sealed class PlanAsk
{
    private PlanAsk(Typed typed, ProbeOutcome? outcome) => (Typed, Outcome) = (typed, outcome);

    /// <summary>What is wrong with the form, by field.</summary>
    public Typed Typed { get; }

    /// <summary>The plan, or why there is none; null where the form cannot be read.</summary>
    public ProbeOutcome? Outcome { get; }

    /// <summary>Reads the form.</summary>
    public static PlanAsk Read(string? rule, string? vehicle, string? tonnes, string? depth, string? length, string? width, string? hoppers, string? seed)
    {
        var typed = new Typed();
        double? Number(string field, string? text, string unit) => (double?)typed.Number(field, text, unit, field);
        var (load, deep, along, across) = (typed.Number("mass", tonnes, "t", "the mass of the load"), Number("depth", depth, "m"), Number("length", length, "m"), Number("width", width, "m"));
        var under = typed.Number("hoppers", hoppers, "hoppers", "how many hoppers");
        var pattern = ProbePatterns.Find(rule);
        if (pattern is null)
        {
            typed.Fault("rule", "Choose a rule.");
        }

        if (!typed.IsWhole || load is not (> 0 and < 1000))
        {
            if (load is { } odd and not (> 0 and < 1000))
            {
                typed.Fault("mass", string.Create(CultureInfo.InvariantCulture, $"A load of {odd} t cannot be."));
            }

            return new PlanAsk(typed, null);
        }

        var kind = vehicle switch { "flat" => VehicleKind.FlatBottom, "hopper" => VehicleKind.HopperBottom, _ => VehicleKind.None };
        return new PlanAsk(typed, ProbeModel.Plan(new ProbeSpec(pattern!, kind, Mass.FromTonnes(load.Value), deep!.Value)
        {
            LengthMetres = along!.Value, WidthMetres = across!.Value, Hoppers = (int)Math.Clamp(under!.Value, -1, 100), Seed = SeedOf(seed),
        }));
    }

    // Any text starts the scatter somewhere: a ticket number gives each truck its own points, the same whenever it is asked again.
    private static int SeedOf(string? text) => (text ?? "").Trim().Aggregate(0, (sum, letter) => ((sum * 31) + letter) & 0xFFFF);
}
