namespace Evengrist.Intake.Grading;

/// <summary>The closed sets of this room in words.</summary>
public static class GradingWords
{
    /// <summary>The basis in words.</summary>
    public static string Words(this SampleBasis basis) => basis switch
    {
        SampleBasis.AsReceived => "as received",
        SampleBasis.DockageFree => "dockage-free",
        SampleBasis.DoublyClean => "free of dockage and of shrunken and broken",
        SampleBasis.AsMethodSays => "as the standard's method says (not read here)",
        SampleBasis.AsMillMeasures => "as the mill measures it",
        _ => "not said",
    };

    /// <summary>The mark in words.</summary>
    public static string Words(this SourceMark mark) => mark switch
    {
        SourceMark.Read => "read",
        SourceMark.Derived => "derived",
        SourceMark.Memory => "from memory, not verified",
        SourceMark.Design => "our own choice",
        SourceMark.House => "the mill's own",
        _ => "not said",
    };

    /// <summary>What was noticed, in words.</summary>
    public static string Words(this GradeObservation observed) => observed switch
    {
        GradeObservation.Musty => "musty odour",
        GradeObservation.Sour => "sour odour",
        GradeObservation.ForeignOdour => "commercially objectionable foreign odour",
        GradeObservation.SmutOdour => "unmistakable odour of smut",
        GradeObservation.GarlicOdour => "odour of garlic",
        GradeObservation.Heating => "heating",
        GradeObservation.LowQuality => "distinctly low quality",
        GradeObservation.LargeObject => "objects too large for the sampler",
        GradeObservation.Treated => "scoured, limed, washed, sulfured or otherwise treated",
        GradeObservation.Mites => "mites",
        _ => "nothing",
    };
}
