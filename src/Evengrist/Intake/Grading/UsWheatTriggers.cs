using Evengrist.Ledger;

namespace Evengrist.Intake.Grading;

/// <summary>Sample grade reasons and special grades of the US standards, 2015 edition.</summary>
internal static class UsWheatTriggers
{
    private const string Table = "7 CFR 810.2204, 2015 edition";
    private const string SpecialRule = "7 CFR 810.2205, 2015 edition";

    public static IReadOnlyList<GradeTrigger> SampleGrade { get; } =
    [
        Seen(GradeObservation.Musty, Table), Seen(GradeObservation.Sour, Table), Seen(GradeObservation.ForeignOdour, Table), Seen(GradeObservation.Heating, Table),
        Seen(GradeObservation.LowQuality, Table), Seen(GradeObservation.LargeObject, "7 CFR 810.102, 2015 edition"),
    ];

    public static IReadOnlyList<GradeTrigger> Special { get; } =
    [
        new("Ergoty", [[Reads(Property.Ergot, Bound.Above, 0.05m, 2)]], "7 CFR 810.2205 and 810.104, 2015 edition"),
        new("Garlicky", [[Reads(Property.GarlicBulblets, Bound.Above, 2m, 2)]], SpecialRule),
        new("Smutty", [[Reads(Property.SmutBalls, Bound.Above, 30m, 2)]], SpecialRule, Group: "smut"),
        new("Light smutty", [[Reads(Property.SmutBalls, Bound.Above, 5m, 2)], [GradeCondition.Shows(GradeObservation.SmutOdour)]], SpecialRule, Group: "smut"),
        new("Treated", [[GradeCondition.Shows(GradeObservation.Treated)]], SpecialRule),
        new("Infested",
            [
                [Reads(Property.LiveWeevils, Bound.AtLeast, 2m, 0)],
                [Reads(Property.LiveWeevils, Bound.AtLeast, 1m, 0), Reads(Property.OtherLiveInsects, Bound.AtLeast, 1m, 0)],
                [Reads(Property.OtherLiveInsects, Bound.AtLeast, 2m, 0)],
            ],
            "7 CFR 810.107, 2015 edition"),
    ];

    private static GradeCondition Reads(Property what, Bound bound, decimal value, int decimals) => GradeCondition.Reads(what, bound, value, decimals);

    private static GradeTrigger Seen(GradeObservation seen, string source) => new(seen.Words(), [[GradeCondition.Shows(seen)]], source);
}
