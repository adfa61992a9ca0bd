using Evengrist.Ledger;

namespace Evengrist.Intake.Grading;

/// <summary>US Standards for Wheat: 7 CFR 810, subparts A and M, in the text of the 2015 annual edition.</summary>
internal static class UsWheat
{
    public const string Edition = "2015";
    private const string From = ", 2015 edition";

    public static GradeStandard Standard { get; } = new()
    {
        Code = "us-wheat",
        Edition = Edition,
        Title = "US Standards for Wheat",
        Grades = ["U.S. No. 1", "U.S. No. 2", "U.S. No. 3", "U.S. No. 4", "U.S. No. 5"],
        Below = "U.S. Sample grade",
        Classes = UsWheatClasses.All,
        Factors = UsWheatFactors.All,
        Rejections = UsWheatTriggers.SampleGrade,
        Special = UsWheatTriggers.Special,
        HasMixed = true,
        HasDesignation = true,
        LookedFor =
        [
            Property.InsectDamagedKernels, Property.Stones, Property.StoneCount, Property.Glass, Property.AnimalFilth, Property.CastorBeans, Property.CrotalariaSeeds, Property.UnknownForeignSubstances,
            Property.Ergot, Property.SmutBalls, Property.GarlicBulblets, Property.LiveWeevils, Property.OtherLiveInsects,
        ],
        Parts =
        [
            new("grade table", "7 CFR 810.2204" + From),
            new("classes, subclasses, contrasting classes, definitions", "7 CFR 810.2202" + From),
            new("bases of the factors", "7 CFR 810.2203 and 810.102" + From, SourceMark.Read, "Heat-damaged, damaged, foreign material, other and contrasting classes and the subclass are judged free of dockage and of shrunken and broken; the rest dockage-free; dockage, moisture, garlic, live insects and heating as received."),
            new("recording", "7 CFR 810.104" + From, SourceMark.Read, "Half up at the decimals kept: 0.1 %, ergot 0.01 %, classes and subclasses the whole per cent, test weight 0.1 lb; recorded values are compared."),
            new("special grades", "7 CFR 810.2205, 810.107 and 810.104" + From),
            new("designation", "7 CFR 810.106, read in an excerpt", SourceMark.Read, "Grade, subclass or class, special grades, dockage."),
            new("subclass in the place of the class name", "practice", SourceMark.Memory, "Dark Northern Spring wheat, not Hard Red Spring wheat."),
            new("how total defects are added", "practice", SourceMark.Memory, "Recorded parts are added; the text does not say. A case may choose the unrounded sum."),
            new("contrasting classes in mixed wheat", "our own reading of 7 CFR 810.2204", SourceMark.Design, "Disregarded together with wheat of other classes, of which they are a part."),
            new("portions usually examined", "practice", SourceMark.Memory),
            new("order of work", "Grain Inspection Handbook, Book II, chapter 13 (2014), contents list"),
        ],
        Order =
        [
            "heating", "odour", "moisture", "garlic", "infestation", "distinctly low quality", "sample-grade items", "dockage", "test weight", "divide the work sample", "ergot", "smut", "treated",
            "shrunken and broken", "damaged", "heat-damaged", "foreign material", "defects", "contrasting classes", "other classes", "class", "subclass",
        ],
    };
}
