namespace Evengrist.Laboratory.Bake;

/// <summary>A flour against the control over all bakes that had both: specific volume, mL/g.</summary>
/// <param name="Flour">The flour.</param>
/// <param name="Sessions">How many bakes.</param>
/// <param name="Mean">Mean difference of the bakes' means.</param>
/// <param name="Pairs">Judged pair by pair; null with one bake alone.</param>
/// <param name="OverBakers">With bakers and doughs taken out; null where there is nothing to take out.</param>
public sealed record BakeComparison(string Flour, int Sessions, double Mean, PairedBake? Pairs, FlourContrast? OverBakers)
{
    /// <summary>Every flour against a control.</summary>
    /// <param name="sessions">The bakes.</param>
    /// <param name="control">The control.</param>
    public static IReadOnlyList<BakeComparison> Of(IReadOnlyList<BakeSession> sessions, string control)
    {
        ArgumentNullException.ThrowIfNull(sessions);
        BakeSession[] ours = [.. sessions.Where(s => s.Loaves.Any(l => l.Flour == control))];
        TrialLoaf[] loaves = [.. ours.SelectMany(s => s.Loaves.Select(l => new TrialLoaf(l.Flour, s.Baker, $"{s.Code} {l.Dough}", l.SpecificVolume)))];
        var trial = loaves.Length > 0 ? BakeTrial.Of(loaves, control).Trial : null;
        return [.. loaves.Select(l => l.Flour).Distinct().Where(f => f != control).Order(StringComparer.Ordinal).Select(flour =>
        {
            var both = ours.Where(s => s.Loaves.Any(l => l.Flour == flour)).Select(s => (Control: MeanOf(s, control), Flour: MeanOf(s, flour))).ToArray();
            return new BakeComparison(
                flour, both.Length, both.Average(b => b.Flour - b.Control), both.Length > 1 ? PairedBake.Of([.. both.Select(b => b.Control)], [.. both.Select(b => b.Flour)]) : null, trial?.Contrasts.FirstOrDefault(c => c.Flour == flour));
        })];
    }

    private static double MeanOf(BakeSession session, string flour) => session.Loaves.Where(l => l.Flour == flour).Average(l => l.SpecificVolume);
}
