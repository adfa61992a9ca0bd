namespace Evengrist.Laboratory.Sampling;

/// <summary>Which severity the next lot is looked at with, from how the lots before it fared. Rules of MIL-STD-105E [from memory].</summary>
public static class Switching
{
    private const int Window = 5;
    private const int ToReduced = 10;

    /// <summary>The severity of the next lot.</summary>
    /// <param name="lots">Oldest first.</param>
    /// <param name="mayReduce">Whether production is steady and whoever answers for it allows reduced looking.</param>
    public static Severity Next(IEnumerable<LotVerdict> lots, bool mayReduce)
    {
        ArgumentNullException.ThrowIfNull(lots);
        var (severity, since) = (Severity.Normal, new List<LotVerdict>());
        foreach (var lot in lots)
        {
            since.Add(lot);
            var next = After(severity, since, mayReduce);
            if (next != severity)
            {
                (severity, since) = (next, []);
            }
        }

        return severity;
    }

    private static Severity After(Severity severity, List<LotVerdict> since, bool mayReduce) => severity switch
    {
        Severity.Normal when since.TakeLast(Window).Count(IsRejected) >= 2 => Severity.Tightened,
        Severity.Normal when mayReduce && since.Count >= ToReduced && !since.TakeLast(ToReduced).Any(IsRejected) => Severity.Reduced,
        Severity.Tightened when since.Count >= Window && !since.TakeLast(Window).Any(IsRejected) => Severity.Normal,
        Severity.Tightened when since.Count(IsRejected) >= Window => Severity.Stopped,
        Severity.Reduced when since[^1] != LotVerdict.Accepted || !mayReduce => Severity.Normal,
        _ => severity,
    };

    private static bool IsRejected(LotVerdict lot) => lot == LotVerdict.Rejected;
}
