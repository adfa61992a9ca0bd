using Evengrist.Quantities;

namespace Evengrist.Intake;

/// <summary>A truck or railcar weighed full and empty.</summary>
/// <remarks>Unit: as the scale shows it, whole grams inside. 0 &lt; tare ≤ gross ≤ 120 t; the upper bound is ours and marks a unit mixed up.</remarks>
public sealed record Weighing
{
    /// <summary>The most that anything on wheels can weigh; above it the unit was mixed up.</summary>
    public static readonly Mass Most = Mass.FromTonnes(120m);

    private Weighing(Mass gross, Mass tare) => (Gross, Tare) = (gross, tare);

    /// <summary>Mass full.</summary>
    public Mass Gross { get; }

    /// <summary>Mass empty.</summary>
    public Mass Tare { get; }

    /// <summary>What was unloaded, as it lay: gross − tare.</summary>
    public Mass Net => Gross - Tare;

    /// <summary>A weighing.</summary>
    /// <exception cref="ArgumentException">What <see cref="Fault"/> says.</exception>
    public static Weighing Of(Mass gross, Mass tare) => Fault(gross, tare) is { } fault
        ? throw new ArgumentException(fault, nameof(gross))
        : new Weighing(gross, tare);

    /// <summary>What is wrong with two weights and what to do, in a sentence; null where nothing is.</summary>
    public static string? Fault(Mass gross, Mass tare)
    {
        if (gross < Mass.Zero || tare < Mass.Zero)
        {
            return $"A weight cannot be below zero; read gross {gross}, tare {tare}. Zero the scale and weigh again.";
        }

        if (tare == Mass.Zero || gross == Mass.Zero)
        {
            return $"Gross and tare are both above zero; read gross {gross}, tare {tare}. Weigh the empty truck too.";
        }

        if (gross > Most || tare > Most)
        {
            return $"Gross {gross}, tare {tare}: above {Most} nothing runs on a road or rail here. Is the unit right (kg, not lb or g)?";
        }

        return tare > gross ? $"The tare of {tare} is above the gross of {gross}. Are the two swapped?" : null;
    }

    /// <summary><c>gross 38,460 kg, tare 12,120 kg</c>.</summary>
    public override string ToString() => $"gross {Gross}, tare {Tare}";
}
