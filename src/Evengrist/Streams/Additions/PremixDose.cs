namespace Evengrist.Streams.Additions;

/// <summary>How much of a premix brings a flour to every aim. Page: docs/model/additions.md.</summary>
/// <param name="GramsPerTonne">The dose, g/t: the most that any nutrient needs.</param>
/// <param name="Nutrients">What each comes to.</param>
public sealed record PremixDose(double GramsPerTonne, IReadOnlyList<EnrichedTo> Nutrients)
{
    /// <summary>The dose, or why there is none.</summary>
    /// <param name="table">What the market asks.</param>
    /// <param name="contentPercent">What of the premix each nutrient is, per cent, by name.</param>
    /// <param name="own">What the flour has of its own, mg/kg, by name; nothing where it is not said.</param>
    /// <param name="overagePercent">How much more than the aim is put in, so that it lasts; per cent of the aim, 0 or more.</param>
    public static (PremixDose? Dose, IReadOnlyList<string> Faults) For(EnrichmentTable table, IReadOnlyDictionary<string, double> contentPercent, IReadOnlyDictionary<string, double> own, double overagePercent = 0)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(contentPercent);
        ArgumentNullException.ThrowIfNull(own);
        string[] known = [.. table.Nutrients.Select(n => n.Name)];
        string[] faults =
        [
            .. contentPercent.Keys.Concat(own.Keys).Distinct().Where(n => !known.Contains(n)).Select(n => $"The table of {table.Market} asks for no {n}: it asks for {string.Join(", ", known)}."),
            .. table.Nutrients.Where(n => !contentPercent.ContainsKey(n.Name)).Select(n => $"{n.Name}: what of the premix it is must be said, and is missing."),
            .. contentPercent.Where(c => !(c.Value is > 0 and <= 100)).Select(c => FormattableString.Invariant($"{c.Key}: what of the premix it is lies above 0 and at most at 100 %; got {c.Value}.")),
            .. contentPercent.Values.Sum() > 100 + 1e-9 ? [FormattableString.Invariant($"The premix holds {contentPercent.Values.Sum():0.##} % of nutrients together: more than all of it.")] : Array.Empty<string>(),
            .. own.Where(o => !(o.Value is >= 0 and <= 100_000)).Select(o => FormattableString.Invariant($"{o.Key}: what the flour has of its own is 0 mg/kg or more; got {o.Value}.")),
            .. overagePercent is >= 0 and <= 100 ? Array.Empty<string>() : [FormattableString.Invariant($"The overage lies from 0 to 100 % of the aim; got {overagePercent}.")],
        ];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        (NutrientAim Aim, double Own, double Content, double Dose)[] each =
            [.. table.Nutrients.Select(n => (n, own.GetValueOrDefault(n.Name), contentPercent[n.Name], Feeder.PremixGramsPerTonne((n.MilligramsPerKg * (1 + (overagePercent / 100))) - own.GetValueOrDefault(n.Name), contentPercent[n.Name])))];
        var dose = each.Max(e => e.Dose);
        return (new PremixDose(dose, [.. each.Select(e => new EnrichedTo(e.Aim, e.Own, e.Dose, e.Own + (dose * e.Content / 100)))]), []);
    }
}

/// <summary>What a nutrient comes to.</summary>
/// <param name="Aim">What is asked.</param>
/// <param name="Own">What the flour has of its own, mg/kg.</param>
/// <param name="NeedsGramsPerTonne">The premix it needs by itself, g/t.</param>
/// <param name="MilligramsPerKg">What it comes to with the dose of all, mg/kg.</param>
public sealed record EnrichedTo(NutrientAim Aim, double Own, double NeedsGramsPerTonne, double MilligramsPerKg)
{
    /// <summary>How much more than the aim that is, per cent of it.</summary>
    public double OverPercent => 100 * ((MilligramsPerKg / Aim.MilligramsPerKg) - 1);
}
