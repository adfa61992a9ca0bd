namespace Evengrist.Intake.Deciding;

/// <summary>What is advised for a load: the gravest of all rulings, each of which is listed. A person decides.</summary>
/// <param name="Kind">Accept, discount, divert, set aside or turn away.</param>
/// <param name="Rulings">Gravest first.</param>
/// <param name="StillToAsk">What would have to be known and is not, each in words.</param>
public sealed record LoadAdvice(LoadDecisionKind Kind, IReadOnlyList<Ruling> Rulings, IReadOnlyList<string> StillToAsk)
{
    /// <summary>Whether a decision is milder than the advice, so that a reason is demanded. Accepting what is advised at a discount is not: the contract takes it off.</summary>
    public bool IsOverriddenBy(LoadDecisionKind decided) => decided < Kind && Kind > LoadDecisionKind.Discount;

    /// <summary>The advice on one line: <c>divert: falling number 214 s is below 250 s</c>.</summary>
    public string Words => LoadDecision.WordsOf(Kind) + (Rulings.Count > 0 ? ": " + string.Join("; ", Rulings.Where(r => r.Kind == Kind).Select(r => r.Reason.TrimEnd('.'))) : "");
}
