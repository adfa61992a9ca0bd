using Evengrist.Intake.Grading;
using Evengrist.Ledger;

namespace Evengrist.Intake.Deciding;

/// <summary>Live insects counted in the sample.</summary>
internal static class InsectRule
{
    public static IEnumerable<Ruling> Of(LoadToDecide load)
    {
        var (weevils, others) = (load.Find(Property.LiveWeevils)?.Value ?? 0m, load.Find(Property.OtherLiveInsects)?.Value ?? 0m);
        if (weevils + others == 0m)
        {
            yield break;
        }

        // 7 CFR 810.107: infested from two live weevils on, or one and another insect, or two other insects.
        var infested = weevils >= 2m || (weevils >= 1m && others >= 1m) || others >= 2m;
        yield return new(LoadDecisionKind.SetAside, infested
                ? $"Infested: {weevils:0} live weevils and {others:0} other live insects in the sample."
                : "One live insect in the sample: not yet infested by the standard, but it would breed in the bin. Probe again.",
            "7 CFR 810.107, 2015 edition", SourceMark.Read)
        {
            Caution = "Fumigation is for a licensed applicator alone; the load waits where it cannot infest others.",
        };
    }
}
