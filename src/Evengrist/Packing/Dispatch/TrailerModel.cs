namespace Evengrist.Packing.Dispatch;

/// <summary>What the check list of a trailer and its previous load say. Model: docs/model/dispatch.md.</summary>
public static class TrailerModel
{
    /// <summary>Points that are not answered yet, in their order.</summary>
    public static IReadOnlyList<CheckPoint> Unanswered(DispatchLoad load, DispatchRules rules)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(rules);
        return [.. rules.PointsOf(load).Where(p => load.AnswerOf(p.Code) is null)];
    }

    /// <summary>Everything that keeps the trailer from leaving with flour, and what is cautioned.</summary>
    /// <param name="load">The load.</param>
    /// <param name="rules">The mill's rules.</param>
    public static IReadOnlyList<LoadFinding> Of(DispatchLoad load, DispatchRules rules)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(rules);
        var open = Unanswered(load, rules);
        return
        [
            .. open.Count == 0 ? Array.Empty<LoadFinding>() : [LoadFinding.Stop($"The trailer is not looked at whole yet: {string.Join("; ", open.Select(p => p.Words))}.")],
            .. rules.PointsOf(load).Select(p => (Point: p, Answer: load.AnswerOf(p.Code))).Where(a => a.Answer is { IsGood: false })
                .Select(a => LoadFinding.Stop($"“{a.Point.Words}” failed: {a.Answer!.Note} ({a.Answer.By}, {a.Answer.At}). Mend it and look again, or turn the trailer away.")),
            .. History(load, rules) is { } history ? [history] : Array.Empty<LoadFinding>(),
        ];
    }

    private static LoadFinding? History(DispatchLoad load, DispatchRules rules)
    {
        var trailer = load.IsTanker ? "tanker" : "trailer";
        if (load.History is not { } history)
        {
            return LoadFinding.Stop($"Ask what the {trailer} carried before, and enter it.");
        }

        return rules.Of(history.Previous) switch
        {
            PreviousVerdict.Good => null,
            PreviousVerdict.Never => LoadFinding.Stop($"It carried {history.Previous} before, and flour may never follow that by the mill's rules. Turn the {trailer} away."),
            PreviousVerdict.AfterWash when history.WashTicket.Length > 0 => null,
            PreviousVerdict.AfterWash => LoadFinding.Stop($"It carried {history.Previous} before: flour follows only after a wash. Enter the number of the wash ticket, or turn the {trailer} away."),
            _ when load.IsTanker => LoadFinding.Stop($"The mill's rules do not say whether flour may follow {history.Previous} in a tanker. A person with authority adds it to the rules, or the tanker is turned away."),
            _ => LoadFinding.Caution($"The mill's rules do not say whether flour may follow {history.Previous}."),
        };
    }
}
