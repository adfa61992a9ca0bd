using Evengrist.Ledger;

namespace Evengrist.Intake.Grading;

/// <summary>Classes, subclasses and contrasting classes of 7 CFR 810.2202, 2015 edition.</summary>
internal static class UsWheatClasses
{
    public const string Durum = "Durum";
    public const string HardRedSpring = "Hard Red Spring";
    public const string HardRedWinter = "Hard Red Winter";
    public const string SoftRedWinter = "Soft Red Winter";
    public const string HardWhite = "Hard White";
    public const string SoftWhite = "Soft White";
    public const string Unclassed = "Unclassed";
    public const string WhiteClub = "White Club";
    private const string Source = "7 CFR 810.2202, 2015 edition";

    public static IReadOnlyList<WheatClass> All { get; } =
    [
        new(Durum, Durum)
        {
            IsDurum = true,
            Subclasses = [Vitreous("Hard Amber Durum", 75m), Vitreous("Amber Durum", 60m), Vitreous("Durum", 0m)],
            Contrasting = [HardRedSpring, HardRedWinter, HardWhite, SoftRedWinter, SoftWhite, Unclassed],
        },
        new(HardRedSpring, "HRS")
        {
            Subclasses = [Vitreous("Dark Northern Spring", 75m), Vitreous("Northern Spring", 25m), Vitreous("Red Spring", 0m)],
            Contrasting = [Durum, SoftWhite, Unclassed],
        },
        new(HardRedWinter, "HRW") { Contrasting = [Durum, SoftWhite, Unclassed] },
        new(SoftRedWinter, "SRW") { Contrasting = [Durum, Unclassed] },
        new(HardWhite, HardWhite) { Contrasting = [Durum, SoftRedWinter, Unclassed] },
        new(SoftWhite, SoftWhite)
        {
            Subclasses =
            [
                new(SoftWhite, [GradeCondition.Reads(Property.WhiteClub, Bound.AtMost, 10m, 0)], Source),
                new(WhiteClub, [GradeCondition.Reads(Property.OtherSoftWhite, Bound.AtMost, 10m, 0)], Source),
                new("Western White", [GradeCondition.Reads(Property.WhiteClub, Bound.Above, 10m, 0), GradeCondition.Reads(Property.OtherSoftWhite, Bound.Above, 10m, 0)], Source),
            ],
            Contrasting = [Durum, HardRedSpring, HardRedWinter, SoftRedWinter, Unclassed],
        },
        new(Unclassed, Unclassed),
    ];

    private static Subclass Vitreous(string name, decimal atLeast) => new(name, [GradeCondition.Reads(Property.Vitreous, Bound.AtLeast, atLeast, 0)], Source);
}
